namespace ColdSim.Model.Appliances;

/// <summary>A draw of gas at a known rate beside the furnace or instead of it. SI units.</summary>
/// <remarks>Its rate is that at the site: altitude does not lower it.</remarks>
internal sealed record ConstantDraw : GasAppliance
{
    /// <summary>Part of the input that warms the coach.</summary>
    public double HeatToCoach_frac { get; init; }

    /// <inheritdoc/>
    public override double WarmsCoach_frac => HeatToCoach_frac;

    /// <inheritdoc/>
    public override double InputAt_W(double elevation_m) => Input_W;
}
