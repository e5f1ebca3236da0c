using ColdSim.Model;
using ColdSim.Model.Blanket;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Text;

/// <summary>What a limits chart's set-ups, cells and night are called, in one wording for table, chart, page and sentence.</summary>
internal static class LimitWords
{
    /// <summary>The mark of a set-up in the chart.</summary>
    public static char Mark(RigVariantKind kind) => kind switch
    {
        RigVariantKind.Bare => 'o',
        RigVariantKind.Blanket => 'x',
        RigVariantKind.SecondCylinder => '#',
        _ => '+',
    };

    /// <summary>Such as "blanket".</summary>
    public static string Name(RigVariantKind kind, Rig rig) => kind switch
    {
        RigVariantKind.Bare => "bare",
        RigVariantKind.Blanket => "blanket",
        RigVariantKind.SecondCylinder => OneMore(rig),
        _ => $"{OneMore(rig)} and blankets",
    };

    /// <summary>The same for the head of a column.</summary>
    public static IReadOnlyList<string> Heading(RigVariantKind kind, Rig rig) => kind switch
    {
        RigVariantKind.Bare => ["bare"],
        RigVariantKind.Blanket => ["with", "blanket"],
        RigVariantKind.SecondCylinder => rig.Cylinders.Count == 1 ? ["second", "cylinder"] : ["one more", "cylinder"],
        _ => rig.Cylinders.Count == 1 ? ["second", "and blankets"] : ["one more", "and blankets"],
    };

    /// <summary>A limit with its unit, as a sentence has it.</summary>
    public static string Limit(LimitCell cell, LimitChart chart, UnitStyle units) => cell.Kind switch
    {
        LimitKind.HoldsAtColdest => $"below {units.Temperature(chart.Axis.Coldest_K)}",
        LimitKind.NotAtWarmest => $"not at {units.Temperature(chart.Axis.Warmest_K)}",
        _ => units.Temperature(cell.Low_K),
    };

    /// <summary>The same without its unit; a mark where it is not the supply of gas that sets the limit.</summary>
    public static string Cell(LimitCell cell, LimitChart chart, UnitStyle units) => cell.Kind switch
    {
        LimitKind.HoldsAtColdest => $"below {units.TemperatureNumber(chart.Axis.Coldest_K)} ",
        LimitKind.NotAtWarmest => $"not at {units.TemperatureNumber(chart.Axis.Warmest_K)}{Sign(cell)} ",
        _ => $"{units.TemperatureNumber(cell.Low_K)}{Sign(cell)} ",
    };

    public static string Tolerance(LimitChart chart, UnitStyle units)
        => $"{UnitStyle.Number(units.DifferenceIn(chart.Axis.Step_K), units.IsUs ? 0 : 1)} {units.TemperatureUnit}";

    public static string Percent(double frac) => $"{UnitStyle.Number(100 * frac, Math.Abs(100 * frac - Math.Round(100 * frac)) < 0.05 ? 0 : 1)} %";

    /// <summary>The column of the rig as it is; of one that has no column of its own, the bare one.</summary>
    public static LimitColumn Own(LimitChart chart) => chart.Columns.FirstOrDefault(c => c.RigVariant.AsItIs) ?? chart.Columns[0];

    /// <summary>What the set-ups are, a line each.</summary>
    public static IEnumerable<string> SetUps(LimitChart chart, UnitStyle units) => chart.Columns.Select(c => RigVariant(c.RigVariant, chart, units));

    /// <summary>The night that every cell is run through.</summary>
    public static string Night(LimitChart chart, UnitStyle units)
    {
        StandardNight night = chart.Night;
        return $"{ClockText.Clock(night.From)} to {ClockText.Clock(night.To)}. The high at 15:00 is {units.Difference(StandardNight.Swing_K)} above the low at 07:00, "
            + $"half a cosine between; {units.Speed(night.Air.Wind_m_s)} of wind at mast height all night, "
            + $"{Percent(night.Air.RelativeHumidity_frac)} humidity, {Percent(night.Air.Cloud_frac)} cloud, no sun. Cylinders start as cold as the "
            + "air at 16:00, the coach at its set point. Thermostat, other appliances, people, wind exposure and altitude are the scenario's." + Drawn(chart, units);
    }

