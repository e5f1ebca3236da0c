namespace ColdSim.Files.Weather;

/// <summary>A column of a table of no known layout.</summary>
/// <param name="Heading">Its heading in the file.</param>
/// <param name="Unit">Its unit; null where the heading has it in brackets.</param>
public sealed record MappedColumn(string Heading, string? Unit);

/// <summary>The meaning of each heading of a table; <c>[weather.columns]</c> of a scenario.</summary>
public sealed record ColumnMap
{
    /// <summary>The heading over the times.</summary>
    public required string Time { get; init; }

    /// <summary>The heading over the time of day where it has a column of its own; <see cref="Time"/> then names the date.</summary>
    public string? Clock { get; init; }

    /// <summary>How a time is written, such as <c>dd.MM.yyyy HH:mm</c>, or <c>unix</c>; null for ISO 8601.</summary>
    public string? TimeFormat { get; init; }

    /// <summary>The line of the headings.</summary>
    public int HeaderLine { get; init; } = 1;

    /// <summary>The field separator; null detects it.</summary>
    public char? Separator { get; init; }

    /// <summary>Texts that mean "not known", beside an empty field.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>The time over which each irradiance is averaged.</summary>
    public IrradianceAveraging Sun { get; init; }

    /// <summary>The columns by the names of <see cref="WeatherColumn"/>.</summary>
    public required IReadOnlyDictionary<string, MappedColumn> Columns { get; init; }
}
