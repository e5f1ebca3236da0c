using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Explain;

/// <summary>Heat into and out of all cylinders over some minutes of a run.</summary>
internal readonly record struct HeatSums(double Into_J, double Evaporation_J, double Sun_J, double Blanket_J)
{
    /// <summary>Adds up the minutes after one sample to another.</summary>
    /// <remarks>Sun and blanket are told apart by the same film as the engine's, at each minute's state.</remarks>
    public static HeatSums Over(RunReport report, int from, int to)
    {
        Scenario scenario = report.Scenario;
        RunSeries series = report.Series;
        CylinderBody[] bodies = [.. scenario.Rig.Cylinders.Select(c => new CylinderBody(c))];
        double into_J = 0, evaporation_J = 0, sun_J = 0, blanket_J = 0;
        for (int i = from + 1; i <= to; i++)
        {
            into_J += series.HeatIntoCylinder_W[i] * RunSeries.Spacing_s;
            WeatherSample weather = WeatherAt(scenario, i * RunSeries.Spacing_s);
            double share_frac = 0, power_W = 0;
            for (int c = 0; c < bodies.Length; c++)
            {
                CylinderSeries cylinder = series.Cylinders[c];
                CylinderSpecification its = bodies[c].Specification;
                double t_K = cylinder.Liquid_K[i];
                CylinderContents contents = cylinder.Contents(bodies[c], i);
                evaporation_J += (cylinder.Propane_kg[i - 1] - cylinder.Propane_kg[i]) * contents.DrawHeat_J_kg;
                FrostLayer frost = new(cylinder.FrostMass_kg_m2[i], cylinder.FrostThickness_m[i]);
                sun_J += Sun_W(bodies[c], weather, contents, t_K, frost) * RunSeries.Spacing_s;
                if (its.Blanket is not { Power_W: > 0 } blanket) continue;
                share_frac += blanket.Power_W * HeatCoupling.At(bodies[c], weather, contents, t_K, frost).BlanketShare_frac;
                power_W += blanket.Power_W;
            }

            if (power_W > 0) blanket_J += share_frac / power_W * series.Blanket_W[i] * RunSeries.Spacing_s;
        }

        return new HeatSums(into_J, evaporation_J, sun_J, blanket_J);
    }

    private static double Sun_W(CylinderBody body, in WeatherSample weather, in CylinderContents contents, double t_K, in FrostLayer frost)
    {
        CylinderSurroundings around = body.Specification.Surroundings;
        if (around.FixedConductance_W_K is not null) return 0;
        if (around.FixedSun_W is { } fixed_W) return fixed_W;
        if (weather.CylinderSun_W_m2 <= 0 || around.SunExposure_frac <= 0) return 0;
        return HeatCoupling.At(body, weather, contents, t_K, frost).Heat_W(t_K)
            - HeatCoupling.At(body, weather with { CylinderSun_W_m2 = 0 }, contents, t_K, frost).Heat_W(t_K);
    }

    private static WeatherSample WeatherAt(Scenario scenario, double time_s)
    {
        DateTimeOffset time = scenario.Start.AddSeconds(time_s);
        WeatherSeries weather = scenario.Legs.LastOrDefault(l => l.From <= time)?.Weather ?? scenario.Weather;
        double since_s = (time - weather.First).TotalSeconds;
        int row = (int)Math.Max(0, since_s / 3600);
        return weather.At(since_s, ref row);
    }
}
