using System.Globalization;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Model;

namespace ColdSim.Files.Scenarios;

/// <summary>Clock times "06:30" and spans "22:00-06:30".</summary>
internal static class ClockText
{
    public const string AcceptedSpan = "accepted: a span such as \"22:00-06:30\"";

    /// <summary>A time of day.</summary>
    public static TimeOnly? Get(this SectionReader section, TimeKey key)
    {
        const string accepted = "accepted: a time such as \"07:00\"";
        switch (section.Value(key))
        {
            case null: return null;
            case TomlDateOrTime { HasDate: false } time: return TimeOnly.FromDateTime(time.Value.DateTime);
            case TomlText text when TryTime(text.Value, out TimeOnly time): return time;
            case TomlText text:
                section.Reading.Report(text.Place, $"'{key.Name}' is \"{Quote.Of(text.Value)}\"", accepted);
                return null;
            case { } other:
                section.Reading.Report(other.Place, $"'{key.Name}' is {other.Kind}", accepted);
                return null;
        }
    }

    /// <summary>One span.</summary>
    public static ClockWindow? GetSpan(this SectionReader section, SpansKey key)
        => section.Value(key) is { } value ? Span(section, key, value) : null;

    /// <summary>A list of spans, or one span alone.</summary>
    public static IReadOnlyList<ClockWindow>? Get(this SectionReader section, SpansKey key)
    {
        switch (section.Value(key))
        {
            case null: return null;
            case TomlList list: return Spans(section, key, list);
            case { } one: return Span(section, key, one) is { } window ? [window] : [];
        }
    }

    /// <summary>Spans of which there must be at least one; none would mean always.</summary>
    public static IReadOnlyList<ClockWindow> Require(this SectionReader section, SpansKey key, string accepted)
    {
        if (!section.Has(key))
            section.Lacks(key, accepted);
        else if (section.Value(key) is TomlList { Items.Count: 0 })
            section.Report(key, $"'{key.Name}' is empty", accepted);
        return section.Get(key) ?? [];
    }

    private static List<ClockWindow> Spans(SectionReader section, SpansKey key, TomlList list)
    {
        List<ClockWindow> spans = [];
        foreach (TomlValue item in list.Items)
        {
            if (Span(section, key, item) is { } span)
                spans.Add(span);
        }

        return spans;
    }

    private static ClockWindow? Span(SectionReader section, SpansKey key, TomlValue value)
    {
        if (value is TomlText text)
        {
            string[] ends = text.Value.Split('-', '–', '−');
            if (ends.Length == 2 && TryTime(ends[0], out TimeOnly from) && TryEnd(ends[1], out double to_s))
            {
                if (Seconds(from) != to_s)
                    return new ClockWindow(Seconds(from), to_s);
                section.Reading.Report(text.Place, $"'{key.Name}' begins and ends at {ends[0].Trim()}", AcceptedSpan);
                return null;
            }
        }
        string found = value is TomlText bad ? $"\"{Quote.Of(bad.Value)}\"" : value.Kind;
        section.Reading.Report(value.Place, $"'{key.Name}' is {found}", AcceptedSpan);
        return null;
    }

    /// <summary>A span as it is written.</summary>
    public static string Written(ClockWindow span) => string.Create(CultureInfo.InvariantCulture, $"{Clock(span.From_s):HH:mm}-{Clock(span.To_s):HH:mm}");

    /// <summary>A span, or null where it is none.</summary>
    public static ClockWindow? Window(string text)
    {
        string[] ends = text.Split('-', '–', '−');
        return ends.Length == 2 && TryTime(ends[0], out TimeOnly from) && TryEnd(ends[1], out double to_s) && Seconds(from) != to_s
            ? new ClockWindow(Seconds(from), to_s)
            : null;
    }

    private static TimeOnly Clock(double s) => TimeOnly.FromTimeSpan(TimeSpan.FromSeconds(s));

    private static double Seconds(TimeOnly time) => time.ToTimeSpan().TotalSeconds;

    // The end of a day is the next one's 00:00 too, but a span of the whole day can only be written with it.
    private static bool TryEnd(string text, out double end_s)
    {
        bool time = TryTime(text, out TimeOnly end);
        bool midnight = text.Trim() is "24:00" or "24:00:00";
        end_s = midnight ? TimeSpan.FromDays(1).TotalSeconds : Seconds(end);
        return time || midnight;
    }

    private static bool TryTime(string text, out TimeOnly time)
        => TimeOnly.TryParseExact(text.Trim(), ["H:mm", "HH:mm", "HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out time);
}
