using System.Diagnostics;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Screens.Pages;

/// <summary>The 12 V side of one night in words: what ran out first, the charge, the voltage, and what came in.</summary>
internal static class PowerWords
{
    public static IReadOnlyList<string> Lines(NightReport night)
    {
        NightPower power = night.Power!;
        return [$"Out first: {First(night)}.", Charge(power), Voltage(power), Given(power)];
    }

    /// <summary>Watt-hours, with their unit.</summary>
    public static string WattHours(Energy energy) => $"{UnitStyle.Number(energy.WattHours, 0)} Wh";

    private static string First(NightReport night) => night.FirstOut switch
    {
        FirstOut.Nothing => "nothing",
        FirstOut.GasSupply => $"the gas supply{On(night.FirstShort)}, with liquid left",
        FirstOut.Gas => $"the gas{On(night.DryAt)}",
        FirstOut.Battery => $"the battery{On(night.Power!.FlatAt)}",
        _ => throw new UnreachableException(),
    };

    private static string Charge(NightPower power)
        => $"Charge: lowest {Percent(power.ChargeLow)} on {ClockText.DayClock(power.ChargeLowAt)}, {Percent(power.ChargeAtEnd)} at the end.";

    private static string Voltage(NightPower power)
        => power.FlatAt is { } flat ? $"Voltage: gone from {ClockText.DayClock(flat)}, for {ClockText.Span(power.VoltageGone)} in all." : "Voltage: never gone.";

    private static string Given(NightPower power)
    {
        string ran = power.GeneratorTime.Seconds > 0 ? $" in {ClockText.Span(power.GeneratorTime)}" : "";
        return $"Given: solar {WattHours(power.Solar)}, shore {WattHours(power.Shore)}, generator {WattHours(power.Generator)}{ran}.";
    }

    private static string On(DateTimeOffset? time) => time is { } at ? $" on {ClockText.DayClock(at)}" : "";

    private static string Percent(Ratio part) => $"{UnitStyle.Number(part.Percent, 0)} %";
}
