using System.Globalization;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather.Formats;

/// <summary>
/// Open-Meteo's export: two lines about the place, then blocks of rows under headings with units, on one fixed offset. The hourly block may have one of the
/// moment and one of quarters of an hour before it, and one of days behind it; no block is named.
/// </summary>
internal static class OpenMeteoCsv
{
    // Nearer rows are quarters of an hour, more distant ones days.
    private static readonly TimeSpan Nearest = TimeSpan.FromMinutes(30);
    private static readonly TimeSpan Farthest = TimeSpan.FromHours(12);

    public static void Read(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        if (!records.Next() || Place(records, request, rows, faults) is not { } place)
            return;
        TimeSpan? offset = request.Offset ?? rows.Station.Offset;
        rows.Station = rows.Station with { Offset = offset };
        rows.Clock = offset is { } o ? $"one fixed offset, UTC{InstantText.OfOffset(o)}" : "UTC";
        string[]? headings = records.All();
        int passedOver = 0;
        bool found = false;
        while (headings is not null && !found)
        {
            Block block = new(records, headings, place, offset, rows, faults);
            if (faults.Any)
                return;
            if (!block.IsWeather && passedOver == 0)
            {
                faults.Report(records.Line, 1, block.HasTime ? "no column 'temperature_2m'" : "no column 'time'", "accepted: an hourly export with temperature_2m");
                return;
            }

            (found, headings) = block.Read();
            if (!found)
                passedOver++;
            else if (headings is not null)
                faults.Warn($"{faults.File}: a further block from line {records.Line} on is not used");
        }

        if (passedOver > 0)
            faults.Note($"{faults.File}: {(passedOver == 1 ? "1 block" : FormattableString.Invariant($"{passedOver} blocks"))} before the hours, of the moment or of quarters of an hour, not used");
        if (!found && !faults.Any)
            rows.EmptyMessage = passedOver > 0 ? "no hourly block" : "no rows below the headings";
        rows.HasSkippedRows |= records.HasBroken;
        rows.Finish(records.Line);
    }

    /// <summary>Reads the lines about the places and goes on to the first headings; the number of the place, or null and a fault.</summary>
    private static string? Place(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        string[] about = records.All();
        if (RecordReader.IndexOf(about, "utc_offset_seconds") < 0)
            return "";
        List<(string Id, WeatherStation Station)> places = [];
        int id = RecordReader.IndexOf(about, "location_id");
        while (true)
        {
            if (!records.Next())
            {
                faults.Report(records.Line, 1, places.Count == 0 ? "nothing below the first line" : "no headings below the lines about the place");
                return null;
            }

            if (RecordReader.IndexOf(records.All(), "time") >= 0 || places.Count > 10_000)
                break;
            double? Number(string name) => records.TryNumber(RecordReader.IndexOf(about, name), out double value) ? value : null;
            places.Add((records.Text(id), new WeatherStation
            {
                Name = "model cell",
                Latitude_deg = Number("latitude"),
                Longitude_deg = Number("longitude"),
                Elevation_m = Number("elevation"),
                Offset = Number("utc_offset_seconds") is { } seconds ? InstantText.OffsetFromHours(seconds / 3600) : null,
            }));
        }

        if (places.Count == 0)
        {
            faults.Report(records.Line, 1, "no line about the place");
            return null;
        }

        if (PlaceChoice.Of([.. places.Select(p => p.Station)], request, 1, faults) is not { } chosen)
            return null;
        rows.Station = places[chosen].Station;
        return places[chosen].Id;
    }

    private static string Name(string heading)
    {
        int open = heading.IndexOf('(', StringComparison.Ordinal);
        return (open < 0 ? heading : heading[..open]).Trim();
    }

    /// <summary>A block of rows under its own headings.</summary>
    private sealed class Block
    {
        private readonly RecordReader _records;
        private readonly string[] _headings;
        private readonly string _place;
        private readonly TimeSpan? _offset;
        private readonly RowCollector _rows;
        private readonly WeatherFaults _faults;
        private readonly SourceTable _table;
        private readonly int _time;
        private readonly int _id;

