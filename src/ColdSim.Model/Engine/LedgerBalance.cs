namespace ColdSim.Model.Engine;

/// <summary>Why a run ended.</summary>
public enum RunEnd
{
    /// <summary>It reached the time asked for.</summary>
    Complete,

    /// <summary>The weather file ended first.</summary>
    WeatherEnded,

    /// <summary>Liquid filled the cylinder; the equations stop there.</summary>
    LiquidFull,

    /// <summary>Relief pressure was reached; the equations stop there.</summary>
    ReliefPressure,
}

/// <summary>What is left over when a run's energy and mass are added up. Relative residuals are of the throughput.</summary>
/// <param name="CylinderEnergy_J">Heat in less enthalpy out less stored, of the cylinder. [J]</param>
/// <param name="CylinderEnergy_frac">The same per throughput.</param>
/// <param name="CoachEnergy_J">Heat in less heat lost less stored, of the coach. [J]</param>
/// <param name="CoachEnergy_frac">The same per throughput.</param>
/// <param name="FuelEnergy_J">Gas burnt at its heating value less useful heat less flue loss, of all appliances. [J]</param>
/// <param name="FuelEnergy_frac">The same per throughput.</param>
/// <param name="Mass_kg">Mass gone from the cylinder less mass taken by appliances. [kg]</param>
/// <param name="Mass_frac">The same per throughput.</param>
/// <param name="Electric_J">Electricity in less drawn, lost and stored, of the 12 V side. [J]</param>
/// <param name="Electric_frac">The same per throughput.</param>
public readonly record struct LedgerBalance(
    double CylinderEnergy_J,
    double CylinderEnergy_frac,
    double CoachEnergy_J,
    double CoachEnergy_frac,
    double FuelEnergy_J,
    double FuelEnergy_frac,
    double Mass_kg,
    double Mass_frac,
    double Electric_J = 0,
    double Electric_frac = 0)
{
    /// <summary>Largest relative residual that still counts as closed.</summary>
    public const double Tolerance_frac = 1e-6;

    /// <summary>The worst of the energy residuals, relative.</summary>
    public double WorstEnergy_frac
        => Math.Max(Math.Max(Math.Abs(CylinderEnergy_frac), Math.Abs(Electric_frac)), Math.Max(Math.Abs(CoachEnergy_frac), Math.Abs(FuelEnergy_frac)));

    /// <summary>Whether energy and mass close. A NaN does not.</summary>
    public bool Closes => WorstEnergy_frac <= Tolerance_frac && Math.Abs(Mass_frac) <= Tolerance_frac;
}
