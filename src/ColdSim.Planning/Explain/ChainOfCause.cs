using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Physics.Mixtures;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Explain;

/// <summary>How a cylinder reached its state at an instant, in figures of one run. SI units, pressures gauge.</summary>
/// <remarks>
/// Sums run over the window's minutes and over all cylinders; levels are those of the cylinder in use. Heat in less evaporation is
/// what liquid and shell have given up.
/// </remarks>
public sealed record ChainOfCause
{
    /// <summary>Where the window begins: when the liquid was last at its warmest in the twelve hours before.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>Where it ends, to the minute before.</summary>
    public required DateTimeOffset To { get; init; }

    /// <summary>Time with the furnace lit. [s]</summary>
    public required double Burner_s { get; init; }

    /// <summary>Gas given, all appliances. [kg]</summary>
    public required double Given_kg { get; init; }

    /// <summary>Heat that evaporation took from liquid and shell. [J]</summary>
    public required double Evaporation_J { get; init; }

    /// <summary>Heat that came back from air, ground and sky. [J]</summary>
    public required double Surroundings_J { get; init; }

    /// <summary>Heat that came from the sun. [J]</summary>
    public required double Sun_J { get; init; }

    /// <summary>Heat that came from blankets. [J]</summary>
    public required double Blanket_J { get; init; }

    /// <summary>Name of the cylinder in use at the end.</summary>
    public required string Cylinder { get; init; }

    /// <summary>Its place.</summary>
    public required int InUse { get; init; }

    /// <summary>Outside wall under the liquid's level, at the end; 0 without liquid. [m²]</summary>
    public required double WettedWall_m2 { get; init; }

    /// <summary>Its whole outside wall. [m²]</summary>
    public required double WholeWall_m2 { get; init; }

    /// <summary>Whether it still has liquid.</summary>
    public required bool HasLiquid { get; init; }

    /// <summary>Propane in it at the end. [kg]</summary>
    public required double Left_kg { get; init; }

    /// <summary>Its liquid at the window's start. [K]</summary>
    public required double LiquidFrom_K { get; init; }

    /// <summary>Its liquid at the end. [K]</summary>
    public required double LiquidTo_K { get; init; }

    /// <summary>Outside air at the end. [K]</summary>
    public required double Outside_K { get; init; }

    /// <summary>Inside air at the end; NaN without a coach. [K]</summary>
    public required double Inside_K { get; init; }

    /// <summary>Pressure before the regulator at the end. [Pa gauge]</summary>
    public required double Pressure_Pa { get; init; }

    /// <summary>What the regulator could pass then at full delivery, as gross heat. [W]</summary>
    public required double CanGive_W { get; init; }

    /// <summary>The greatest demand on it in the minutes around the end, as gross heat. [W]</summary>
    public required double Asked_W { get; init; }

    /// <summary>Of a mixed gas, what its liquid is made of at the end: parts by mass; null for propane alone and without liquid.</summary>
    public GasMasses? Liquid { get; init; }

    /// <summary>What the report of the night says of the cylinder's mixed gas; null for propane alone.</summary>
    public BlendReport? Blend { get; init; }

    /// <summary>Reads it off a run.</summary>
    /// <param name="report">The run.</param>
    /// <param name="at">Its end; within the run.</param>
    public static ChainOfCause Before(RunReport report, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(report);
        double at_s = (at - report.Scenario.Start).TotalSeconds;
        RunSeries series = report.Curves.Around(at_s);
        Rig rig = report.Scenario.Rig;
        int to = Math.Clamp((int)Math.Floor(at_s / RunSeries.Spacing_s) - series.FirstSample, 0, series.Count - 1);
        int use = series.InUse[to];
        CylinderSeries used = series.Cylinders[use];
        int from = LastWarmest(used, to);
        double perHeat_kg = RunSeries.Spacing_s / rig.Gas.HeatingValue_J_kg;
        double burner_s = 0, given_kg = 0;
        for (int i = from + 1; i <= to; i++)
        {
            burner_s += series.Burner_frac[i] * RunSeries.Spacing_s;
            given_kg += series.Given_W[i] * perHeat_kg;
        }

        HeatSums heat = SumHeat(report.Scenario, series, from, to);
        CylinderBody body = new(rig.Cylinders[use]);
        CylinderContents contents = used.Contents(body, to);
        return new ChainOfCause
        {
            From = Instant(from),
            To = Instant(to),
            Burner_s = burner_s,
            Given_kg = given_kg,
            Evaporation_J = heat.Evaporation_J,
            Surroundings_J = heat.Into_J - heat.Sun_J - heat.Blanket_J,
            Sun_J = heat.Sun_J,
            Blanket_J = heat.Blanket_J,
            Cylinder = rig.NameOf(use),
            InUse = use,
            WettedWall_m2 = contents.HasLiquid
                ? body.Vessel.WettedArea_m2(body.Vessel.LiquidLevel_m(Math.Min(contents.LiquidVolume_m3, body.Vessel.Volume_m3)))
                : 0,
            WholeWall_m2 = body.Vessel.OutsideArea_m2,
            HasLiquid = contents.HasLiquid,
            Left_kg = used.Propane_kg[to],
            LiquidFrom_K = used.Liquid_K[from],
            LiquidTo_K = used.Liquid_K[to],
            Outside_K = series.Outside_K[to],
            Inside_K = series.Inside_K[to],
            Pressure_Pa = series.CylinderPressure_Pa[to],
            CanGive_W = series.Outlook?.CanGiveNow_W(series, to) ?? double.NaN,
            Asked_W = MostAsked_W(series, to),
            Liquid = rig.Gas.IsMixed && contents.HasLiquid
                ? MixedContents.Of(used.Gas(to), body.Vessel.Volume_m3, used.Liquid_K[to]).Liquid
                : null,
            Blend = (report.Nights.FirstOrDefault(n => Instant(to) < n.To) ?? report.Nights[^1]).Blends.ElementAtOrDefault(use),
        };

        DateTimeOffset Instant(int sample) => report.Scenario.Start.AddSeconds(series.Time_s(sample));
    }

