namespace ColdSim.Model.Supply;

/// <summary>What one appliance takes at the regulator's outlet. SI units.</summary>
/// <param name="Full_kg_s">Gas at full delivery pressure. [kg/s]</param>
/// <param name="FullPressure_Pa">Delivery pressure from which it takes that. [Pa gauge]</param>
internal readonly record struct GasLoad(double Full_kg_s, double FullPressure_Pa)
{
    /// <summary>Satisfied fraction: its flow at a delivery pressure per its full flow, 0 to 1.</summary>
    /// <param name="delivery_Pa">Delivery pressure. [Pa gauge]</param>
    /// <remarks>
    /// The appliance's own regulator holds the burner pressure while it can; below, burner orifice and open valve together are a
    /// hole, and flow goes with the square root of the gauge pressure.
    /// </remarks>
    public double Satisfied_frac(double delivery_Pa)
        => delivery_Pa >= FullPressure_Pa ? 1 : delivery_Pa <= 0 ? 0 : Math.Sqrt(delivery_Pa / FullPressure_Pa);
}
