namespace ColdSim.Model.Engine;

/// <summary>Balances the integrated flows of a run against what is stored at its ends.</summary>
/// <remarks>
/// Stored energy and mass come from the first and the last state alone; the integrals come from the steps between. Nothing is
/// counted from the increments it checks, so a flow that equations and ledger count differently shows as a residual.
/// </remarks>
internal sealed class Ledger
{
    // Below these throughputs a run is idle, and a residual is held against the floor instead.
    private const double EnergyFloor_J = 1000;
    private const double MassFloor_kg = 1e-3;

    private readonly IntegralKind _misread;
    private readonly double _factor;
    private double _drawn_kg, _burnt_kg, _unburnt_kg;
    private double _cylinderHeat_J, _enthalpy_J, _useful_J, _flue_J, _gains_J, _loss_J, _ground_J;
    private double _cylinderThrough_J, _coachThrough_J, _unburntBeyond_J;
    private double _electric_J, _electricThrough_J;

    /// <summary>An empty ledger, or one that misreads an integral by a factor, to test that the residual shows it.</summary>
    public Ledger(IntegralKind misread = IntegralKind.None, double factor = 1) => (_misread, _factor) = (misread, factor);

    /// <summary>Adds the integrals of a step.</summary>
    public void Post(StepIntegrals f)
    {
        double heat_J = Read(IntegralKind.CylinderHeat, f.CylinderHeat_J);
        double enthalpy_J = Read(IntegralKind.VapourEnthalpy, f.VapourEnthalpy_J);
        _drawn_kg += Read(IntegralKind.Drawn, f.Drawn_kg);
        _burnt_kg += Read(IntegralKind.Burnt, f.Burnt_kg);
        _unburnt_kg += f.Unburnt_kg;
        _unburntBeyond_J += f.UnburntBeyondPropane_J;
        _cylinderHeat_J += heat_J;
        _enthalpy_J += enthalpy_J;
        _cylinderThrough_J += Math.Abs(heat_J) + Math.Abs(enthalpy_J);

        double useful_J = Read(IntegralKind.Useful, f.Useful_J);
        double gains_J = Read(IntegralKind.Gains, f.Gains_J);
        double loss_J = Read(IntegralKind.Loss, f.Loss_J);
        double ground_J = Read(IntegralKind.Ground, f.Ground_J);
        _useful_J += useful_J;
        _flue_J += Read(IntegralKind.Flue, f.Flue_J);
        _gains_J += gains_J;
        _loss_J += loss_J;
        _ground_J += ground_J;
        _coachThrough_J += Math.Abs(useful_J) + Math.Abs(gains_J) + Math.Abs(loss_J) + Math.Abs(ground_J);
    }

    /// <summary>Adds the integrals of the 12 V side over a step.</summary>
    public void Post(in PowerIntegrals f)
    {
        double in_J = Read(IntegralKind.Solar, f.Solar_J) + Read(IntegralKind.Converter, f.Converter_J);
        double out_J = Read(IntegralKind.Load, f.Load_J) + Read(IntegralKind.BatteryLoss, f.Loss_J);
        _electric_J += in_J - out_J;
        _electricThrough_J += in_J + out_J;
    }

    /// <summary>Forms the residuals.</summary>
    /// <param name="start">What was stored at the start.</param>
    /// <param name="end">What is stored at the end.</param>
    /// <param name="heatingValue_J_kg">Gross heat of the gas, of propane where it is mixed: what is stored says the rest. [J/kg]</param>
    public LedgerBalance Close(in Stored start, in Stored end, double heatingValue_J_kg)
    {
        double cylinder_J = _cylinderHeat_J - _enthalpy_J - (end.Cylinder_J - start.Cylinder_J);
        double coach_J = _useful_J + _gains_J - _loss_J - _ground_J - (end.Coach_J - start.Coach_J);

        // What left the cylinder, by its states, must come out as useful heat, flue loss or unburnt gas.
        double gone_kg = start.Propane_kg - end.Propane_kg;
        double beyond_J = start.FuelBeyondPropane_J - end.FuelBeyondPropane_J - _unburntBeyond_J;
        double fuel_J = (gone_kg - _unburnt_kg) * heatingValue_J_kg + beyond_J - _useful_J - _flue_J;
        double mass_kg = gone_kg - _drawn_kg;
        double taken_kg = _drawn_kg - _burnt_kg - _unburnt_kg;
        if (Math.Abs(taken_kg) > Math.Abs(mass_kg)) mass_kg = taken_kg;

        double electric_J = _electric_J - (end.Battery_J - start.Battery_J);
        double massThrough_kg = Math.Max(_burnt_kg + _unburnt_kg, MassFloor_kg);
        return new LedgerBalance(
            cylinder_J, cylinder_J / Math.Max(_cylinderThrough_J, EnergyFloor_J),
            coach_J, coach_J / Math.Max(_coachThrough_J, EnergyFloor_J),
            fuel_J, fuel_J / (massThrough_kg * heatingValue_J_kg),
            mass_kg, mass_kg / massThrough_kg,
            electric_J, electric_J / Math.Max(_electricThrough_J, EnergyFloor_J));
    }

    private double Read(IntegralKind kind, double amount) => kind == _misread ? amount * _factor : amount;
}

/// <summary>Energy and mass stored at an instant.</summary>
internal readonly record struct Stored(
    double Cylinder_J, double Coach_J, double Propane_kg, double FuelBeyondPropane_J = 0, double Battery_J = 0);

/// <summary>Residuals of a run's energy and mass balances. Relative residuals are per throughput.</summary>
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
