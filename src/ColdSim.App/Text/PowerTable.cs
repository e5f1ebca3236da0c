using System.Diagnostics;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>The 12 V side of the nights, a row each, within 80 columns.</summary>
internal static class PowerTable
{
    public static bool Applies(RunReport report) => report.Scenario.Rig.Power is not null;

    public static IReadOnlyList<string> Lines(RunReport report) => [.. Table(report), .. TooCold(report)];

    private static IReadOnlyList<string> Table(RunReport report) => TextTable.Lines(
        [
            new(["Night"], Left: true),
            new(["Fan", "Wh"]),
            new(["Blan-", "kets", "Wh"]),
            new(["Other", "loads", "Wh"]),
            new(["Solar", "Wh"]),
            new(["Shore", "Wh"]),
            new(["Gene-", "rator", "Wh"]),
            new(["Charge", "low", "%"]),
            new(["Charge", "low", "at"]),
            new(["Charge", "end", "%"]),
            new(["Flat", "at"]),
            new(["Out", "first"], Left: true),
        ],
        [.. report.Nights.Select(Row)]);

    public static string Word(FirstOut first) => first switch
    {
        FirstOut.Nothing => "-",
        FirstOut.GasSupply => "supply",
        FirstOut.Gas => "gas",
        FirstOut.Battery => "battery",
        _ => throw new UnreachableException(),
    };

    // Sun and shore power do nothing for a bank that may not be charged.
    private static IEnumerable<string> TooCold(RunReport report)
    {
        string[] nights = [.. report.Nights.Where(n => n.Power!.TooCold.Seconds > 0).Select(n => $"{ClockText.NightShort(n)} {ClockText.Span(n.Power!.TooCold)}")];
        return nights.Length == 0 ? [] : Wrap.Lines($"Too cold to be charged: {string.Join(", ", nights)}.", rest: "  ");
    }

    private static string[] Row(NightReport night)
    {
        NightPower power = night.Power!;
        return
        [
            ClockText.NightShort(night),
            Wh(power.Drawn[0].Energy),
            Wh(power.Drawn[1].Energy),
            Wh(Energy.FromJoules(power.Drawn.Skip(2).Sum(d => d.Energy.Joules))),
            Wh(power.Solar),
            Wh(power.Shore),
            Wh(power.Generator),
            UnitStyle.Number(power.ChargeLow.Percent, 0),
            ClockText.Clock(power.ChargeLowAt),
            UnitStyle.Number(power.ChargeAtEnd.Percent, 0),
            power.FlatAt is { } flat ? ClockText.Clock(flat) : "-",
            Word(night.FirstOut),
        ];
    }

    private static string Wh(Energy energy) => UnitStyle.Number(energy.WattHours, 0);
}
