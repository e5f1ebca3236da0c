using ColdSim.Model.Engine;
using ColdSim.Physics.Units;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Search;

namespace ColdSim.Planning.Limits;

/// <summary>For one rig: the coldest night at which its furnace is still fed, by how full its cylinders are, set-up by set-up.</summary>
public sealed record LimitChart
{
    /// <summary>The fills of the chart unless others are requested.</summary>
    public static IReadOnlyList<double> UsualFills { get; } = [0.10, 0.20, 0.30, 0.40, 0.50, 0.65, 0.80, 1.00];

    /// <summary>The scenario that was run.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The night of every cell.</summary>
    public required StandardNight Night { get; init; }

    /// <summary>The lows tried.</summary>
    public required LimitAxis Axis { get; init; }

    /// <summary>Parts of the legal filling, rising.</summary>
    public required IReadOnlyList<double> Fills { get; init; }

    /// <summary>Set-up by set-up.</summary>
    public required IReadOnlyList<LimitColumn> Columns { get; init; }

    /// <summary>All cells.</summary>
    public IEnumerable<LimitCell> Cells => Columns.SelectMany(c => c.Cells.Append(c.Now));

    /// <summary>Finds every cell with the whole engine, set-ups side by side; what comes out does not depend on how many at once.</summary>
    /// <param name="scenario">The rig, with a furnace.</param>
    /// <param name="axis">The lows to try.</param>
    /// <param name="fills">Parts of the legal filling, over 0 to 1; null takes the usual.</param>
    /// <param name="finished">Receives the number of cells that are done; may be called from several threads at once.</param>
    /// <param name="workers">How many set-ups at once; null takes one for each processor.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentException">No furnace, or no fills.</exception>
    public static LimitChart Of(
        Scenario scenario, LimitAxis axis, IReadOnlyList<double>? fills = null, IProgress<int>? finished = null, int? workers = null,
        CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(axis);
        if (scenario.Rig.Furnace is null) throw new ArgumentException("Limits are a furnace's, and the rig has none.", nameof(scenario));
        double[] rising = [.. (fills ?? UsualFills).Distinct().Order()];
        if (rising.Length == 0 || !(rising[0] > 0) || !(rising[^1] <= 1))
            throw new ArgumentException("Fills are parts of the legal filling, over 0 to 1.", nameof(fills));
        // The limit is that of a running furnace, so a planned stop is left out.
        scenario = scenario with { HeatStops = null };
        StandardNight night = new(scenario);
        IReadOnlyList<RigVariant> variants = RigVariant.Of(scenario.Rig);
        int done = 0;
        LimitColumn[] columns = ParallelMap.Of(
            variants.Count,
            i => new LimitSearch(night, axis, variants[i], cancel).Column(rising, () => finished?.Report(Interlocked.Increment(ref done))),
            workers,
            cancel);
        return new LimitChart { Scenario = scenario, Night = night, Axis = axis, Fills = rising, Columns = columns };
    }
}

/// <summary>The lows that are tried: from the warmest downwards by even steps, so that what is stated is what was run.</summary>
/// <param name="Warmest_K">The warmest night's low. [K]</param>
/// <param name="Step_K">From one to the next, the tolerance of every limit. [K]</param>
/// <param name="Steps">How many steps there are.</param>
public sealed record LimitAxis(double Warmest_K, double Step_K, int Steps)
{
    /// <summary>15 to -50 °C by half degrees.</summary>
    public static LimitAxis Celsius { get; } = new(ConversionFactors.ZeroCelsius_K + 15, 0.5, 130);

    /// <summary>59 to -58 °F by whole degrees, which is the same range.</summary>
    public static LimitAxis Fahrenheit { get; } = new(ConversionFactors.ZeroCelsius_K + 15, ConversionFactors.FahrenheitDegree_K, 117);

    /// <summary>The coldest night's low. [K]</summary>
    public double Coldest_K => Low_K(Steps);

    /// <summary>The low after so many steps. [K]</summary>
    public double Low_K(int step) => Warmest_K - step * Step_K;
}

/// <summary>Kind of a cell.</summary>
public enum LimitKind
{
    /// <summary>A low at which the night holds while it does not one step colder.</summary>
    Found,

    /// <summary>The coldest night of the axis holds.</summary>
    HoldsAtColdest,

    /// <summary>The warmest night of the axis does not hold.</summary>
    NotAtWarmest,
}

/// <summary>The coldest standard night through which one set-up at one fill is fed.</summary>
public sealed record LimitCell
{
    /// <summary>Part of the legal filling, of all cylinders together.</summary>
    public required double Fill_frac { get; init; }

    /// <summary>Whether there is a limit on the axis, and if not, why.</summary>
    public required LimitKind Kind { get; init; }

    /// <summary>Steps from the axis's warmest to the limit; -1 where not even that holds.</summary>
    public required int Step { get; init; }

    /// <summary>The night's low; NaN where no night holds. [K]</summary>
    public required double Low_K { get; init; }

    /// <summary>Propane in all cylinders at dusk. [kg]</summary>
    public required double Contents_kg { get; init; }

    /// <summary>Gas used in the night of the limit; NaN where none holds. [kg]</summary>
    public double Used_kg { get; init; } = double.NaN;

    /// <summary>Electricity of the blankets in that night; NaN where none holds. [J]</summary>
    public double Blanket_J { get; init; } = double.NaN;

    /// <summary>Lowest inside air in that night; NaN where none holds. [K]</summary>
    public double InsideLow_K { get; init; } = double.NaN;

    /// <summary>What fails the night that is one step colder; holds where that was not run.</summary>
    public Verdict FailsColder { get; init; }

    /// <summary>Whether the furnace is too small for the night that is one step colder, although it gets its gas.</summary>
    public bool FurnaceTooSmall => FailsColder == Verdict.FurnaceTooSmall;

    /// <summary>Whether at most a twentieth of the legal filling is left when gas falls short one step colder: then more gas would help.</summary>
    public bool Emptied { get; init; }

    /// <summary>How well energy and mass close in the night of the limit; null where none holds.</summary>
    public LedgerBalance? Ledger { get; init; }

    /// <summary>Lowest pressure before the regulator in that night while gas was in demand; NaN where none holds. [Pa gauge]</summary>
    public double PressureLow_Pa { get; init; } = double.NaN;
}

/// <summary>A set-up with its limit at every fill.</summary>
/// <param name="RigVariant">The set-up.</param>
/// <param name="Cells">Its cells, in the order of the fills.</param>
/// <param name="Now">Its cell with what the scenario has in each cylinder, which may be differently full.</param>
public sealed record LimitColumn(RigVariant RigVariant, IReadOnlyList<LimitCell> Cells, LimitCell Now)
{
    /// <summary>The same cell with a regulator that gives nothing below its minimum inlet; null where the limit does not count on that, or it is not the rig as it is.</summary>
    public LimitCell? NowShutting { get; init; }
}
