using ColdSim.Planning.Nights;
using ColdSim.Planning.Search;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.Planning.Actions;

/// <summary>What a run that holds can still bear, each alone.</summary>
/// <param name="Colder_K">How much colder all the weather may be, in whole degrees; null where even the most that is tried holds. [K]</param>
/// <param name="Less_kg">How much less gas there may be in all cylinders at the start, in whole steps; null likewise. [kg]</param>
public sealed record SpareMargin(double? Colder_K, double? Less_kg)
{
    // The furthest that is asked for: colder than that no forecast is off.
    private const double Most_K = 30;

    // What is left in a cylinder that nobody would call full of gas any more.
    private const double Least_kg = 0.05;

    /// <summary>Finds both by running everything again.</summary>
    internal static SpareMargin Of(Scenario scenario, AmountGrid grid, Action? finished, int? workers, CancellationToken cancel)
    {
        double contents_kg = scenario.Rig.Cylinders.Sum(c => c.Contents_kg);
        int colder = (int)Math.Round(Most_K / grid.WeatherDegree_K), less = (int)Math.Floor((contents_kg - Least_kg) / grid.Mass_kg);
        bool Holds(Scenario tried)
        {
            bool holds = TrialOutcome.WhileItHolds(tried, cancel).Holds;
            finished?.Invoke();
            return holds;
        }

        int?[] most = ParallelMap.Of(
            2,
            i => i == 0
                ? Most(colder, steps => Holds(InputErrors.InWeather(scenario, -steps * grid.WeatherDegree_K, 1)))
                : Most(less, steps => Holds(WithLess(scenario, steps * grid.Mass_kg / contents_kg))),
            workers,
            cancel);
        return new SpareMargin(most[0] * grid.WeatherDegree_K, most[1] * grid.Mass_kg);
    }

    // Outwards in doubled steps, then halved; null where the furthest holds.
    private static int? Most(int furthest, Func<int, bool> holds)
    {
        int yes = 0, no = 1;
        while (no <= furthest && holds(no)) (yes, no) = (no, 2 * no);
        if (no > furthest)
        {
            if (yes == furthest || holds(furthest)) return null;
            no = furthest;
        }

        while (no - yes > 1)
        {
            int middle = yes + (no - yes) / 2;
            if (holds(middle)) yes = middle;
            else no = middle;
        }

        return yes;
    }

    private static Scenario WithLess(Scenario scenario, double part_frac)
        => OnBoardActions.With(scenario, r => r with { Cylinders = [.. r.Cylinders.Select(c => c with { Contents_kg = c.Contents_kg * (1 - part_frac) })] });
}
