namespace ColdSim.Model.Appliances;

/// <summary>Stove or oven, lit at meals: all of its heat and all of its water stay in the coach.</summary>
internal sealed record Cooker : GasAppliance
{
    /// <inheritdoc/>
    public override double WarmsCoach_frac => 1;

    /// <inheritdoc/>
    public override bool IsUnvented => true;
}
