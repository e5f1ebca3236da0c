using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using ColdSim.Planning.Ensemble;

namespace ColdSim.App.Commands;

/// <summary>The rows of one reading of a record on their way to its years.</summary>
/// <param name="days">What is run in every year.</param>
/// <param name="cancel">Ends the reading.</param>
internal sealed class YearRows(RecordDays days, CancellationToken cancel) : IRowSink
{
    private const int Often = 1024;

    private readonly YearCollector _years = new(days);
    private int _rows;

    public void Begin(WeatherSource source)
    {
    }

    public void Take(in WeatherRow row)
    {
        if (_rows++ % Often == 0)
            cancel.ThrowIfCancellationRequested();
        _years.Add(row);
    }

    /// <summary>What the years need; good only if the file has no problem.</summary>
    public RecordYears Finish() => _years.Finish();
}
