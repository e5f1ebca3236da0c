namespace ColdSim.Files.Scenarios.Keys;

/// <summary>A key that holds a time of day.</summary>
internal sealed class TimeKey(string name, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    public override string Kind => "time";

    public override string Example => "\"07:00\"";
}

/// <summary>A key that holds a date.</summary>
internal sealed class DateKey(string name, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    public override string Kind => "date, no quotes";

    public override string Example => "2031-06-30";
}

/// <summary>How much of a date, a time and an offset is written.</summary>
internal enum DateTimeForm
{
    /// <summary>Date and time; the offset may be left out.</summary>
    DateAndTime,

    /// <summary>Date and time with an offset, which may be left out where the weather has one.</summary>
    WithOffset,

    /// <summary>A date, perhaps with time and offset.</summary>
    DateAtLeast,

    /// <summary>Date and time, or a date whose time another key says.</summary>
    DateWithTimeElsewhere,
}

/// <summary>A key that holds a date with its time.</summary>
internal sealed class DateTimeKey(string name, DateTimeForm form, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    public DateTimeForm Form => form;

    /// <summary>When it may lie, in words.</summary>
    public string Within { get; init; } = "";

    public override string Kind => form switch
    {
        DateTimeForm.WithOffset => "date and time with offset, no quotes",
        DateTimeForm.DateAtLeast => "date, perhaps with time and offset, no quotes",
        DateTimeForm.DateWithTimeElsewhere => "date and time, or a date with `time`, no quotes",
        _ => "date and time, no quotes",
    };

    public override string Limits => Within;

    public override string Example => form == DateTimeForm.WithOffset ? "2025-01-14T16:00:00-07:00" : "2025-01-14T16:00:00";
}

/// <summary>A key that holds spans of the clock.</summary>
internal sealed class SpansKey(string name, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    /// <summary>Whether there is one span only.</summary>
    public bool IsSingle { get; init; }

    /// <summary>Whether each span has a flow of water behind it.</summary>
    public bool HasFlow { get; init; }

    /// <summary>What is accepted, in words.</summary>
    public string Accepts { get; init; } = "";

    public override string Kind => IsSingle ? "span" : HasFlow ? "list of spans with a flow" : "list of spans";

    public override string Limits => Accepts;

    public override string Example => IsSingle ? "\"22:00-06:30\"" : HasFlow ? "[\"07:00-07:10 4 L/min\"]" : "[\"06:30-22:30\"]";
}
