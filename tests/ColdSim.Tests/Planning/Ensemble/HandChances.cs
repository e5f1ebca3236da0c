using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Sensitivity;
using ColdSim.Tests.App.Text;

namespace ColdSim.Tests.Planning.Ensemble;

/// <summary>A chance made up by hand: nothing in it was computed.</summary>
internal static class HandChances
{
    public static ChanceReport Report { get; } = new()
    {
        Scenario = InventedRuns.Scenario,
        Plain = InventedRuns.HoldsThenShort,
        Asked = 1000,
        Done = 1000,
        Seed = 1,
        Years = [],
        AllNights = new(412, 1000),
        Nights =
        [
            new(InventedRuns.Holds, new(997, 1000), new(3.3, 4.1, 4.8)),
            new(InventedRuns.Short, new(413, 1000), new(0.1, 1.7, 2.6)),
        ],
        Dry = new(InventedRuns.Noon.AddHours(40.2), null, null),
        RunsDry = new(118, 1000),
        Influences = [new(Uncertainty.Temperature, 0.71, 0.6), new(Uncertainty.HeatLoss, -0.51, 0.31), new(Uncertainty.DoorOpenings, -0.05, 0.003)],
        Options =
        [
            new(new ComparedOption("a skirt all round, with film over every window", InventedRuns.Scenario), new(640, 1000), 38),
            new(new ComparedOption("100 lb", InventedRuns.Scenario), new(988, 1000), 41.5),
            new(new ComparedOption("40 lb", InventedRuns.Scenario), new(910, 1000), 22.4),
        ],
        Fan = [new(0, new(290, 290.5, 291), new(6, 6.5, 7)), new(3600, null, new(5.8, 6.3, 6.8))],
        Ledger = InventedRuns.HoldsThenShort.Ledger,
    };

    public static ChanceReport ByYears { get; } = Report with
    {
        Asked = 12,
        Done = 12,
        Seed = null,
        Years = [.. Enumerable.Range(2010, 12)],
        AllNights = new(12, 12),
        Nights = [Report.Nights[0] with { Holds = new(12, 12) }, Report.Nights[1] with { Holds = new(12, 12) }],
        RunsDry = new(0, 12),
        Dry = new Spread<DateTimeOffset?>(null, null, null),
        Influences = [],
        Options = [],
    };
}
