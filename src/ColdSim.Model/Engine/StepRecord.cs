using ColdSim.Model.Furnace;
using ColdSim.Model.Numerics;

namespace ColdSim.Model.Engine;

/// <summary>One accepted step of a run: the state before and after, and the means of the flows between. SI units.</summary>
/// <remarks>A run fills one record again and again; copy a step to keep it.</remarks>
internal sealed class StepRecord
{
    // The state after a step is the state before the next, so the two places only change their roles.
    private readonly Snapshot[] _ends = new Snapshot[2];
    private int _from;

    /// <summary>An empty record.</summary>
    /// <param name="appliances">How many take gas.</param>
    /// <param name="nodes">How many nodes there are beside coach and cylinders.</param>
    /// <param name="consumers">How many draw from the 12 V side; none without a battery.</param>
    public StepRecord(int appliances, int nodes = 0, int consumers = 0)
    {
        (Gas_W, IsShort, Node_K, Ice_frac) = (new double[appliances], new bool[appliances], new double[nodes], new double[nodes]);
        NodeBefore_K = new double[nodes];
        Power = consumers == 0 ? null : new PowerUse(consumers);
    }

    /// <summary>An empty record with room for a rig.</summary>
    /// <param name="rig">Rig whose appliances, nodes and loads it has room for.</param>
    public static StepRecord For(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return new StepRecord(rig.GasPlaces, rig.Nodes().Count, rig.Power?.Places ?? 0);
    }

    /// <summary>A copy of a record.</summary>
    /// <param name="other">The record to copy.</param>
    public StepRecord(StepRecord other)
        : this((other ?? throw new ArgumentNullException(nameof(other))).Gas_W.Length, other.Node_K.Length, other.Power?.Load_W.Length ?? 0)
        => SetPart(other, other.From, other.To);

    /// <summary>State before the step.</summary>
    public ref readonly Snapshot From => ref _ends[_from];

    /// <summary>State after the step.</summary>
    public ref readonly Snapshot To => ref _ends[1 - _from];

    /// <summary>Gas demand, as gross heat. [W]</summary>
    public double Asked_W { get; set; }

    /// <summary>Gas supplied, as gross heat. [W]</summary>
    public double Given_W { get; set; }

    /// <summary>Gas that each appliance took, as gross heat: the furnace, then the others in their order. [W]</summary>
    public double[] Gas_W { get; }

    /// <summary>Which of them had less gas than their demand, in the same order.</summary>
    public bool[] IsShort { get; }

    /// <summary>How inside air goes from the state before to the state after. [K]</summary>
    public Quartic InsideWithin_K { get; set; }

    /// <summary>Temperature of each node before the step, in the order of <see cref="Node_K"/>. [K]</summary>
    public double[] NodeBefore_K { get; }

    /// <summary>Temperature of each node after the step: the appliances' in their order, then the rig's water. [K]</summary>
    public double[] Node_K { get; }

    /// <summary>Part of each node's water that is ice after the step.</summary>
    public double[] Ice_frac { get; }

    /// <summary>Heat from surroundings and blankets into liquid and shell of all cylinders. [W]</summary>
    public double HeatIntoCylinder_W { get; set; }

    /// <summary>Power of the blankets that are on. [W]</summary>
    public double Blanket_W { get; set; }

    /// <summary>Heat of the heaters beside the furnace. [W]</summary>
    public double OtherHeat_W { get; set; }

    /// <summary>Whether the thermostat called for heat.</summary>
    public bool HeatCalled { get; set; }

    /// <summary>Phase of the furnace's ignition board; idle without a furnace.</summary>
    public FurnacePhase Furnace { get; set; }

    /// <summary>Whether the furnace burnt.</summary>
    public bool BurnerLit { get; set; }

    /// <summary>Whether an appliance had less gas than its demand.</summary>
    public bool Undersupplied { get; set; }

    /// <summary>Part of the step in which a furnace that is locked out for lack of gas would light if it tried.</summary>
    public double WouldLight_frac { get; set; }

    /// <summary>Whether damp settles on the coach's coldest surface.</summary>
    public bool DampSettles { get; set; }

    /// <summary>Means of the 12 V side; null without a battery.</summary>
    public PowerUse? Power { get; }

    /// <summary>Inside air after a part of the step; NaN without a coach. [K]</summary>
    /// <param name="part">Part of the step, 0 to 1.</param>
    public double Inside_K(double part) => From.Inside_K + InsideWithin_K.At(part);

