using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Physics.Units;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Planning.Gauges;

/// <summary>What the instruments of one cylinder show at an instant of a run, and what they show once it is as warm as the air outside.</summary>
/// <param name="Place">Its place in the rig, from 0.</param>
/// <param name="Name">What it is called.</param>
/// <param name="InUse">Whether gas is drawn from it, or it is the one open.</param>
/// <param name="Tare">Its empty mass.</param>
/// <param name="HasUsualTare">Whether that is what is usual for its size; the stamp on its collar decides.</param>
/// <param name="Then">At the instant.</param>
/// <param name="Warmed">The same gas as warm as the air outside at that instant, its wall too; frost stays where the air freezes.</param>
internal sealed record ExpectedCylinder(
    int Place, string Name, bool InUse, Mass Tare, bool HasUsualTare, InstrumentReadings Then, InstrumentReadings Warmed);

/// <summary>What every cylinder's instruments show at an instant of a run.</summary>
internal sealed record ExpectedReadings
{
    // A tenth of a millimetre as it is laid down; less is not seen: an assumption.
    private const double VisibleFrost_kg_m2 = 0.005;

    /// <summary>The run.</summary>
    public required RunReport Run { get; init; }

    /// <summary>The instant, to a minute.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Whether it is the usual instant because none was given.</summary>
    public required bool IsUsualInstant { get; init; }

    /// <summary>Outside air then.</summary>
    public required Temperature Outside { get; init; }

    /// <summary>Pressure at the appliances.</summary>
    public required Pressure Delivery { get; init; }

    /// <summary>The temperature that an echo sensor is made for. [K]</summary>
    public required double Assumed_K { get; init; }

    /// <summary>The cylinders, in the rig's order.</summary>
    public required IReadOnlyList<ExpectedCylinder> Cylinders { get; init; }

    /// <summary>The one that the answer is about: the one that was named, or the one in use.</summary>
    public required ExpectedCylinder Chosen { get; init; }

    /// <summary>The first night's minute at which the liquid of the cylinder in use is coldest, when a level misleads most.</summary>
    /// <param name="run">The run.</param>
    public static int UsualMinute(RunReport run)
    {
        ArgumentNullException.ThrowIfNull(run);
        double[] liquid_K = run.Series.Liquid_K;
        int last = Math.Min(run.Series.Count - 1, MinuteOf(run, run.Nights[0].To)), coldest = 0;
        for (int i = 1; i <= last; i++)
        {
            if (liquid_K[i] < liquid_K[coldest]) coldest = i;
        }

        return coldest;
    }

    /// <summary>The readings at an instant of a run.</summary>
    /// <param name="run">The run.</param>
    /// <param name="at">The instant; null for the usual one.</param>
    /// <param name="cylinder">Place of the cylinder that is asked about, from 0; null for the one in use.</param>
    /// <param name="assumed_K">The temperature that an echo sensor is made for. [K]</param>
    /// <exception cref="TimeOutsideRunException">The run does not reach the instant.</exception>
    public static ExpectedReadings Of(RunReport run, DateTimeOffset? at, int? cylinder, double assumed_K = DriftTable.Assumed_K)
    {
        ArgumentNullException.ThrowIfNull(run);
        if (at is { } asked && (asked < run.Scenario.Start || MinuteOf(run, asked) >= run.Series.Count))
            throw new TimeOutsideRunException(asked);
        int minute = at is { } given ? MinuteOf(run, given) : UsualMinute(run), inUse = run.Series.InUse[minute];
        ExpectedCylinder[] all = CylindersOf(run, minute, assumed_K);
        return new()
        {
            Run = run,
            At = run.Scenario.Start.AddSeconds(minute * RunSeries.Spacing_s),
            IsUsualInstant = at is null,
            Outside = Temperature.FromKelvins(run.Series.Outside_K[minute]),
            Delivery = Pressure.FromPascals(run.Series.DeliveryPressure_Pa[minute]),
            Assumed_K = assumed_K,
            Cylinders = all,
            Chosen = all[cylinder ?? inUse],
        };
    }

