using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;

namespace ColdSim.Files.Weather;

/// <summary>The answer of <c>coldsim weather</c>: what a file has, its digest and the nights looked for.</summary>
public sealed record WeatherFileReport
{
    /// <summary>The file as it was named.</summary>
    public required string File { get; init; }

    /// <summary>The result of reading, without the rows.</summary>
    public required WeatherResult Weather { get; init; }

    /// <summary>How many rows have a value in each column.</summary>
    public required ColumnCounts Counts { get; init; }

    /// <summary>The air temperature at the place over the whole time, or over the spell that is drawn.</summary>
    public required IReadOnlyList<AirSlice> Air { get; init; }

    /// <summary>The clock that noon is read from.</summary>
    public required TimeSpan Clock { get; init; }

    /// <summary>The rows summed up.</summary>
    public required WeatherDigest Digest { get; init; }

    /// <summary>The night or spell picked; null where none was asked for.</summary>
    public DesignSpell? Picked { get; init; }

    /// <summary>The coldest spells; null where they were not asked for.</summary>
    public ColdestSpells? Coldest { get; init; }

    /// <summary>Each night of the spell picked, or of the coldest one; empty where none was asked for.</summary>
    public IReadOnlyList<SpellNight> SpellNights { get; init; } = [];

    /// <summary>What was changed in the weather while reading it.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The rows of those nights; empty where none was asked for.</summary>
    public IReadOnlyList<WeatherRow> SpellRows { get; init; } = [];
}
