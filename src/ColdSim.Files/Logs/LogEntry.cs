namespace ColdSim.Files.Logs;

/// <summary>A further datum of a reading, named as the option of <c>coldsim gauge</c> is.</summary>
/// <param name="Name">Such as <c>tare</c>.</param>
/// <param name="Value">As written, such as <c>17.6 lb</c>; empty for a word without a value.</param>
internal readonly record struct LogDetail(string Name, string Value)
{
    /// <summary><c>name=value</c>, or the name alone.</summary>
    public override string ToString() => Value.Length == 0 ? Name : $"{Name}={Value}";
}

/// <summary>One line of the log as it is written: texts, with the person's own units.</summary>
internal sealed record LogEntry
{
    /// <summary>The time of the reading; written to the minute.</summary>
    public required DateTimeOffset Time { get; init; }

    /// <summary>The cylinder's name.</summary>
    public required string Cylinder { get; init; }

    /// <summary>The method of reading, one of <see cref="LogMethods.All"/>.</summary>
    public required string Method { get; init; }

    /// <summary>The value that was read, such as <c>31.2 lb</c>.</summary>
    public required string Reading { get; init; }

    /// <summary>The liquid's temperature; empty where it was not measured.</summary>
    public string Temperature { get; init; } = "";

    /// <summary>Further data of the reading.</summary>
    public IReadOnlyList<LogDetail> Details { get; init; } = [];

    /// <summary>Free text.</summary>
    public string Note { get; init; } = "";

    /// <summary>The time of an entry that is made now: the clock cut to the minute, as the log keeps it.</summary>
    /// <param name="clock">The clock.</param>
    /// <param name="offset">Whose time is written.</param>
    public static DateTimeOffset Now(TimeProvider clock, TimeSpan offset)
    {
        ArgumentNullException.ThrowIfNull(clock);
        DateTimeOffset now = clock.GetUtcNow().ToOffset(offset);
        return new DateTimeOffset(now.Year, now.Month, now.Day, now.Hour, now.Minute, 0, now.Offset);
    }
}