    private static int MinuteOf(RunReport run, DateTimeOffset at)
        => (int)Math.Round((at - run.Scenario.Start).TotalSeconds / RunSeries.Spacing_s);

    private static ExpectedCylinder[] CylindersOf(RunReport run, int minute, double assumed_K)
    {
        IReadOnlyList<Leg> legs = NightRun.LegsOf(run.Scenario);
        DateTimeOffset at = run.Scenario.Start.AddSeconds(minute * RunSeries.Spacing_s);
        Leg leg = legs.FirstOrDefault(l => at < l.To) ?? legs[^1];
        Rig rig = leg.Of(run.Scenario.Rig);
        int row = 0;
        WeatherSample outside = leg.Weather.At((at - leg.Weather.First).TotalSeconds, ref row);

        // Only the power of all blankets together is recorded; that of one alone is known.
        double only_W = rig.Cylinders.Count(c => c.Blanket is not null) == 1 ? run.Series.Blanket_W[minute] : 0;
        double[] blanket_W = [.. rig.Cylinders.Select(c => c.Blanket is not null ? only_W : 0)];
        WeatherSample within = new EnclosureOutlook(rig).Within(outside, run.Series, minute, double.NaN, all: false, blanket_W);
        return
        [
            .. rig.Cylinders.Select((c, place) =>
                CylinderOf(run, place, new CylinderBody(c), minute, c.IsEnclosed ? within : outside, outside.Air_K, assumed_K)),
        ];
    }

    private static ExpectedCylinder CylinderOf(
        RunReport run, int place, CylinderBody body, int minute, in WeatherSample weather, double outside_K, double assumed_K)
    {
        Rig rig = run.Scenario.Rig;
        CylinderSeries own = run.Series.Cylinders[place];
        CylinderSpecification specification = body.Specification;
        double liquid_K = own.Liquid_K[minute], gas_kg = own.Propane_kg[minute], warm_K = LevelInputs.Clamp_K(outside_K);
        double bare_frac = 1 - (specification.Blanket?.Coverage_frac ?? 0);
        bool isPropane = !rig.Gas.IsMixed;
        FrostLayer frost = new(own.FrostMass_kg_m2[minute], own.FrostThickness_m[minute]);
        CylinderContents then = own.Contents(body, minute), warmed = own.Contents(body, minute, warm_K);
        WallTemperature? wall = WallTemperature.At(body, weather, then.LiquidVolume_m3, liquid_K, frost);
        double level_m = body.Vessel.LiquidLevel_m(Math.Clamp(then.LiquidVolume_m3, 0, body.Vessel.Volume_m3));
        double frost_kg = frost.Mass_kg_m2 * bare_frac * body.Vessel.WettedArea_m2(level_m);
        double? edge_m = frost.Mass_kg_m2 * bare_frac >= VisibleFrost_kg_m2 ? level_m + specification.WallThickness_m : null;
        AroundCylinder around = new(
            weather.Pressure_Pa, frost_kg, edge_m, bare_frac > 0 ? wall?.Below_K : null,
            body.IsUnderBlanket ? own.Hottest_K[minute] : wall?.Above_K);

        // Frost stays where it is, above the freezing point of water it is gone.
        bool freezes = warm_K <= ConversionFactors.ZeroCelsius_K;
        AroundCylinder afterwards = new(weather.Pressure_Pa, freezes ? frost_kg : 0, freezes ? edge_m : null, warm_K, warm_K);
        return new(
            place, rig.NameOf(place), IsInUse(run, place, minute), Mass.FromKilograms(specification.Tare_kg),
            StandardSize.Find(specification.Name) is { } size && size.Tare_kg == specification.Tare_kg,
            InstrumentReadings.Of(body, then, gas_kg, liquid_K, isPropane, around, assumed_K),
            InstrumentReadings.Of(body, warmed, gas_kg, warm_K, isPropane, afterwards, assumed_K));
    }

    private static bool IsInUse(RunReport run, int place, int minute)
        => run.Scenario.Rig.Arrangement is OpenTogether || run.Series.InUse[minute] == place;
}