    /// <summary>Copies another step, moved in time.</summary>
    /// <param name="other">Step to copy.</param>
    /// <param name="by_s">How much later. [s]</param>
    public void SetShifted(StepRecord other, double by_s)
    {
        ArgumentNullException.ThrowIfNull(other);
        SetPart(other, other.From, other.To);
        (_ends[0].Time_s, _ends[1].Time_s) = (_ends[0].Time_s + by_s, _ends[1].Time_s + by_s);
    }

    /// <summary>Copies a part of another step, with the means of the whole.</summary>
    /// <param name="whole">Step to take the part from.</param>
    /// <param name="from">State at the beginning of the part.</param>
    /// <param name="to">State at its end.</param>
    public void SetPart(StepRecord whole, in Snapshot from, in Snapshot to)
    {
        ArgumentNullException.ThrowIfNull(whole);
        double length_s = whole.To.Time_s - whole.From.Time_s;
        InsideWithin_K = from.Time_s == whole.From.Time_s && to.Time_s == whole.To.Time_s
            ? whole.InsideWithin_K
            : whole.InsideWithin_K.Over((from.Time_s - whole.From.Time_s) / length_s, (to.Time_s - from.Time_s) / length_s);
        (_ends[_from], _ends[1 - _from]) = (from, to);
        (Asked_W, Given_W, HeatIntoCylinder_W, Blanket_W) = (whole.Asked_W, whole.Given_W, whole.HeatIntoCylinder_W, whole.Blanket_W);
        (OtherHeat_W, HeatCalled, Furnace) = (whole.OtherHeat_W, whole.HeatCalled, whole.Furnace);
        (BurnerLit, Undersupplied, WouldLight_frac, DampSettles) = (whole.BurnerLit, whole.Undersupplied, whole.WouldLight_frac, whole.DampSettles);
        whole.Gas_W.AsSpan().CopyTo(Gas_W);
        whole.IsShort.AsSpan().CopyTo(IsShort);
        whole.NodeBefore_K.AsSpan().CopyTo(NodeBefore_K);
        whole.Node_K.AsSpan().CopyTo(Node_K);
        whole.Ice_frac.AsSpan().CopyTo(Ice_frac);
        if (whole.Power is { } power) Power?.Set(power);
    }

    /// <summary>Place for the present state: after a step, or after something switched.</summary>
    internal ref Snapshot Now => ref _ends[1 - _from];

    /// <summary>Goes on to the next step: the state after becomes the state before.</summary>
    internal void Next() => _from = 1 - _from;
}

/// <summary>The 12 V side in a step, as means of the step. SI units.</summary>
/// <param name="consumers">How many draw; their places are those of <see cref="Electrical.PowerSpecification"/>.</param>
internal sealed class PowerUse(int consumers)
{
    /// <summary>Power of each load. [W]</summary>
    public double[] Load_W { get; } = new double[consumers];

    /// <summary>Power from the solar panels. [W]</summary>
    public double Solar_W { get; set; }

    /// <summary>Power from shore power through the converter. [W]</summary>
    public double Shore_W { get; set; }

    /// <summary>Power from the generator through the converter. [W]</summary>
    public double Generator_W { get; set; }

    /// <summary>Charge before the step, per rated.</summary>
    public double ChargeBefore_frac { get; set; }

    /// <summary>Charge after the step, per rated.</summary>
    public double Charge_frac { get; set; }

    /// <summary>Usable charge after the step, per that of a full bank at its temperature; not above 0 when it is flat.</summary>
    public double Usable_frac { get; set; }

    /// <summary>Whether there was voltage.</summary>
    public bool Live { get; set; }

    /// <summary>Whether acid in the bank was frozen after the step.</summary>
    public bool IsFrozen { get; set; }

    /// <summary>Whether the bank was too cold to be charged.</summary>
    public bool TooCold { get; set; }

    /// <summary>Whether the generator ran.</summary>
    public bool GeneratorRuns { get; set; }

    /// <summary>Copies another.</summary>
    /// <param name="other">The record to copy.</param>
    public void Set(PowerUse other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.Load_W.AsSpan().CopyTo(Load_W);
        (Solar_W, Shore_W, Generator_W, Charge_frac, Usable_frac) = (other.Solar_W, other.Shore_W, other.Generator_W, other.Charge_frac, other.Usable_frac);
        (ChargeBefore_frac, Live, IsFrozen, TooCold, GeneratorRuns) = (other.ChargeBefore_frac, other.Live, other.IsFrozen, other.TooCold, other.GeneratorRuns);
    }
}
