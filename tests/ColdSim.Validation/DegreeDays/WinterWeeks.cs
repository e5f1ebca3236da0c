using ColdSim.Model.Coach;
using ColdSim.Model.Engine;

namespace ColdSim.Validation.DegreeDays;

/// <summary>A week of gas beside its degree days.</summary>
/// <param name="Number">Which week of the winter.</param>
/// <param name="DegreeDays">Degree days below the balance point. [K·d]</param>
/// <param name="Ours_kg">Gas that our run took.</param>
/// <param name="ByDegreeDays_kg">Gas by the degree days.</param>
internal sealed record WinterWeek(int Number, double DegreeDays, double Ours_kg, double ByDegreeDays_kg)
{
    private const int Samples = 7 * 24 * 60;

    /// <summary>The twelve weeks of the winter file.</summary>
    public static IReadOnlyList<WinterWeek> All()
    {
        CaseRun run = CaseRun.Of("degree-days/winter.toml");
        RunSeries curves = run.Report.Series;
        CoachSpecification coach = run.Scenario.Rig.Coach!;
        double loss_W_K = coach.HeatLoss.Sum(h => h.Conductance_W_K);
        // The balance point: outside air at which the gains alone keep the set point.
        double balance_K = run.Scenario.Rig.Thermostat!.DaySetPoint_K - coach.InternalGains_W / loss_W_K;
        double heat_J_kg = run.Scenario.Rig.Gas.HeatingValue_J_kg * run.Scenario.Rig.Furnace!.Efficiency_frac;
        List<WinterWeek> weeks = [];
        for (int week = 0; week < 12; week++)
        {
            int from = week * Samples, to = from + Samples;
            double days = Enumerable.Range(0, 7 * 24)
                .Sum(h => Math.Max(0, balance_K - CaseRun.Mean(curves.Outside_K, from + 60 * h, from + 60 * (h + 1)))) / 24;
            weeks.Add(new(week + 1, days, run.Gas_kg(from, to), loss_W_K * days * 86_400 / heat_J_kg));
        }

        return weeks;
    }
}
