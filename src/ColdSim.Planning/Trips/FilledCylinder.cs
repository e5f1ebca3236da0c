namespace ColdSim.Planning.Trips;

/// <summary>A cylinder after a filling, or the one that came in an exchange. SI units.</summary>
/// <param name="Propane_kg">Propane in it. [kg]</param>
/// <param name="Liquid_K">Its temperature, old and new mixed. [K]</param>
/// <param name="Liquid_frac">Part of its volume that is liquid.</param>
/// <param name="OverWeight_kg">By how much it is over the legal weight; 0 where it is not. [kg]</param>
/// <param name="LiquidFull_K">Temperature at which the liquid would fill it; infinite where that is beyond the model's range. [K]</param>
/// <param name="End">What ended the filling.</param>
public readonly record struct FilledCylinder(
    double Propane_kg, double Liquid_K, double Liquid_frac, double OverWeight_kg, double LiquidFull_K, FillingEnd End)
{
    /// <summary>Whether it holds more than the legal weight.</summary>
    public bool IsOverWeight => OverWeight_kg > 0;
}