    private static int LastWarmest(CylinderSeries cylinder, int to)
    {
        int warmest = to;
        for (int i = to; i >= Math.Max(0, to - RunCurves.LookBack); i--)
        {
            if (cylinder.Liquid_K[i] > cylinder.Liquid_K[warmest]) warmest = i;
        }

        return warmest;
    }

    // A shortage begins within a minute, whose mean holds only part of the demand.
    private static double MostAsked_W(RunSeries series, int at)
    {
        double most_W = series.Asked_W[at];
        for (int i = at + 1; i <= Math.Min(at + RunCurves.LookAhead, series.Count - 1); i++) most_W = Math.Max(most_W, series.Asked_W[i]);
        return most_W;
    }

    private readonly record struct HeatSums(double Into_J, double Evaporation_J, double Sun_J, double Blanket_J);

    // Heat into and out of all cylinders over the minutes after one sample up to another. The shares of sun and blanket come from the same film
    // coefficients as the engine's, at each minute's state.
    private static HeatSums SumHeat(Scenario scenario, RunSeries series, int from, int to)
    {
        CylinderBody[] bodies = [.. scenario.Rig.Cylinders.Select(c => new CylinderBody(c))];
        CylinderBody[] shaded =
            [.. scenario.Rig.Cylinders.Select(c => new CylinderBody(c with { Surroundings = c.Surroundings with { FixedSun_W = 0 } }))];
        EnclosureOutlook enclosure = new(scenario.Rig);
        double into_J = 0, evaporation_J = 0, sun_J = 0, blanket_J = 0;
        for (int i = from + 1; i <= to; i++)
        {
            into_J += series.HeatIntoCylinder_W[i] * RunSeries.Spacing_s;
            WeatherSample outside = WeatherAt(scenario, series.Time_s(i));
            WeatherSample within = enclosure.Within(outside, series, i, double.NaN, all: false, []);
            double share_frac = 0, power_W = 0;
            for (int c = 0; c < bodies.Length; c++)
            {
                CylinderSeries cylinder = series.Cylinders[c];
                CylinderSpecification its = bodies[c].Specification;
                double t_K = cylinder.Liquid_K[i];
                WeatherSample weather = its.IsEnclosed ? within : outside;
                CylinderContents contents = cylinder.Contents(bodies[c], i);
                evaporation_J += (cylinder.Propane_kg[i - 1] - cylinder.Propane_kg[i]) * contents.DrawHeat_J_kg;
                FrostLayer frost = new(cylinder.FrostMass_kg_m2[i], cylinder.FrostThickness_m[i]);
                sun_J += Sun_W(bodies[c], shaded[c], weather, contents, t_K, frost) * RunSeries.Spacing_s;
                if (its.Blanket is not { Power_W: > 0 } blanket) continue;
                double draw_kg_s = (cylinder.Propane_kg[i - 1] - cylinder.Propane_kg[i]) / RunSeries.Spacing_s;
                share_frac += blanket.Power_W * HeatCoupling.At(bodies[c], weather, contents, t_K, frost).BlanketShare_frac(draw_kg_s);
                power_W += blanket.Power_W;
            }

            if (power_W > 0) blanket_J += share_frac / power_W * series.Blanket_W[i] * RunSeries.Spacing_s;
        }

        return new HeatSums(into_J, evaporation_J, sun_J, blanket_J);
    }

    private static double Sun_W(CylinderBody body, CylinderBody shaded, in WeatherSample weather, in CylinderContents contents, double t_K, in FrostLayer frost)
    {
        CylinderSurroundings around = body.Specification.Surroundings;
        if (around.FixedConductance_W_K is not null) return 0;
        bool shines = around.FixedSun_W is { } fixed_W ? fixed_W > 0 : weather.CylinderSun_W_m2 > 0 && around.SunExposure_frac > 0;
        return !shines ? 0
            : HeatCoupling.At(body, weather, contents, t_K, frost).Heat_W(t_K) - HeatCoupling.At(shaded, weather, contents, t_K, frost).Heat_W(t_K);
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
