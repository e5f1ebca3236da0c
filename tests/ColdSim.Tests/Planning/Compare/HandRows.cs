using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Text;
using UnitsNet;
using Comparison = ColdSim.Planning.Compare.Comparison;

namespace ColdSim.Tests.Planning.Compare;

/// <summary>Rows made up by hand: nothing in them was computed.</summary>
internal static class HandRows
{
    private static readonly DateTimeOffset Start = InventedRuns.Scenario.Start;

    public static ComparedRow Row(
        string name, int order = 1, Verdict verdict = Verdict.Holds, double short_min = 0, double? firstShort_h = null, double? dry_h = null,
        double? inside_C = 14, double gas_kg = 9, RunEnd end = RunEnd.Complete, Scenario? scenario = null, Harm? harm = null, double? cost = null,
        int walks = 0) => new()
        {
            Option = new ComparedOption(name, scenario ?? InventedRuns.Scenario),
            Order = order,
            Ledger = new(0.02, 3e-10, -0.1, -2e-10, 0, 0, 1e-14, 1.2e-15),
            End = end,
            Cost = cost,
            Summary = new()
            {
                Verdict = verdict,
                Nights = 3,
                NightsHeld = verdict switch { Verdict.Holds => 3, Verdict.GasShort => 2, _ => 1 },
                FirstFailure = firstShort_h is { } fails ? Start.AddHours(fails) : null,
                FirstShort = firstShort_h is { } first ? Start.AddHours(first) : null,
                DryAt = dry_h is { } dry ? Start.AddHours(dry) : null,
                GasUsed = Mass.FromKilograms(gas_kg),
                GasHeat = Energy.FromMegajoules(gas_kg * 50.33),
                GasByAppliance = [new("furnace", Mass.FromKilograms(gas_kg), Ratio.FromPercent(100))],
                LeftAtStart = Mass.FromKilograms(12),
                LeftAtEnd = Mass.FromKilograms(12 - gas_kg),
                OutsideLow = Temperature.FromDegreesCelsius(-30),
                InsideLow = inside_C is { } inside ? Temperature.FromDegreesCelsius(inside) : null,
                ShortTime = Duration.FromMinutes(harm?.ShortMinutes ?? short_min),
                NoFlameTime = Duration.FromMinutes(harm?.ShortMinutes ?? short_min),
                FreezingTime = Duration.FromHours(harm?.FreezingHours ?? 0),
                Lowest = harm is { Lowest_K: var lowest_K } && double.IsFinite(lowest_K) ? Temperature.FromKelvins(lowest_K) : null,
                NoHeatTime = Duration.FromHours(harm?.NoHeatHours ?? 0),
                ColdKelvinHours = harm?.ColdKelvinHours ?? 0,
                CylinderChanges = walks,
            },
        };

    public static Comparison Of(params ComparedRow[] rows)
        => new() { Base = InventedRuns.Scenario, Rows = Ranking.Ordered(rows) };

    /// <summary>One of each kind.</summary>
    public static Comparison Several { get; } = Of(
        Row(ComparedOption.AsItIs, 0, Verdict.GasGone, 697, 36.1, 60.2, -1, 9.03, harm: new(3.2, 272.15, 11.2, 96, 697)),
        Row("40 lb", 1, inside_C: 13.1, gas_kg: 10.43),
        Row("100 lb", 2, inside_C: 13.1, gas_kg: 10.43, scenario: OnGround),
        Row("a skirt all round, with film over every window", 3, Verdict.GasShort, 68, 38.5, null, 6.1, 8.7, harm: new(0, 279.25, 1.3, 7.4, 68)),
        Row("overfilled", 4, end: RunEnd.LiquidFull, gas_kg: 1));

    private static Scenario OnGround => InventedRuns.Scenario with
    {
        Rig = InventedRuns.Rig with { Cylinders = [InventedRuns.Rig.Cylinders[0] with { Name = "100 lb", Volume_m3 = 0.108 }] },
    };
}
