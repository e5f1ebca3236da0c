using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Engine;

/// <summary>The continuous state of rig and coach, or its rate of change. SI units.</summary>
/// <param name="cylinders">How many cylinders.</param>
/// <param name="nodes">How many nodes beside coach and cylinders.</param>
/// <param name="mixed">Whether butanes are followed beside the propane.</param>
internal sealed class PlantState(int cylinders, int nodes, bool mixed = false)
{
    // n-butane and isobutane of each cylinder, a part of its gas; none where the gas is propane alone.
    private readonly double[] _butane_kg = new double[mixed ? 2 * cylinders : 0];

    /// <summary>Gas in each cylinder: propane, or all species together. [kg]</summary>
    public double[] Propane_kg { get; } = new double[cylinders];

    /// <summary>Liquid and shell of each. [K]</summary>
    public double[] Cylinder_K { get; } = new double[cylinders];

    /// <summary>Energy in each node, from water at freezing. [J]</summary>
    public double[] Node_J { get; } = new double[nodes];

    /// <summary>Water vapour in the coach's air; 0 where it is not followed. [kg]</summary>
    public double Vapour_kg { get; set; }

    /// <summary>Inside air; NaN without a coach. [K]</summary>
    public double Air_K { get; set; }

    /// <summary>Furnishings; equal to the air without a slow node. [K]</summary>
    public double Furnishings_K { get; set; }

    /// <summary>The thermostat's sensor; NaN without a thermostat. [K]</summary>
    public double Sensor_K { get; set; }

    /// <summary>Propane in all cylinders. [kg]</summary>
    public double TotalPropane_kg()
    {
        double sum_kg = 0;
        foreach (double kg in Propane_kg) sum_kg += kg;
        return sum_kg;
    }

    /// <summary>Each species in a cylinder of mixed gas. [kg]</summary>
    public GasMasses Gas(int cylinder)
    {
        double normal_kg = _butane_kg[2 * cylinder], iso_kg = _butane_kg[2 * cylinder + 1];
        return new GasMasses(Math.Max(0, Propane_kg[cylinder] - normal_kg - iso_kg), normal_kg, iso_kg);
    }

    /// <summary>Takes a cylinder's butanes, or their rates, from a gas.</summary>
    public void SetButanes(int cylinder, in GasMasses gas)
        => (_butane_kg[2 * cylinder], _butane_kg[2 * cylinder + 1]) = (gas.NormalButane, gas.Isobutane);

    /// <summary>Each cylinder's n-butane; 0 where the gas is propane alone. [kg]</summary>
    public double NormalButane_kg(int cylinder) => _butane_kg.Length == 0 ? 0 : _butane_kg[2 * cylinder];

    /// <summary>Each cylinder's isobutane; 0 where the gas is propane alone. [kg]</summary>
    public double Isobutane_kg(int cylinder) => _butane_kg.Length == 0 ? 0 : _butane_kg[2 * cylinder + 1];

    /// <summary>Becomes another state moved along a rate.</summary>
    /// <param name="from">The state.</param>
    /// <param name="rate">Its rate of change.</param>
    /// <param name="time_s">For how long. [s]</param>
    public void SetAlong(PlantState from, PlantState rate, double time_s)
    {
        for (int i = 0; i < Propane_kg.Length; i++)
        {
            Propane_kg[i] = from.Propane_kg[i] + time_s * rate.Propane_kg[i];
            Cylinder_K[i] = from.Cylinder_K[i] + time_s * rate.Cylinder_K[i];
        }

        for (int i = 0; i < _butane_kg.Length; i++) _butane_kg[i] = from._butane_kg[i] + time_s * rate._butane_kg[i];
        for (int i = 0; i < Node_J.Length; i++) Node_J[i] = from.Node_J[i] + time_s * rate.Node_J[i];
        Vapour_kg = from.Vapour_kg + time_s * rate.Vapour_kg;
        Air_K = from.Air_K + time_s * rate.Air_K;
        Furnishings_K = from.Furnishings_K + time_s * rate.Furnishings_K;
        Sensor_K = from.Sensor_K + time_s * rate.Sensor_K;
    }

    /// <summary>Moves along a rate.</summary>
    /// <param name="rate">The rate of change.</param>
    /// <param name="time_s">For how long. [s]</param>
    public void Add(PlantState rate, double time_s) => SetAlong(this, rate, time_s);
}
