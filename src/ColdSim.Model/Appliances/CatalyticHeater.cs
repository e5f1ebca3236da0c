namespace ColdSim.Model.Appliances;

/// <summary>A portable or catalytic heater without a flue, by the clock or on a thermostat of its own. It damps the air and needs fresh air.</summary>
internal sealed record CatalyticHeater : GasAppliance
{
    /// <summary>Its own thermostat on the coach's air; null where it burns by the clock.</summary>
    public SwitchBand? OwnThermostat { get; init; }

    /// <inheritdoc/>
    /// <remarks>All but a hundredth, from memory; what is lost leaves with the air that its burning needs.</remarks>
    public override double WarmsCoach_frac => 0.99;

    /// <inheritdoc/>
    public override bool IsUnvented => true;

    /// <inheritdoc/>
    public override SwitchBand? Thermostat => OwnThermostat;
}
