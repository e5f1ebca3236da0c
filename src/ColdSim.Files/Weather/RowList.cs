using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>Keeps all rows: for files that are short, or of which a window is asked for.</summary>
internal sealed class RowList : IRowSink
{
    private readonly List<WeatherRow> _rows = [];

    public IReadOnlyList<WeatherRow> Rows => _rows;

    public void Begin(WeatherSource source)
    {
    }

    public void Take(in WeatherRow row) => _rows.Add(row);
}
