namespace ColdSim.Files.Weather;

/// <summary>A column of a table of no known layout.</summary>
/// <param name="Heading">Its heading in the file.</param>
/// <param name="Unit">Its unit; null where the heading has it in brackets.</param>
public sealed record MappedColumn(string Heading, string? Unit);

/// <summary>The meaning of each heading of a table; <c>[weather.columns]</c> of a scenario.</summary>
public sealed record ColumnMap
{
    /// <summary>Headings are looked for in so many lines from the beginning.</summary>
    public const int HeadingLines = 60;

    /// <summary>The separator of a table whose fields are parted by any number of blanks and tabs.</summary>
    public const char Blanks = ' ';

    /// <summary>The heading over the times, or those over the parts of a date, in the order in which they are joined.</summary>
    public required IReadOnlyList<string> Time { get; init; }

    /// <summary>The heading over the time of day where it has a column of its own; <see cref="Time"/> then names the date.</summary>
    public string? Clock { get; init; }

    /// <summary>
    /// How a time is written, such as <c>dd.MM.yyyy HH:mm</c>, or <c>unix</c>; null for ISO 8601, or for whole numbers from year down to second in three columns or more.
    /// </summary>
    public string? TimeFormat { get; init; }

    /// <summary>The zone by whose clock times without an offset are written, with its summer time; null where they have an offset or one is stated.</summary>
    public TimeZoneInfo? Zone { get; init; }

    /// <summary>The line of the headings; null finds it by the headings named, 0 is for a table without, whose columns are called by their numbers from 1.</summary>
    public int? HeaderLine { get; init; }

    /// <summary>The field separator; null detects it.</summary>
    public char? Separator { get; init; }

    /// <summary>Texts that mean "not known", beside an empty field.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>The time over which each irradiance is averaged.</summary>
    public IrradianceAveraging Sun { get; init; }

    /// <summary>The columns by the names of <see cref="WeatherColumn"/>.</summary>
    public required IReadOnlyDictionary<string, MappedColumn> Columns { get; init; }

    /// <summary>Every heading that it names.</summary>
    internal IEnumerable<string> Headings => [.. Time, .. Clock is { } clock ? (string[])[clock] : [], .. Columns.Values.Select(c => c.Heading)];
}
