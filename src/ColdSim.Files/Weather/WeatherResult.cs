using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>The result of reading a weather file.</summary>
public sealed record WeatherResult
{
    /// <summary>The rows in order of time; empty where there are problems or a sink received them.</summary>
    public required IReadOnlyList<WeatherRow> Rows { get; init; }

    /// <summary>Of how many rows of the file each is the coldest; 1 where every row is there.</summary>
    public int RowsForEach { get; init; } = 1;

    /// <summary>How many of the file's rows have a value in each column; null where every row is there and can be asked.</summary>
    public ColumnCounts? Counts { get; init; }

    /// <summary>The faults, in order of place.</summary>
    public required IReadOnlyList<FileProblem> Problems { get; init; }

    /// <summary>Columns that were not used, and other doubts about the file.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>Gaps that were bridged and empty cells that were filled in; the report lists them.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The layout that was read.</summary>
    public WeatherFormat Format { get; init; }

    /// <summary>The unit of the air where somebody chose it; null where the layout does.</summary>
    public string? AirUnit { get; init; }

    /// <summary>What the file is where it is no weather file at all; null where it was read as <see cref="Format"/>.</summary>
    public string? OtherKind { get; init; }

    /// <summary>How the times were interpreted, in a few words.</summary>
    public string Clock { get; init; } = "";

    /// <summary>The place of the weather.</summary>
    public WeatherStation Station { get; init; } = new();

    /// <summary>Gaps that a straight line bridges, in order of time; where there are very many, the longest.</summary>
    public IReadOnlyList<WeatherGap> Gaps { get; init; } = [];

    /// <summary>How many gaps a straight line bridges.</summary>
    public long AllGaps { get; init; }

    /// <summary>Rows outside the requested window.</summary>
    public long Outside { get; init; }

    /// <summary>Whether it is a typical year, whose months come from different years.</summary>
    public bool IsTypicalYear { get; init; }
}