        public Block(RecordReader records, string[] headings, string place, TimeSpan? offset, RowCollector rows, WeatherFaults faults)
        {
            (_records, _headings, _place, _offset, _rows, _faults) = (records, headings, place, offset, rows, faults);
            _table = new(records, rows, faults);
            _time = Array.FindIndex(headings, h => Name(h) == "time");
            _id = RecordReader.IndexOf(headings, "location_id");
            Columns();
        }

        public bool HasTime => _time >= 0;

        /// <summary>Whether it has what weather needs.</summary>
        public bool IsWeather => HasTime && _table.Has(WeatherColumn.Air);

        /// <summary>Reads to its end; whether it is the hourly one, and the next block's headings, null at the end of the file.</summary>
        public (bool IsHourly, string[]? Next) Read()
        {
            (WeatherRow? Row, DateTimeOffset Time, int Line)? first = null;
            bool hourly = false, other = !IsWeather;
            while (!_rows.IsPastWindow && _records.Next())
            {
                if (_records.Text(0) is "time" or "location_id" || (_time >= 0 && Name(_records.Text(_time)) == "time"))
                    return Ended(hourly, _records.All());
                if (other || (_id >= 0 && _records.Text(_id) != _place))
                    continue;
                if (_records.Count != _headings.Length)
                {
                    _faults.Report(_records.Line, 1, FormattableString.Invariant($"{_records.Count} fields under {_headings.Length} headings"));
                    _rows.HasSkippedRows = true;
                    continue;
                }

                if (Time(_records.Text(_time), _offset, out string fault) is not { } instant)
                {
                    _faults.Report(_records.Line, _records.ColumnOf(_time), $"time: {fault}", "accepted: such as 2024-01-31T23:00, or seconds since 1970");
                    _rows.HasSkippedRows = true;
                    continue;
                }

                WeatherRow? row = _table.Row(instant);
                if (hourly)
                {
                    if (row is { } next)
                        _rows.Add(next, _records.Line);
                }
                else if (first is not { } one)
                    first = (row, instant, _records.Line);
                else if (instant - one.Time is var spacing && (spacing >= Nearest || spacing <= TimeSpan.Zero) && spacing <= Farthest)
                {
                    hourly = true;
                    foreach (WeatherColumn column in _table.Columns)
                        _rows.DeclareColumn(column);
                    if (one.Row is { } before)
                        _rows.Add(before, one.Line);
                    if (row is { } second)
                        _rows.Add(second, _records.Line);
                }
                else
                    other = true;
            }

            return Ended(hourly, null);
        }

        private (bool IsHourly, string[]? Next) Ended(bool hourly, string[]? next)
        {
            if (hourly)
                _table.NoteLeftOut();
            return (hourly, next);
        }

        private void Columns()
        {
            for (int i = 0; i < _headings.Length; i++)
            {
                string name = Name(_headings[i]);
                if (OpenMeteoVariables.Column(name) is not { } column || _table.Has(column))
                    continue;
                int open = _headings[i].IndexOf('(', StringComparison.Ordinal);
                string? unit = open < 0 ? null : _headings[i][(open + 1)..].TrimEnd(')', ' ');
                if (OpenMeteoVariables.Unit(column, unit) is not { } known)
                {
                    _faults.Report(_records.Line, _records.ColumnOf(i), $"column '{Quote.Of(name)}': unknown unit '{Quote.Of(unit!)}'");
                    continue;
                }

                _table.Add(new SourceColumn(column, i, _headings[i], known));
                if (column == WeatherColumn.Sun)
                    _rows.Averaging = OpenMeteoVariables.Averaging(name);
            }
        }

        private static DateTimeOffset? Time(string text, TimeSpan? offset, out string fault)
        {
            fault = $"'{Quote.Of(text)}' is not a date and time";

            // Seconds since 1970 are UTC whatever the offset.
            if (text.Length >= 9 && long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long seconds))
                return Math.Abs(seconds) < 100_000_000_000 ? DateTimeOffset.FromUnixTimeSeconds(seconds).ToOffset(offset ?? TimeSpan.Zero) : null;

            // A block of days has dates alone; it is passed over.
            if (text.Length == 10)
                text += "T00:00";

            // Without the lines about the place times are in UTC, as the service's default is.
            return InstantText.TryRead(text, offset ?? TimeSpan.Zero, out DateTimeOffset time) == InstantText.Outcome.Read ? time : null;
        }
    }
}
