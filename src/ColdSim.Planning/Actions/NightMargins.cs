using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.Planning.Actions;

/// <summary>How much colder a night may be and still hold.</summary>
/// <param name="Colder_K">In whole steps of the weather, with all the weather so much colder; zero where one step more is too much; null where the night does not hold as it is. [K]</param>
/// <param name="IsMost">Whether even the most that is tried holds.</param>
internal readonly record struct NightMargin(double? Colder_K, bool IsMost);

/// <summary>How much colder all the weather of a run may be so that each of its nights still holds, found by running it again.</summary>
internal static class NightMargins
{
    /// <summary>The coldest that is tried: colder than that no forecast is off. [K]</summary>
    public const double Most_K = 30;

    /// <summary>Finds it for every night.</summary>
    /// <param name="report">The run as it is.</param>
    /// <param name="grid">The steps of the weather.</param>
    /// <param name="finished">Called after every run.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static IReadOnlyList<NightMargin> Of(RunReport report, AmountGrid grid, Action? finished = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(grid);
        int most = (int)Math.Round(Most_K / grid.WeatherDegree_K);
        Dictionary<int, bool[]> tried = new() { [0] = [.. report.Nights.Select(n => n.Verdict == Verdict.Holds)] };
        bool Holds(int night, int steps)
        {
            if (!tried.TryGetValue(steps, out bool[]? nights))
            {
                LeanRun run = NightRun.Lean(InputErrors.InWeather(report.Scenario, -steps * grid.WeatherDegree_K, 1), UnwatchedRun.Only, cancel);
                tried[steps] = nights = [.. run.Nights.Select(n => n.Verdict == Verdict.Holds)];
                finished?.Invoke();
            }

            return night < nights.Length && nights[night];
        }

        return [.. Enumerable.Range(0, report.Nights.Count).Select(night => Margin(steps => Holds(night, steps), most, grid.WeatherDegree_K))];
    }

    // Outwards in doubled steps, then halved; the runs are shared by all nights.
    private static NightMargin Margin(Func<int, bool> holds, int most, double step_K)
    {
        if (!holds(0)) return default;
        int yes = 0, no = 1;
        while (no <= most && holds(no)) (yes, no) = (no, 2 * no);
        if (no > most)
        {
            if (holds(most)) return new NightMargin(most * step_K, true);
            no = most;
        }

        while (no - yes > 1)
        {
            int middle = yes + (no - yes) / 2;
            if (holds(middle)) yes = middle;
            else no = middle;
        }

        return new NightMargin(yes * step_K, false);
    }
}
