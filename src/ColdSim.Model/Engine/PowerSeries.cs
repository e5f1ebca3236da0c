namespace ColdSim.Model.Engine;

/// <summary>The curves of the 12 V side, sampled as those of <see cref="RunSeries"/>: charge is a level, the rest are means of the minute before.</summary>
/// <param name="samples">How many samples.</param>
public sealed class PowerSeries(int samples)
{
    /// <summary>Charge, per rated.</summary>
    public double[] Charge_frac { get; } = new double[samples];

    /// <summary>What all loads drew. [W]</summary>
    public double[] Drawn_W { get; } = new double[samples];

    /// <summary>What the panels gave. [W]</summary>
    public double[] Solar_W { get; } = new double[samples];

    /// <summary>What shore power gave through the converter. [W]</summary>
    public double[] Shore_W { get; } = new double[samples];

    /// <summary>What the generator gave through the converter. [W]</summary>
    public double[] Generator_W { get; } = new double[samples];

    /// <summary>What came in altogether. [W]</summary>
    public double[] Given_W()
    {
        double[] given_W = new double[samples];
        for (int i = 0; i < samples; i++) given_W[i] = Solar_W[i] + Shore_W[i] + Generator_W[i];
        return given_W;
    }
}
