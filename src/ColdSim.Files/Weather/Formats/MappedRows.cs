using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather.Formats;

/// <summary>The rows of a mapped table one after another: short ones, lines of units above them and a footer below them among them.</summary>
internal sealed class MappedRows(RecordReader records, string[] headings, string timeHeading, MappedTime time, SourceTable table, RowCollector rows, WeatherFaults faults)
{
    private const int MostAbove = 3;
    private const int MostBelow = 100;

    private readonly List<(int Line, int Column, string Text)> _unread = [];
    private bool _begun;
    private bool _isShort;
    private (WeatherRow? Row, int Line)? _short;

    /// <summary>Takes the current record.</summary>
    /// <param name="field">The field of its time, for messages.</param>
    public void Take(int field)
    {
        PassOnShort();
        switch (time.Read(records, out DateTimeOffset instant))
        {
            case MappedTime.Outcome.Read:
                ReportUnread();
                Row(instant);
                return;
            case MappedTime.Outcome.WithoutOffset:
                Fault(records.Line, records.ColumnOf(field), "has no offset from UTC", time.Text(records),
                    "accepted: time_zone in the column map, offset = \"-07:00\" under [weather], --offset of 'coldsim weather', or times that have one");
                return;
            case MappedTime.Outcome.LeftOut:
                Fault(records.Line, records.ColumnOf(field), "is left out where clocks go forward in that zone", time.Text(records), "accepted: a clock that is put forward, or offset instead of time_zone for one that is not");
                return;
        }

        if (records.ReportRepeatedHeadings(headings))
            rows.HasSkippedRows = true;
        else if (_unread.Count < MostBelow)
            _unread.Add((records.Line, records.ColumnOf(field), time.Text(records)));
        else
            NotATime((records.Line, records.ColumnOf(field), time.Text(records)));
    }

    /// <summary>What comes after the last row is a footer, unless it begins as a row does.</summary>
    public void Finish()
    {
        if (_short is { } last && _isShort)
        {
            PassOnShort();
        }
        else if (_short is { } cut)
        {
            rows.HasSkippedRows = true;
            faults.Warn($"{faults.File}:{cut.Line}: the last row has fewer fields than the others, as where a file is cut short; it is left out");
        }

        foreach ((int Line, int Column, string Text) line in _unread)
        {
            if (!_begun || (line.Text.Length > 0 && char.IsAsciiDigit(line.Text[0])))
                NotATime(line);
        }

        int footer = _begun ? _unread.Count(u => u.Text.Length == 0 || !char.IsAsciiDigit(u.Text[0])) : 0;
        if (footer > 0)
            faults.Note($"{faults.File}: {(footer == 1 ? "1 line" : FormattableString.Invariant($"{footer} lines"))} below the last row passed over");
    }

    private void Row(DateTimeOffset instant)
    {
        _begun = true;

        // Times in UTC say nothing of the clock at the place.
        if (instant.Offset != TimeSpan.Zero && rows.Station.Offset is null)
            rows.Station = rows.Station with { Offset = instant.Offset };
        if (records.Count > headings.Length && !AreEmptyFrom(headings.Length))
        {
            faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {headings.Length} headings; a decimal comma, perhaps"));
            rows.HasSkippedRows = true;
            return;
        }

        WeatherRow? row = table.Row(instant);
        if (records.Count < headings.Length)
            _short = (row, records.Line);
        else if (row is { } whole)
            rows.Add(whole, records.Line);
    }

    // A short row is kept until the next one shows that the file goes on.
    private void PassOnShort()
    {
        if (_short is not { } waiting)
            return;
        _isShort = true;
        _short = null;
        if (waiting.Row is { } row)
            rows.Add(row, waiting.Line);
    }

    private bool AreEmptyFrom(int field)
    {
        for (; field < records.Count; field++)
        {
            if (!records.IsEmpty(field))
                return false;
        }

        return true;
    }

    // Between two rows they are faults; above the first one, a few lines may say the units.
    private void ReportUnread()
    {
        if (_unread.Count == 0)
            return;
        if (_begun || _unread.Count > MostAbove)
        {
            foreach ((int, int, string) line in _unread)
                NotATime(line);
        }
        else
        {
            faults.Note($"{faults.File}: {(_unread.Count == 1 ? "1 line" : FormattableString.Invariant($"{_unread.Count} lines"))} between the headings and the first row passed over");
        }

        _unread.Clear();
    }

    private void NotATime((int Line, int Column, string Text) line) => Fault(line.Line, line.Column, "is not a date and time", line.Text, time.Accepted);

    private void Fault(int line, int column, string what, string text, string accepted)
    {
        faults.Report(line, column, $"{Quote.Of(timeHeading)}: '{Quote.Of(text)}' {what}", accepted);
        rows.HasSkippedRows = true;
    }
}
