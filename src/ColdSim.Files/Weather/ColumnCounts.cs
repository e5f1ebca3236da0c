using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>How many rows have a value in each column.</summary>
public sealed class ColumnCounts
{
    private long _wind;
    private long _dewPoint;
    private long _sun;
    private long _cloud;
    private long _pressure;

    /// <summary>All rows; each has an air temperature.</summary>
    public long Rows { get; private set; }

    /// <summary>Each column except air, by its heading, with the number of rows that have it.</summary>
    public IEnumerable<(string Name, long Rows)> Each
        => [(WeatherColumn.Wind.Name, _wind), (WeatherColumn.DewPoint.Name, _dewPoint), (WeatherColumn.Sun.Name, _sun), (WeatherColumn.Cloud.Name, _cloud), (WeatherColumn.Pressure.Name, _pressure)];

    /// <summary>Counts a row.</summary>
    public void Add(in WeatherRow row)
    {
        Rows++;
        _wind += row.Wind_m_s is null ? 0 : 1;
        _dewPoint += row.DewPoint_K is null ? 0 : 1;
        _sun += row.Sun_W_m2 is null ? 0 : 1;
        _cloud += row.Cloud_frac is null ? 0 : 1;
        _pressure += row.Pressure_Pa is null ? 0 : 1;
    }

    /// <summary>How many rows have a quantity, by the scenario's name for it.</summary>
    internal long Of(string quantity) => quantity switch
    {
        "wind" => _wind,
        "humidity" => _dewPoint,
        "cloud" => _cloud,
        "sun" => _sun,
        "pressure" => _pressure,
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "no column"),
    };

    /// <summary>Whether any row has a column.</summary>
    internal bool Has(WeatherColumn column) => column == WeatherColumn.Air || Each.Any(c => c.Name == column.Name && c.Rows > 0);
}
