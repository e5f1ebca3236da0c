using ColdSim.Model.Coach;
using ColdSim.Model.Engine;

namespace ColdSim.Validation.ClosedForms;

/// <summary>One of the drawn cases beside its closed form.</summary>
/// <param name="File">Its scenario file.</param>
/// <param name="Ours">Our figures: of a curve at the hours after the start, else one.</param>
/// <param name="Exact">What the closed form gives for them.</param>
/// <param name="Difference">The largest difference, in the unit of the kind.</param>
internal sealed record ClosedForm(string File, IReadOnlyList<double> Ours, IReadOnlyList<double> Exact, double Difference)
{
    /// <summary>Liquid temperature by the hour; difference in kelvin for each kelvin that the liquid would fall in the end.</summary>
    public static ClosedForm Draw(string file)
    {
        CaseRun run = CaseRun.Of(file);
        RunSeries curves = run.Report.Series;
        int last = curves.Count - 1;
        double seconds = last * RunSeries.Spacing_s;
        DrawCurve exact = new(run.Scenario.Rig.Cylinders[0], curves.Outside_K[0], run.Gas_kg(0, last) / seconds);
        return Hourly(file, curves.Liquid_K, last, exact.At_K, exact.Fall_K);
    }

    /// <summary>Inside air by the hour; difference in kelvin.</summary>
    public static ClosedForm Cooling(string file)
    {
        CaseRun run = CaseRun.Of(file);
        RunSeries curves = run.Report.Series;
        return Hourly(file, curves.Inside_K, curves.Count - 1, new TwoNodeCooling(run.Scenario.Rig.Coach!, curves.Outside_K[0]).At_K, 1);
    }

    /// <summary>The part of the time in which the furnace burns, over the last two of three days; difference as a part of it.</summary>
    public static ClosedForm Duty(string file)
    {
        CaseRun run = CaseRun.Of(file);
        RunSeries curves = run.Report.Series;
        CoachSpecification coach = run.Scenario.Rig.Coach!;
        int last = curves.Count - 1, from = last - 2 * 24 * 60;
        double inside_K = run.Scenario.Rig.Thermostat!.DaySetPoint_K;
        double load_W = coach.HeatLoss.Sum(h => h.Conductance_W_K) * (inside_K - curves.Outside_K[0]) - coach.InternalGains_W;
        double exact = load_W / (run.Scenario.Rig.Furnace!.Input_W * run.Scenario.Rig.Furnace.Efficiency_frac);
        double burnt_J = run.Gas_kg(from, last) * run.Scenario.Rig.Gas.HeatingValue_J_kg;
        double ours = burnt_J / (run.Scenario.Rig.Furnace.Input_W * (last - from) * RunSeries.Spacing_s);
        return new(file, [ours], [exact], ours / exact - 1);
    }

    /// <summary>Heat into the coach over a week and what it lost and stored by its curves, in MJ; difference as a part of what went in.</summary>
    public static ClosedForm Week(string file)
    {
        CaseRun run = CaseRun.Of(file);
        RunSeries curves = run.Report.Series;
        CoachSpecification coach = run.Scenario.Rig.Coach!;
        int last = curves.Count - 1;
        double seconds = last * RunSeries.Spacing_s;
        double furnace_J = run.Gas_kg(0, last) * run.Scenario.Rig.Gas.HeatingValue_J_kg * run.Scenario.Rig.Furnace!.Efficiency_frac;
        double in_J = furnace_J + coach.InternalGains_W * seconds;
        double lost_J = coach.HeatLoss.Sum(h => h.Conductance_W_K) * (CaseRun.Mean(curves.Inside_K, 0, last) - curves.Outside_K[0]) * seconds;
        // Furnishings are taken to be as warm as the air was over the last hour.
        double stored_J = coach.AirCapacity_J_K * (curves.Inside_K[last] - curves.Inside_K[0])
            + coach.FurnishingsCapacity_J_K * (CaseRun.Mean(curves.Inside_K, last - 60, last) - curves.Inside_K[0]);
        return new(file, [in_J / 1e6], [(lost_J + stored_J) / 1e6], in_J / (lost_J + stored_J) - 1);
    }

    private static ClosedForm Hourly(string file, double[] curve_K, int last, Func<double, double> exact_K, double scale)
    {
        double worst = 0;
        for (int i = 0; i <= last; i++)
        {
            double difference = (curve_K[i] - exact_K(i * RunSeries.Spacing_s)) / scale;
            if (Math.Abs(difference) > Math.Abs(worst)) worst = difference;
        }

        double[] ours = [.. Enumerable.Range(0, last / 60 + 1).Select(h => curve_K[60 * h] - 273.15)];
        double[] exact = [.. Enumerable.Range(0, last / 60 + 1).Select(h => exact_K(3600.0 * h) - 273.15)];
        return new(file, ours, exact, worst);
    }
}
