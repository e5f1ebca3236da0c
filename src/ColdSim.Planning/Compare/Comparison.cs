using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Physics.Units;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Search;
using ColdSim.Planning.Trips;
using UnitsNet;

namespace ColdSim.Planning.Compare;

/// <summary>Several options over the same nights, in order of how well they do.</summary>
public sealed record Comparison
{
    public required Scenario Base { get; init; }

    /// <summary>The best first; the base is among them.</summary>
    public required IReadOnlyList<ComparedRow> Rows { get; init; }

    /// <summary>The first row.</summary>
    public ComparedRow Best => Rows[0];

    /// <summary>Whether any of them holds all nights.</summary>
    public bool AnyHolds => Rows.Any(r => r.Holds);

    /// <summary>Runs the base and every option, several at once, each with the whole engine; the order does not depend on how many.</summary>
    /// <param name="scenario">The base.</param>
    /// <param name="options">What to try, in the order in which ties are broken.</param>
    /// <param name="finished">Receives the number of runs that are done; may be called from several threads at once.</param>
    /// <param name="workers">How many at once; null takes one for each processor.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="CannotRunException">The rig of an option cannot start; the message names it.</exception>
    public static Comparison Of(
        Scenario scenario, IReadOnlyList<ComparedOption> options, IProgress<int>? finished = null, int? workers = null,
        CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(options);
        ComparedOption[] all = [new(ComparedOption.AsItIs, scenario), .. options];
        int done = 0;
        (ComparedRow? Row, CannotStart? CannotStart)[] runs = ParallelMap.Of(
            all.Length,
            i =>
            {
                (ComparedRow?, CannotStart?) run = Run(all[i], i, cancel);
                finished?.Report(Interlocked.Increment(ref done));
                return run;
            },
            workers,
            cancel);
        for (int i = 0; i < all.Length; i++)
        {
            if (runs[i].CannotStart is { } reason) throw new CannotRunException($"Option '{all[i].Name}': {reason.Message}");
        }

        return new Comparison { Base = scenario, Rows = Ranking.Ordered(runs.Select(r => r.Row!)) };
    }

    private static Mass? LeftBehind(IReadOnlyList<BlendReport> blends)
        => blends.Count > 0 && blends.All(b => b.LeftBehind is not null) ? Mass.FromKilograms(blends.Sum(b => b.LeftBehind!.Value.Kilograms)) : null;

    // The curves are released at once; with many options and a whole winter they would be hundreds of megabytes.
    private static (ComparedRow? Row, CannotStart? CannotStart) Run(ComparedOption option, int order, CancellationToken cancel)
    {
        (RunWithRefills? run, CannotStart? reason) = RunWithRefills.Try(option.Scenario, cancel);
        if (run is null) return (null, reason);
        RunReport report = run.Report;
        ComparedRow row = new()
        {
            Option = option,
            Order = order,
            Summary = report.Summary,
            Ledger = report.Ledger,
            End = report.End,
            Cost = TripMoney.Of(run).Cost,
            LeftBehind = LeftBehind(report.Nights[^1].Blends),
        };
        return (row, null);
    }
}

/// <summary>One thing to try: the base with some of it changed.</summary>
/// <param name="Name">What the person calls it.</param>
/// <param name="Scenario">The whole scenario, changes made.</param>
public sealed record ComparedOption(string Name, Scenario Scenario)
{
    /// <summary>The name of the base in every comparison.</summary>
    public const string AsItIs = "as it is";

    private const double CarriedWater_kg = 105 * ConversionFactors.Pound_kg;

    /// <summary>Places in the file of the cylinders whose size or contents it sets; they keep them where a run starts from a reading of the log.</summary>
    public IReadOnlyList<int> OwnCylinders { get; init; } = [];

    /// <summary>Whether it changes nothing but stops and refills: until the first that is another its run is the base's.</summary>
    public bool ChangesTripOnly { get; init; }

    /// <summary>How many of its legs are the base's, from the first.</summary>
    /// <param name="scenario">The base.</param>
    internal int SharedLegs(Scenario scenario)
        => ChangesTripOnly ? NightRun.LegsOf(scenario).Zip(NightRun.LegsOf(Scenario)).TakeWhile(t => t.First.RunsLike(t.Second)).Count() : 0;

    /// <summary>Whether some upright cylinder is too large to be carried: over 105 lb of water, after 24 CFR 3280.704.</summary>
    public bool IsOnGround => Scenario.Rig.Cylinders.Any(IsTooLargeToCarry);

    /// <summary>Whether a cylinder is upright and too large to be carried.</summary>
    /// <param name="cylinder">The cylinder.</param>
    public static bool IsTooLargeToCarry(CylinderSpecification cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        return cylinder.Orientation == Orientation.Upright && cylinder.Volume_m3 * 1000 > CarriedWater_kg * (1 + 1e-9);
    }
}

/// <summary>How one option went.</summary>
public sealed record ComparedRow
{
    /// <summary>The option that was run.</summary>
    public required ComparedOption Option { get; init; }

    /// <summary>0 for the base, then as in the file.</summary>
    public required int Order { get; init; }

    /// <summary>The whole run.</summary>
    public required RunSummary Summary { get; init; }

    /// <summary>How well energy and mass close.</summary>
    public required LedgerBalance Ledger { get; init; }

    /// <summary>Why the run ended.</summary>
    public required RunEnd End { get; init; }

    /// <summary>What it costs, refills and gas used from what was there; null where nothing has a price.</summary>
    public double? Cost { get; init; }

    /// <summary>
    /// Of a mixed gas, the liquid in all cylinders that would stay unburnt at the last night's coldest air; null for propane alone and where the
    /// regulator never passes what all appliances ask together.
    /// </summary>
    public Mass? LeftBehind { get; init; }

    /// <summary>1 for the best; options that are equal by the rule have the same.</summary>
    public int Rank { get; init; }

    /// <summary>Whether the cylinder itself ended the run, too full of liquid or too hot.</summary>
    public bool StoppedByCylinder => End is RunEnd.LiquidFull or RunEnd.ReliefPressure;

    /// <summary>For how many more nights like these what is left at the end would last; infinite where none was used.</summary>
    public double NightsOfGasLeft => Summary.LeftAtEnd.Kilograms / Summary.GasUsed.Kilograms * Summary.Nights is var nights && double.IsNaN(nights)
        ? double.PositiveInfinity : nights;

    /// <summary>Whether all nights hold.</summary>
    public bool Holds => Summary.Verdict == Verdict.Holds && !StoppedByCylinder;
}
