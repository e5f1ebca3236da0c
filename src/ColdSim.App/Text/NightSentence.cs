using ColdSim.Model;
using ColdSim.Model.Thermostat;
using ColdSim.Physics.Units;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>One plain sentence a night: what happens, when, how much is left and how cold it gets.</summary>
internal static class NightSentence
{
    private const double NoticeablyBelow_K = 2;
    private static readonly TimeSpan Same = TimeSpan.FromMinutes(1);

    public static string Of(NightReport night, RunReport run, UnitStyle units) => $"{Subject(night)} " + (night.Verdict switch
    {
        Verdict.Holds => Holds(night, run, units),
        Verdict.RunsFlat => IsFlat(night, run, units),
        _ => Fails(night, run, units),
    }) + ".";

    /// <summary>What stopped the run early, if something in the cylinder did; else null.</summary>
    public static string? WhyItEnds(RunReport run) => run.End switch
    {
        Model.Engine.RunEnd.LiquidFull =>
            "The run stops early: the liquid has swollen until it fills the cylinder, a danger in itself.",
        Model.Engine.RunEnd.ReliefPressure =>
            "The run stops early: the cylinder is so warm that its relief valve would open, a danger in itself.",
        Model.Engine.RunEnd.WeatherEnded => "The weather file ends before the nights that were asked for; nothing is known beyond it.",
        _ => null,
    };

    private static string Subject(NightReport night) => night.LeftAtDawn is null
        ? $"{ClockText.NightName(night)} (run only from {ClockText.Clock(night.From)} to {ClockText.Clock(night.To)}),"
        : $"{ClockText.NightName(night)},";

    /// <summary>Such as "8.1 lb is left at 07:00".</summary>
    private static string Left(NightReport night, RunReport run, UnitStyle units) => night.LeftAtDawn is { } left
        ? $"{Mass(left, units)} is left at {ClockText.Clock(run.Scenario.Criteria.Dawn)}"
        : $"{Mass(night.LeftAtEnd, units)} is left at {ClockText.Clock(night.To)}, where the run ends";

    private static string Mass(Mass mass, UnitStyle units) => units.Mass(mass.Kilograms);

    private static string Temperature(Temperature temperature, UnitStyle units) => units.Temperature(temperature.Kelvins);

    /// <summary>Of a night that holds: the coldest, what is left, and by how much it holds.</summary>
    private static string Holds(NightReport night, RunReport run, UnitStyle units)
        => $"{HoldsWords(night, run)}: {LowestInside(night, run, units)}, and {Left(night, run, units)}{Margin(night, units)}{Dip(night, run)}";

    // In a coach without its furnace the gas holds out, but the night does not hold.
    private static string HoldsWords(NightReport night, RunReport run)
        => run.Scenario.HeatStops is not { } stops || stops >= night.To ? "holds"
            : stops > night.From ? $"has gas enough, but no furnace from {ClockText.Clock(stops)}"
            : "has gas enough, but no furnace";

    private static string LowestInside(NightReport night, RunReport run, UnitStyle units)
    {
        string outside = $"outside falls to {Temperature(night.OutsideLow, units)}";
        if (night.InsideLow is not { } low || night.InsideLowAt is not { } at)
            return outside;
        string inside = Temperature(low, units);
        if (RoadAt(at, night, run) is { } road)
        {
            return $"{outside}; the coach is on the road from {ClockText.Clock(road.From)} to {ClockText.Clock(road.To)} with its gas shut off, "
                + $"and inside is down to {inside} at {ClockText.Clock(at)}";
        }

        return IsBelowThermostat(low, run.Scenario.Rig.Thermostat)
            ? $"{outside}, every appliance gets its gas, yet inside is down to {inside} at {ClockText.Clock(at)}, "
                + "colder than the thermostat asks"
            : $"{outside}, inside stays at {inside} or above";
    }

    // The drive in which an instant lies, as far as it belongs to the night; its end is the coldest of a coach that cools.
    private static (DateTimeOffset From, DateTimeOffset To)? RoadAt(DateTimeOffset at, NightReport night, RunReport run)
    {
        foreach (Leg leg in run.Scenario.Legs)
        {
            if (leg.OnTheRoad && at >= leg.From && at <= leg.To)
                return (leg.From > night.From ? leg.From : night.From, leg.To < night.To ? leg.To : night.To);
        }

        return null;
    }

