using System.Globalization;
using ColdSim.App.Text.Answers;
using ColdSim.Model.Engine;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>An explanation as text: the limit first, then the chain, what would have held, and what looks the same.</summary>
internal static class ExplainText
{
    public static IReadOnlyList<TextSection> Sections(Explanation explanation, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections =
        [
            new(explanation.Report.Scenario.Title, Wrap.Lines(Sentence(explanation, units), rest: "  ")),
            new("How it came to that", Chain(explanation.Chain, units)),
            .. ShortageText.Sections(explanation.Report, units),
        ];
        if (ActionText.Section(explanation.Plan, explanation.Report.Scenario, units) is { } actions)
            sections.Add(actions);
        if (explanation.Limit is { } limit)
        {
            sections.Add(new($"Each limit eased by {UnitStyle.Number(limit.Part_frac * 100, 0)} %, alone, to see which binds", Sensitivities(limit)));
            sections.Add(new("What looks the same from inside", RunText.Points(SimilarFaults.All.Select(SameSigns))));
        }

        if (explanation.Report.Scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(explanation.Report.Scenario.Assumptions, units)));
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points(cautions, units)));
        return sections;
    }

    private static string SameSigns(SimilarFault look) => $"{look.Trouble}: {look.Signs} ({look.Source}).";

    /// <summary>The first sentence: which limit binds, or by how much it holds, or the state at a time.</summary>
    public static string Sentence(Explanation explanation, UnitStyle units)
    {
        ChainOfCause chain = explanation.Chain;
        if (explanation.AtTime)
            return $"At {ClockText.DayClock(chain.To)} the cylinder is at {units.Pressure(chain.Pressure_Pa)} with its liquid at "
                + $"{units.Temperature(chain.LiquidTo_K)}, {Could(chain, units)}{Inside(chain, units)}.";
        if (explanation.Limit is { } limit && explanation.Shortage is { } shortage)
            return $"Gas runs short on {ClockText.DayClock(shortage)}{Because(limit, chain)}{BatteryToo(explanation.Failed)}";
        if (explanation.Failed is { Verdict: Verdict.BatteryFlat, Power: { FlatAt: { } flat } power })
            return $"It is not the gas that fails first: the battery is flat on {ClockText.DayClock(flat)} and voltage is gone for {ClockText.Span(power.VoltageGone)}; "
                + $"until then the night drew {UnitStyle.Number(power.DrawnInAll.WattHours, 0)} Wh, and solar, shore and generator gave "
                + $"{UnitStyle.Number(power.Solar.WattHours + power.Shore.WattHours + power.Generator.WattHours, 0)} Wh. At that time {Could(chain, units)}.";
        if (explanation.Failed is { FirstFailure: { } failure } failed)
            return $"{Cause(failed, failure)} At that time {Could(chain, units)}.";
        string stopped = explanation.Report.End is RunEnd.LiquidFull or RunEnd.ReliefPressure
            ? ", but the cylinder itself ends the run, too full of liquid or too hot" : "";
        return chain.Asked_W <= 0
            ? $"Nothing is short: nothing asks for gas{stopped}."
            : $"Nothing is short{stopped}: at its tightest, {ClockText.DayClock(chain.To)}, {Could(chain, units)}.";
    }

    private static string BatteryToo(NightReport? night)
        => night?.Power is { FlatAt: { } flat, VoltageGone: { Minutes: >= 1 } gone }
            ? $" The battery is flat as well, from {ClockText.DayClock(flat)}, for {ClockText.Span(gone)} in all." : "";

    private static string Cause(NightReport night, DateTimeOffset at) => night.Verdict switch
    {
        Verdict.FurnaceStopped => $"The furnace has stopped, and from {ClockText.DayClock(at)} the thermostat calls for heat that does not come; neither gas nor battery is the cause.",
        Verdict.FurnaceTooSmall => $"The furnace is too small: from {ClockText.DayClock(at)} inside stays below the set point, though the furnace burns without a "
            + "pause and gets all its gas.",
        _ => $"Water freezes on {ClockText.DayClock(at)}, with gas, battery and furnace still in order.",
    };

    private static string Because(BindingLimit limit, ChainOfCause chain)
    {
        string part = $"{UnitStyle.Number(limit.Part_frac * 100, 0)} %";
        if (limit.Binds is not { } binds)
            return $", and easing no single limit by as much as {part} delays it by a minute.";
        LimitSensitivity eased = limit.Eased.First(e => e.Limit == binds);
        string does = eased.GoneAt_frac is { } gone
            ? $"with {UnitStyle.Number(gone * 100, 0)} % of easing gas is not short at all, sooner than with any other limit"
            : $"with {part} of easing it comes {ClockText.Span(Duration.FromSeconds(eased.Delay_s))} later, more than with any other limit";
        string ties = limit.Ties.Count == 0 ? "" : $" but {string.Join(", ", limit.Ties.Select(Name))}, which does as much";
        return $": {Reason(binds, chain)}. Of all limits this one binds: {does}{ties}.";
    }

    private static string Could(ChainOfCause chain, UnitStyle units)
        => $"the regulator can pass {units.Power(chain.CanGive_W)} and the burners need {units.Power(chain.Asked_W)}";

    private static string Inside(ChainOfCause chain, UnitStyle units)
        => double.IsFinite(chain.Inside_K) ? $", inside is {units.Temperature(chain.Inside_K)}" : "";

    /// <summary>The chain of cause as a numbered list.</summary>
    private static IReadOnlyList<string> Chain(ChainOfCause chain, UnitStyle units)
        => [.. Steps(chain, units).SelectMany((s, i) => Wrap.Lines(s, first: $"{i + 1}. ", rest: "   "))];

    private static IEnumerable<string> Steps(ChainOfCause chain, UnitStyle units)
    {
        yield return $"From {ClockText.DayClock(chain.From)}, when its liquid was last at its warmest in 12 h, to {ClockText.DayClock(chain.To)} the "
            + $"furnace was lit for {ClockText.Span(Duration.FromSeconds(chain.Burner_s))}, and all appliances took {units.Mass(chain.Given_kg)} of gas.";
        yield return $"Evaporation took {Heat(chain.Evaporation_J, units)} from liquid and shell.";
        yield return $"Air, ground and sky gave back {Heat(chain.Surroundings_J, units)}, the sun {Heat(chain.Sun_J, units)}, a blanket "
            + $"{Heat(chain.Blanket_J, units)}, through a wall of which now {Area(chain.WettedWall_m2, units)} of {Area(chain.WholeWall_m2, units)} is wetted.";
        yield return chain.HasLiquid
            ? $"So the liquid of the {chain.Cylinder} cylinder went from {units.Temperature(chain.LiquidFrom_K)} to {units.Temperature(chain.LiquidTo_K)}, "
                + $"in air of {units.Temperature(chain.Outside_K)}, with {units.Mass(chain.Left_kg)} left in it."
            : $"The {chain.Cylinder} cylinder has no liquid left; vapour and shell are at {units.Temperature(chain.LiquidTo_K)}, in air of "
                + $"{units.Temperature(chain.Outside_K)}.";
        if (Blend(chain, units) is { } blend)
            yield return blend;
        yield return $"That left {units.Pressure(chain.Pressure_Pa)} before the regulator.";
        yield return $"With that it can pass {units.Power(chain.CanGive_W)} at full delivery pressure.";
        yield return $"The burners needed {units.Power(chain.Asked_W)}.";
    }

    // The mass left behind is the night's, so that it agrees with the run's table.
    private static string? Blend(ChainOfCause chain, UnitStyle units)
    {
        if (chain.Liquid is not { } liquid)
            return null;
        string made = $"That liquid is {Percent(liquid.Propane)} propane, {Percent(liquid.NormalButane)} n-butane and {Percent(liquid.Isobutane)} isobutane by mass";
        return chain.Blend is not { LeftBehind: { } behind } night ? made + "."
            : $"{made}; at the night's coldest air, {units.Temperature(night.LeftBehindAt.Kelvins)}, {units.Mass(behind.Kilograms)} would be left behind.";
    }

    private static string Percent(double part) => $"{UnitStyle.Number(100 * part, 0)} %";

    private static string Heat(double joule, UnitStyle units) => units.IsUs
        ? (Math.Round(joule / Btu_J / 10) * 10 + 0.0).ToString("#,0", CultureInfo.InvariantCulture) + " BTU"
        : (Math.Round(joule / 1e4) * 10 + 0.0).ToString("#,0", CultureInfo.InvariantCulture) + " kJ";

    private static string Area(double m2, UnitStyle units)
        => units.IsUs ? $"{UnitStyle.Number(m2 / (Foot_m * Foot_m), 1)} ft²" : $"{UnitStyle.Number(m2, 2)} m²";

    /// <summary>What a limit is called as the subject of a row.</summary>
    private static string Name(Limit limit) => limit switch
    {
        Limit.HeatIntoLiquid => "heat into the liquid",
        Limit.LittleLiquid => "liquid against the wall",
        Limit.Regulator => "regulator and connection",
        Limit.Appliances => "largest other appliance",
        Limit.Altitude => "altitude (air pressure)",
        Limit.LiquidGone => "propane to burn",
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, null),
    };

    /// <summary>A limit as the reason in a sentence, after "because".</summary>
    private static string Reason(Limit limit, ChainOfCause chain) => limit switch
    {
        Limit.HeatIntoLiquid => "too little heat comes into the liquid",
        Limit.LittleLiquid => "the cylinder is too empty for this cold: too little of its wall touches liquid to take in heat",
        Limit.Regulator => "regulator or connection pass too little",
        Limit.Appliances => "several appliances burn at once",
        Limit.Altitude => "the air's pressure at this altitude leaves the cylinder or the regulator too little",
        Limit.LiquidGone => chain.HasLiquid ? "the gas that is left is too little to stay warm enough" : "there is too little gas: the liquid is gone",
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, null),
    };

    /// <summary>What easing each limit does to the first shortage.</summary>
    internal static IReadOnlyList<string> Sensitivities(BindingLimit limit) => TextTable.Lines(
        [new(["Eased"], Left: true), new(["The first shortage then"], Left: true)],
        [.. limit.Eased.Select(e => (IReadOnlyList<string>)[Name(e.Limit), Does(e)])],
        gap: 2);

    private static string Does(LimitSensitivity eased)
    {
        if (!eased.Applies)
            return "there is none";
        if (eased.GoneAt_frac is { } gone)
            return $"is gone, from {UnitStyle.Number(gone * 100, 0)} % on";
        if (double.IsNegativeInfinity(eased.Delay_s))
            return "is not known: that run proves nothing";
        double minutes = Math.Round(eased.Delay_s / 60);
        string span = ClockText.Span(Duration.FromMinutes(Math.Abs(minutes)));
        return minutes > 0 ? $"comes {span} later" : minutes < 0 ? $"comes {span} earlier" : "comes at the same minute";
    }
}