    // Butane stays while propane boils off, so how a cylinder came to its fill matters.
    private static string Drawn(LimitChart chart, UnitStyle units) => !chart.Scenario.Rig.Gas.IsMixed ? ""
        : $" At each fill the {chart.Scenario.Rig.Gas.Name} is what is left of a full cylinder drawn down at {units.Temperature(Planning.Limits.RigVariant.DrawnAt_K)}; "
            + "\"as it is\" it is the gas that the scenario names.";

    /// <summary>What counts as fed.</summary>
    public static string Fed(LimitChart chart, UnitStyle units)
    {
        Planning.NightCriteria criteria = chart.Scenario.Criteria;
        string allowed = ClockText.Span(criteria.ShortAllowance);
        return $"Each limit is for that whole night, while the contents fall and frost grows. Holds: gas and battery fail for at most {allowed} in all, inside falls at most {units.Difference(criteria.BelowSetPoint.Kelvins)} below the set "
            + "point for lack of gas or because the furnace is too small, and no declared water freezes. Each number was run and holds, as do the two next "
            + $"warmer ones; one {Tolerance(chart, units)} colder was run and does not.";
    }

    /// <summary>What the stars and letters in this chart mean; empty where there are none.</summary>
    public static IEnumerable<string> Signs(LimitChart chart)
    {
        string[] used = [.. chart.Cells.Select(Sign).Distinct()];
        if (used.Contains("*"))
            yield return "* One step colder the furnace is too small: it burns without a pause with all its gas, and inside stays below the set point.";
        if (used.Contains("b"))
            yield return "b One step colder the battery goes flat first.";
        if (used.Contains("w"))
            yield return "w One step colder the water of a pipe or tank freezes first.";
        if (used.Contains("d"))
            yield return "d One step colder at most 5 % is left when gas falls short: more gas helps there, not more warmth.";
    }

    private static string Sign(LimitCell cell) => cell.Kind == LimitKind.HoldsAtColdest ? "" : cell.FailsColder switch
    {
        Verdict.FurnaceTooSmall => "*",
        Verdict.BatteryFlat => "b",
        Verdict.WaterFreezes => "w",
        _ => cell.Emptied ? "d" : "",
    };

    private static string OneMore(Rig rig) => rig.Cylinders.Count == 1 ? "second cylinder" : "one more cylinder";

    private static string RigVariant(RigVariant setUp, LimitChart chart, UnitStyle units)
    {
        Rig rig = chart.Scenario.Rig;
        string what = setUp.Kind switch
        {
            RigVariantKind.Bare => $"{CylinderWords.Names(setUp.Rig)}{(rig.Cylinders.Count > 1 ? ", " + CylinderWords.Arranged(rig.Arrangement) : "")}",
            RigVariantKind.Blanket => Blanket(setUp, chart, units),
            RigVariantKind.SecondCylinder => $"{(rig.Cylinders.Count == 1 ? "a second" : "one more")} {rig.Cylinders[0].Name} cylinder, as full, all open together",
            _ => "as the two above together",
        };
        return $"{Mark(setUp.Kind)} {Name(setUp.Kind, rig)}: {what}{(setUp.AsItIs ? " (the rig as it is)" : "")}";
    }

    private static string Blanket(RigVariant setUp, LimitChart chart, UnitStyle units)
    {
        BlanketSpecification blanket = setUp.Blanket!;
        bool own = chart.Scenario.Rig.Cylinders.Any(c => c.Blanket is not null);
        string supply = blanket.Supply == BlanketSupply.Battery ? "on 12 V" : "on shore power";
        string power = setUp.Powered ? "" : ", which has no power here and only insulates";
        return $"{UnitStyle.Number(blanket.Power_W, 0)} W {supply}{power} around every cylinder, on at {units.Temperature(blanket.On_K)}, off at "
            + $"{units.Temperature(blanket.Off_K)}{(own ? "" : ", assumed, because the scenario has none")}; listed for propane cylinders";
    }
}