    private static bool IsBelowThermostat(Temperature low, ThermostatSpecification? thermostat)
        => thermostat is not null
            && low.Kelvins < Math.Min(thermostat.DaySetPoint_K, thermostat.NightSetPoint_K) - NoticeablyBelow_K;

    /// <summary>A steady supply is given only with the liquid temperature that it allows.</summary>
    private static string Margin(NightReport night, UnitStyle units)
    {
        double asked_W = (double)night.DemandAtLow.Watts, steady_W = (double)night.SteadySupplyAtLow.Watts;
        if (night.GasUsed.Kilograms <= 0)
            return "; nothing asks for gas";
        if (asked_W <= 0)
            return "";
        string asked = $"; at the coldest hour {units.Power(asked_W)} is asked and";
        string liquid = night.AllowedLiquid is { } allowed
            ? $"with its liquid at {Temperature(allowed, units)}"
            : "through this regulator, all appliances at once";
        return steady_W >= asked_W
            ? $"{asked} the cylinder could keep giving {units.Power(steady_W)} {liquid}"
            : $"{asked} the cylinder could keep giving only {units.Power(steady_W)} {liquid}, "
                + "so it lives on warmth stored in the liquid";
    }

    private static string Dip(NightReport night, RunReport run) => night.FirstShort is { } first
        ? $"; supply dips first at {ClockText.Clock(first)}, {ClockText.Span(night.ShortTime)} in all, "
            + $"within the {ClockText.Span(run.Scenario.Criteria.ShortAllowance)} that counts as holding"
        : "";

    /// <summary>Of a night that runs short or dry: what fails, when, with how much left, and how cold it gets.</summary>
    private static string Fails(NightReport night, RunReport run, UnitStyle units)
    {
        List<string> then = [.. Starves(night, run), .. Lockouts(night), .. Inside(night, units), .. ShortTime(night)];
        string after = then.Count switch
        {
            0 => Left(night, run, units),
            1 => then[0],
            _ => string.Join(", ", then.Take(then.Count - 1)) + ", and " + then[^1],
        };
        return $"{What(night, run, units)}: {Cause(night, units)}{after}";
    }

    private static string What(NightReport night, RunReport run, UnitStyle units)
    {
        string left = night.LeftAtFirstShort is { } kg ? $" with {Mass(kg, units)}" : "";
        if (night.Verdict == Verdict.RunsShort)
        {
            return night.FirstShort is not { } at ? "runs short"
                : at - night.From < Same ? $"is short from its start at {ClockText.Clock(at)}{StillIn(left, run)}"
                : $"runs short at {ClockText.Clock(at)}{StillIn(left, run)}";
        }

        if (night.DryAt is not { } dry || dry - night.From < Same)
            return "is dry from its start";
        if (night.FirstShort is not { } first || dry - first <= Same)
            return $"runs dry at {ClockText.Clock(dry)}";
        string begins = first - night.From < Same ? "is short from its start" : "runs short";
        return $"{begins} at {ClockText.Clock(first)}{(left == "" ? "" : left + " left")} and dry at {ClockText.Clock(dry)}";
    }

    private static string StillIn(string left, RunReport run) => left == "" ? "" : $"{left} of {run.Scenario.Rig.Gas.Name} still in the cylinder";

    private static string Cause(NightReport night, UnitStyle units)
    {
        string? tooLittle = night is { LiquidAtFirstShort: { } liquid, CylinderPressureAtFirstShort: { } pressure }
            ? $"the liquid is at {Temperature(liquid, units)} and gives {units.Pressure(pressure.Pascals)}, too little for what is asked"
            : null;
        if (night.Verdict == Verdict.RunsShort)
            return tooLittle is null ? "" : tooLittle + "; ";

        string? gone = night.LiquidGoneAt is { } at ? ClockText.Clock(at) : null;
        bool shortFirst = night.FirstShort < night.DryAt - Same;
        return tooLittle is not null && shortFirst ? $"{tooLittle}{(gone is null ? "" : $", and the last of it boils off at {gone}")}; "
            : gone is not null ? $"the last liquid boils off at {gone}; "
            : "no liquid is left; ";
    }

