using ColdSim.Model;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Search;

namespace ColdSim.Planning.Sensitivity;

/// <summary>What becomes of a run when one input is off by one standard error.</summary>
/// <param name="Input">The input.</param>
/// <param name="Size">Its standard error, in the unit of its <see cref="ErrorSizes"/>; of a logarithm, the part by which it is off.</param>
/// <param name="Worse">Whether it was moved to the worse side, as for a run that holds; to the better side for one that fails.</param>
/// <param name="Holds">Whether the run then holds.</param>
/// <param name="FailsAt">When it then first fails; null where it holds or no instant is known.</param>
/// <param name="Moved">How far that moves the answer: of a failure, its time in seconds; of a run that holds, the gas left at the end in kg.</param>
/// <param name="Left_kg">Gas left at the end then. [kg]</param>
public sealed record InputEffect(Uncertainty Input, double Size, bool Worse, bool Holds, DateTimeOffset? FailsAt, double Moved, double Left_kg);

/// <summary>Which uncertain inputs move an answer most: each moved by its standard error alone, with a run of its own.</summary>
/// <remarks>
/// A run that holds is tried with each input worse, one that fails with each input better, because that is what could change the answer. What
/// does change it comes first, then what moves it further.
/// </remarks>
internal static class InputSensitivity
{
    private const double LeastDelay_s = 600, LeastGas_kg = 0.05;

    private static readonly Uncertainty[] Inputs =
        [Uncertainty.HeatLoss, Uncertainty.Contents, Uncertainty.Temperature, Uncertainty.Wind, Uncertainty.Infiltration];

    /// <summary>Runs the scenario again for each input that it has.</summary>
    /// <param name="scenario">The scenario whose answer is in question.</param>
    /// <param name="summary">What it came to.</param>
    /// <param name="workers">How many runs at once; null takes one for each processor.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <returns>Those that move the answer, the first most.</returns>
    public static IReadOnlyList<InputEffect> Of(Scenario scenario, RunSummary summary, int? workers = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(summary);
        bool holds = summary.Verdict == Verdict.Holds;
        Uncertainty[] inputs = [.. Inputs.Where(i => Applies(i, scenario))];
        InputEffect[] effects = ParallelMap.Of(inputs.Length, i => Effect(inputs[i], scenario, summary, cancel), workers, cancel);
        return [.. effects.Where(e => e.Holds != holds || e.Moved >= (holds ? LeastGas_kg : LeastDelay_s))
            .OrderByDescending(e => e.Holds != holds).ThenByDescending(e => e.Moved)];
    }

    private static InputEffect Effect(Uncertainty input, Scenario scenario, RunSummary summary, CancellationToken cancel)
    {
        bool holds = summary.Verdict == Verdict.Holds;
        LeanRun run = NightRun.Lean(Moved(input, scenario, worse: holds), UnwatchedRun.Only, cancel);
        double left_kg = run.Nights.Count == 0 ? 0 : run.Nights[^1].LeftAtEnd_kg;
        double failure_s = run.Nights.FirstOrDefault(n => !double.IsNaN(n.FirstFailure_s))?.FirstFailure_s ?? double.NaN;
        DateTimeOffset? failsAt = double.IsNaN(failure_s) ? null : scenario.Start.AddSeconds(failure_s);
        double moved = holds ? summary.LeftAtEnd.Kilograms - left_kg
            : failsAt is { } then && summary.FirstFailure is { } now ? (then - now).TotalSeconds : 0;
        return new InputEffect(input, Size(input, scenario.Errors), holds, run.Holds, failsAt, moved, left_kg);
    }

    private static bool Applies(Uncertainty input, Scenario scenario) => input switch
    {
        Uncertainty.HeatLoss => scenario.Rig.Coach is not null,
        Uncertainty.Infiltration => scenario.Rig.Coach is { LeakageArea_cm2: > 0 },
        _ => true,
    } && Size(input, scenario.Errors) > 0;

    private static double Size(Uncertainty input, ErrorSizes errors) => input switch
    {
        Uncertainty.HeatLoss => Math.Exp(errors.HeatLoss.Value) - 1,
        Uncertainty.Infiltration => Math.Exp(errors.Infiltration.Value) - 1,
        Uncertainty.Wind => Math.Exp(errors.Wind.Value) - 1,
        Uncertainty.Contents => errors.Reading.Value,
        _ => errors.Temperature.Value,
    };

    private static Scenario Moved(Uncertainty input, Scenario scenario, bool worse)
    {
        double size = Size(input, scenario.Errors), factor = worse ? 1 + size : 1 / (1 + size);
        Rig rig = scenario.Rig;
        return input switch
        {
            Uncertainty.Temperature => InputErrors.InWeather(scenario, worse ? -size : size, 1),
            Uncertainty.Wind => InputErrors.InWeather(scenario, 0, factor),
            Uncertainty.HeatLoss => InputErrors.WithRig(scenario, rig with { Coach = InputErrors.Leaking(rig.Coach!, factor, 1) }),
            Uncertainty.Infiltration => InputErrors.WithRig(scenario, rig with { Coach = InputErrors.Leaking(rig.Coach!, 1, factor) }),
            _ => InputErrors.WithRig(scenario, rig with { Cylinders = [.. rig.Cylinders.Select(c => InputErrors.Holding(c, worse ? -size : size))] }),
        };
    }
}
