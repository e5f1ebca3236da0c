namespace ColdSim.Model.Engine;

/// <summary>One accepted step of a run: how it stood before and after, and what went on between, as means of the step. SI units.</summary>
/// <remarks>A run fills one record again and again; who keeps a step copies it.</remarks>
public sealed class StepRecord
{
    // What stood after a step stands before the next, so the two places only change their roles.
    private readonly Moment[] _ends = new Moment[2];
    private int _from;

    /// <summary>An empty record.</summary>
    /// <param name="appliances">How many take gas.</param>
    public StepRecord(int appliances) => Gas_W = new double[appliances];

    /// <summary>A copy, for who keeps it.</summary>
    /// <param name="other">Of what.</param>
    public StepRecord(StepRecord other)
        : this((other ?? throw new ArgumentNullException(nameof(other))).Gas_W.Length)
        => SetPart(other, other.From, other.To);

    /// <summary>How it stood before.</summary>
    public ref readonly Moment From => ref _ends[_from];

    /// <summary>How it stood after.</summary>
    public ref readonly Moment To => ref _ends[1 - _from];

    /// <summary>Gas asked for, as gross heat. [W]</summary>
    public double Asked_W { get; set; }

    /// <summary>Gas given, as gross heat. [W]</summary>
    public double Given_W { get; set; }

    /// <summary>Gas that each appliance took, as gross heat: the furnace, then the others in their order. [W]</summary>
    public double[] Gas_W { get; }

    /// <summary>Heat from surroundings and blankets into liquid and shell of all cylinders. [W]</summary>
    public double HeatIntoCylinder_W { get; set; }

    /// <summary>Power of the blankets that are on. [W]</summary>
    public double Blanket_W { get; set; }

    /// <summary>Whether the furnace burnt.</summary>
    public bool BurnerLit { get; set; }

    /// <summary>Whether an appliance asked and did not get.</summary>
    public bool Undersupplied { get; set; }

    /// <summary>Becomes a part of another step, at its means.</summary>
    /// <param name="whole">The step.</param>
    /// <param name="from">How it stood at the part's beginning.</param>
    /// <param name="to">How it stood at its end.</param>
    public void SetPart(StepRecord whole, in Moment from, in Moment to)
    {
        ArgumentNullException.ThrowIfNull(whole);
        (_ends[_from], _ends[1 - _from]) = (from, to);
        (Asked_W, Given_W, HeatIntoCylinder_W, Blanket_W) = (whole.Asked_W, whole.Given_W, whole.HeatIntoCylinder_W, whole.Blanket_W);
        (BurnerLit, Undersupplied) = (whole.BurnerLit, whole.Undersupplied);
        whole.Gas_W.AsSpan().CopyTo(Gas_W);
    }

    /// <summary>Where to write how it stands now: after a step, or where something switched since.</summary>
    internal ref Moment Now => ref _ends[1 - _from];

    /// <summary>Goes on to the next step: what stood after stands before.</summary>
    internal void Next() => _from = 1 - _from;
}