    private static IEnumerable<string> Starves(NightReport night, RunReport run)
    {
        if (WhoDrew.Applies(run) && night.FirstToStarve is { } first)
            yield return $"the {first} needs the most pressure of those that go short";
    }

    private static IEnumerable<string> Lockouts(NightReport night)
    {
        if (night.FirstLockout is not { } first)
            yield break;
        yield return $"the furnace locks out at {ClockText.Clock(first)}" + (night.Lockouts switch
        {
            1 => "",
            2 => " and once more",
            _ => $" and {night.Lockouts - 1} times more",
        });
    }

    private static IEnumerable<string> Inside(NightReport night, UnitStyle units)
    {
        if (night.InsideLow is not { } low || night.InsideLowAt is not { } at)
            yield break;
        string lowest = $"{Temperature(low, units)} at {ClockText.Clock(at)}";
        yield return night.FreezingAt is not { } freezing ? $"inside falls to {lowest}"
            : freezing - night.From < Same ? $"inside is freezing from its start and falls to {lowest}"
            : Temperature(low, units) == units.Temperature(ConversionFactors.ZeroCelsius_K) ? $"inside falls to freezing, {Temperature(low, units)}, at {ClockText.Clock(freezing)}"
            : $"inside falls to freezing at {ClockText.Clock(freezing)} and to {lowest}";
    }

    private static IEnumerable<string> ShortTime(NightReport night)
    {
        if (night.ShortTime.Seconds > 0)
            yield return $"gas is short for {ClockText.Span(night.ShortTime)} in all";
    }

    /// <summary>Of a night whose battery is flat before gas is short: when, how much gas is left, and how cold it gets.</summary>
    private static string IsFlat(NightReport night, RunReport run, UnitStyle units)
    {
        NightPower power = night.Power!;
        DateTimeOffset at = power.FlatAt!.Value;
        string begins = at - night.From < Same ? "is without voltage from its start" : $"has its battery flat at {ClockText.Clock(at)}";
        string gas = $"with {Mass(power.GasLeftAtFlat!.Value, units)} of {CylinderWords.Gas(run.Scenario.Rig)} left";
        string stops = run.Scenario.Rig.Furnace is null ? "what draws on it stands still" : "the furnace's board is dead";
        List<string> then = [$"{stops} for {ClockText.Span(power.VoltageGone)} in all", .. Inside(night, units), .. GasToo(night)];
        return $"{begins} {gas}: {(then.Count == 1 ? then[0] : string.Join(", ", then.Take(then.Count - 1)) + ", and " + then[^1])}";
    }

    private static IEnumerable<string> GasToo(NightReport night)
    {
        if (night.DryAt is { } dry)
            yield return $"the cylinder is dry at {ClockText.Clock(dry)} as well";
        else if (night.ShortTime.Minutes >= 1)
            yield return $"gas is short for {ClockText.Span(night.ShortTime)} as well";
    }

    /// <summary>The danger of a cylinder that gets hotter than one may be; null where none does.</summary>
    public static string? Hot(RunReport report, UnitStyle units)
    {
        if (report.Nights.FirstOrDefault(n => n.CylinderHotAt is not null) is not { CylinderHotAt: { } at, HotCylinder: { } cylinder })
            return null;
        Rig rig = report.Scenario.Rig;
        string which = rig.Cylinders.Count > 1 ? $"{rig.NameOf(cylinder)} cylinder" : "cylinder";
        double hottest_K = report.Nights.Max(n => n.HottestCylinder.Kelvins);
        string why = rig.Cylinders[cylinder].Blanket is { StuckOn: true } ? " under the stuck thermostat" : "";
        return $"DANGER: the {which} passes 125 °F (52 °C) on {ClockText.DayClock(at)}{why} and reaches {units.Temperature(hottest_K)}; no cylinder "
            + "may get so hot. Cut the blanket's power and do not use it again until its maker or a licensed technician has seen to it.";
    }
}
