using ColdSim.Model;
using ColdSim.Physics.Units;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>One plain sentence a night: what happens, when, how much is left and how cold it gets.</summary>
internal static class NightSentence
{
    private static readonly TimeSpan Same = TimeSpan.FromMinutes(1);

    public static string Of(NightReport night, RunReport run, UnitStyle units) => $"{Subject(night)} " + (night.Verdict switch
    {
        Verdict.Holds => Holds(night, run, units),
        Verdict.BatteryFlat => IsFlat(night, run, units),
        Verdict.FurnaceStopped => $"has no furnace from {ClockText.Clock(Stopped(night, run))}: {Then(night, units)}",
        Verdict.FurnaceTooSmall => IsTooSmall(night, units),
        Verdict.WaterFreezes => $"{WaterWords(night)}: {Then(night, units, Left(night, run, units))}",
        _ => Fails(night, run, units),
    }) + ".";

    /// <summary>What stopped the run early, if something in the cylinder did; else null.</summary>
    public static string? WhyItEnds(RunReport run) => run.End switch
    {
        Model.Engine.RunEnd.LiquidFull =>
            "The run stops early: the liquid has swollen until it fills the cylinder, a danger in itself.",
        Model.Engine.RunEnd.ReliefPressure =>
            "The run stops early: the cylinder is so warm that its relief valve would open, a danger in itself.",
        Model.Engine.RunEnd.WeatherEnded => "The weather file ends before the last night; nothing is known beyond it.",
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
        => $"holds: {LowestInside(night, run, units)}, and {Left(night, run, units)}{Margin(night, units)}{Dip(night, run)}";

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

        return $"{outside}, inside stays at {inside} or above";
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

    /// <summary>What can be given is said with its time; without end, with the liquid temperature that it allows.</summary>
    private static string Margin(NightReport night, UnitStyle units)
    {
        double asked_W = (double)night.DemandAtLow.Watts, steady_W = (double)night.SteadySupplyAtLow.Watts;
        if (night.GasUsed.Kilograms <= 0)
            return "; nothing asks for gas";
        if (asked_W <= 0)
            return "";
        string span = night.Capacity?.ForSpanAtLow is { } given ? $" {units.Power((double)given.Watts)} for 4 h,{AllNight(night, units)} and" : "";
        string liquid = night.AllowedLiquid is { } allowed
            ? $"with its liquid at {Temperature(allowed, units)}"
            : "through this regulator, all appliances at once";
        string asked = $"; at the coldest hour {units.Power(asked_W)} is needed and the cylinder could give{span}";
        return steady_W >= asked_W
            ? $"{asked} {units.Power(steady_W)} without end {liquid}"
            : $"{asked} only {units.Power(steady_W)} without end {liquid}, so it lives on warmth stored in the liquid";
    }

    private static string AllNight(NightReport night, UnitStyle units)
        => night.Capacity?.ForNight is { } given ? $" {units.Power((double)given.Watts)} all night" : "";

    private static string Dip(NightReport night, RunReport run) => night.FirstShort is { } first
        ? $"; supply dips first at {ClockText.Clock(first)}, {ClockText.Span(night.ShortTime)} in all, "
            + $"within the {ClockText.Span(run.Scenario.Criteria.ShortAllowance)} that counts as holding"
        : "";

    /// <summary>Of a night that runs short or dry: what fails, when, with how much left, and how cold it gets.</summary>
    private static string Fails(NightReport night, RunReport run, UnitStyle units)
    {
        List<string> then = [.. Starves(night, run), .. Lockouts(night), .. Inside(night, units), .. ShortTime(night), .. BatteryToo(night), .. WaterToo(night)];
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
        if (night.DryAt is null)
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
            ? $"the liquid is at {Temperature(liquid, units)} and gives {units.Pressure(pressure.Pascals)}, too little for the burners"
            : null;
        if (night.DryAt is null)
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
            yield return $"the {first} needs the most pressure, so it fails first";
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
            yield return $"gas is short for {ClockText.Span(night.ShortTime)} in all{ShortageText.Parts(night)}";
    }

    /// <summary>Of a night whose battery is flat before gas is short: when, how much gas is left, and how cold it gets.</summary>
    private static string IsFlat(NightReport night, RunReport run, UnitStyle units)
    {
        NightPower power = night.Power!;
        DateTimeOffset at = power.FlatAt!.Value;
        string begins = at - night.From < Same ? "is without voltage from its start" : $"has its battery flat at {ClockText.Clock(at)}";
        string gas = $"with {Mass(power.GasLeftAtFlat!.Value, units)} of {CylinderWords.Gas(run.Scenario.Rig)} left";
        string stops = run.Scenario.Rig.Furnace is null ? "what it feeds stops" : "the furnace's board is dead";
        return $"{begins} {gas}: {Then(night, units, $"{stops} for {ClockText.Span(power.VoltageGone)} in all")}";
    }

    /// <summary>Of a night whose furnace is too small: since when, and how cold it gets.</summary>
    private static string IsTooSmall(NightReport night, UnitStyle units)
        => $"has too small a furnace: it burns without a pause with all the gas it needs, and from {ClockText.Clock(night.FirstFailure ?? night.From)} on "
            + $"inside stays below the set point; {Then(night, units)}";

    // What else happens in a night whose cause is named already.
    private static string Then(NightReport night, UnitStyle units, string? first = null)
    {
        List<string> then = [.. first is null ? [] : (string[])[first], .. NoHeat(night), .. Inside(night, units), .. GasToo(night)];
        if (night.Verdict != Verdict.BatteryFlat) then.AddRange(BatteryToo(night));
        if (night.Verdict != Verdict.WaterFreezes) then.AddRange(WaterToo(night));
        return then.Count switch { 0 => "nothing else fails", 1 => then[0], _ => string.Join(", ", then.Take(then.Count - 1)) + ", and " + then[^1] };
    }

    private static IEnumerable<string> NoHeat(NightReport night)
    {
        if (night.Verdict == Verdict.FurnaceStopped)
            yield return $"there is no heat for {ClockText.Span(night.NoHeatTime)} in all";
    }

    private static DateTimeOffset Stopped(NightReport night, RunReport run)
        => run.Scenario.HeatStops is { } stops && stops > night.From ? stops : night.FirstFailure ?? night.From;

    private static WaterReport? FirstWater(NightReport night)
        => night.Water.Where(w => w.HoldsWater && w.FreezesAt is not null).MinBy(w => w.FreezesAt);

    private static string WaterWords(NightReport night) => FirstWater(night) is { FreezesAt: { } at } water
        ? $"does not hold, for water freezes in {water.Name} at {ClockText.Clock(at)}"
        : "does not hold, for water is still frozen";

    private static IEnumerable<string> WaterToo(NightReport night)
    {
        if (FirstWater(night) is { FreezesAt: { } at } water)
            yield return $"water freezes in {water.Name} at {ClockText.Clock(at)}";
    }

    private static IEnumerable<string> BatteryToo(NightReport night)
    {
        if (night.Power is { FlatAt: { } at, VoltageGone: { Minutes: >= 1 } gone })
            yield return $"the battery is flat from {ClockText.Clock(at)} as well, for {ClockText.Span(gone)} in all";
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
        return $"DANGER: the {which} passes {units.InOwn("125 °F (52 °C)")} on {ClockText.DayClock(at)}{why} and reaches {units.Temperature(hottest_K)}; no cylinder "
            + "may get so hot. Cut the blanket's power and do not use it again until its maker or a licensed technician has seen to it.";
    }
}
