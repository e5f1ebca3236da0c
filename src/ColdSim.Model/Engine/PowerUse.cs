namespace ColdSim.Model.Engine;

/// <summary>What went on on the 12 V side in a step, as means of the step. SI units.</summary>
/// <param name="consumers">How many draw; their places are those of <see cref="Electrical.Consumers"/>.</param>
public sealed class PowerUse(int consumers)
{
    /// <summary>What each drew. [W]</summary>
    public double[] Load_W { get; } = new double[consumers];

    /// <summary>What the panels gave. [W]</summary>
    public double Solar_W { get; set; }

    /// <summary>What shore power gave through the converter. [W]</summary>
    public double Shore_W { get; set; }

    /// <summary>What the generator gave through the converter. [W]</summary>
    public double Generator_W { get; set; }

    /// <summary>Charge before the step, per rated.</summary>
    public double ChargeBefore_frac { get; set; }

    /// <summary>Charge after the step, per rated.</summary>
    public double Charge_frac { get; set; }

    /// <summary>Usable charge after the step, per that of a full bank at its temperature; not above 0 when it is flat.</summary>
    public double Usable_frac { get; set; }

    /// <summary>Whether there was voltage.</summary>
    public bool Live { get; set; }

    /// <summary>Whether the bank was too cold to be charged.</summary>
    public bool TooCold { get; set; }

    /// <summary>Whether the generator ran.</summary>
    public bool GeneratorRuns { get; set; }

    /// <summary>Becomes as another.</summary>
    /// <param name="other">Of what.</param>
    public void Set(PowerUse other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.Load_W.AsSpan().CopyTo(Load_W);
        (Solar_W, Shore_W, Generator_W, Charge_frac, Usable_frac) = (other.Solar_W, other.Shore_W, other.Generator_W, other.Charge_frac, other.Usable_frac);
        (ChargeBefore_frac, Live, TooCold, GeneratorRuns) = (other.ChargeBefore_frac, other.Live, other.TooCold, other.GeneratorRuns);
    }
}
