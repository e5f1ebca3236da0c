using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Logs;
using ColdSim.Planning;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Measurements;

namespace ColdSim.App.Screens.Readings;

/// <summary>A scenario's log and what the simulator predicts for its readings.</summary>
/// <param name="Use">The readings of the good lines as gas used.</param>
/// <param name="Prediction">What the simulator predicts for them.</param>
/// <param name="LeftOut">The lines that are left out: damaged, or readings that cannot be right.</param>
/// <param name="Measured">What else was measured, beside the simulator.</param>
internal sealed record PredictedLog(UseLog Use, LogPrediction Prediction, IReadOnlyList<FileProblem> LeftOut, MeasuredComparison Measured)
{
    public static PredictedLog Read(string file, Scenario scenario, UnitStyle units, IProgress<int> finished, CancellationToken cancel)
    {
        string path = LogFile.PathOf(file);
        LogResult log = File.Exists(path) ? LogReader.Read(path, scenario.Rig) : new LogResult([], []);
        LogConsistency consistency = LogConsistency.Of(log.Readings, scenario);
        return new(
            consistency.Kept, LogPrediction.Of(scenario, consistency.Kept, finished, cancel),
            [.. log.Damaged, .. consistency.LeftOut.Select(r => InconsistencyWords.LeftOut(r, path, scenario, units))],
            MeasuredComparison.ThroughLog(scenario with { Measurements = log.Measurements }, consistency.Kept, cancel));
    }
}

/// <summary>The result of a fit, or why there is none.</summary>
/// <param name="Report">The fit; null where the log says too little.</param>
/// <param name="Reasons">Why there is none.</param>
/// <param name="Prediction">What the fitted simulator predicts for the readings.</param>
internal sealed record ReadingsFit(FitReport? Report, IReadOnlyList<string> Reasons, LogPrediction? Prediction)
{
    public static ReadingsFit Of(Scenario scenario, UseLog log, IProgress<int> finished, CancellationToken cancel)
    {
        try
        {
            FitReport fit = CoachFit.Of(scenario, [.. log.Rows.Select(r => r.Reading)], finished: finished, cancel: cancel);
            return new(fit, [], LogPrediction.Of(Fitted(scenario, fit), log, null, cancel));
        }
        catch (TooLittleDataException e)
        {
            return new(null, e.Reasons, null);
        }
    }

    public static Scenario Fitted(Scenario scenario, FitReport fit)
    {
        Model.Rig before = scenario.Fit?.Before ?? scenario.Rig;
        return scenario with { Rig = fit.Factors.Over(before), Fit = new ScenarioFit(fit.Factors, before) };
    }
}

/// <summary>A reading was written to the log.</summary>
/// <param name="Notice">Which, in words.</param>
internal sealed record ReadingWritten(string Notice) : IFilesChanged;

/// <summary>A fit was written into the scenario.</summary>
/// <param name="Notice">Where, in words.</param>
internal sealed record FitTaken(string Notice) : IFilesChanged;
