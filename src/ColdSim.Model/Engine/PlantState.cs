using ColdSim.Model.Numerics;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Engine;

/// <summary>The continuous state of rig and coach, or its rate of change. SI units.</summary>
/// <remarks>All values are in one array, so that moving along rates is one loop over vectors of four.</remarks>
internal sealed class PlantState
{
    private const int Air = 0, Furnishings = 1, Sensor = 2, Vapour = 3, FirstCylinder = 4;

    private readonly int _cylinders, _nodes, _walls, _firstButane, _firstWall, _firstNode;
    private readonly double[] _values;

    /// <summary>Room for a state.</summary>
    /// <param name="cylinders">How many cylinders.</param>
    /// <param name="nodes">How many nodes beside coach and cylinders.</param>
    /// <param name="mixed">Whether butanes are followed beside the propane.</param>
    /// <param name="blankets">Whether any cylinder is under a blanket, so that its dry wall is followed.</param>
    public PlantState(int cylinders, int nodes, bool mixed, bool blankets)
    {
        (_cylinders, _nodes, _walls) = (cylinders, nodes, blankets ? cylinders : 0);
        _firstButane = FirstCylinder + 2 * cylinders;
        _firstWall = _firstButane + (mixed ? 2 * cylinders : 0);
        _firstNode = _firstWall + _walls;
        _values = new double[WeightedSum.Padded(_firstNode + nodes)];
        Rounded_kg = new double[cylinders];
    }

    /// <summary>Gas in each cylinder: propane, or all species together. [kg]</summary>
    public Span<double> Propane_kg => _values.AsSpan(FirstCylinder, _cylinders);

    /// <summary>What rounding has kept out of each cylinder's gas so far; less than its last digit. [kg]</summary>
    public double[] Rounded_kg { get; }

    /// <summary>Liquid and shell of each. [K]</summary>
    public Span<double> Cylinder_K => _values.AsSpan(FirstCylinder + _cylinders, _cylinders);

    /// <summary>Energy by which each one's dry wall under a blanket is warmer than its liquid; empty without blankets. [J]</summary>
    public Span<double> Wall_J => _values.AsSpan(_firstWall, _walls);

    /// <summary>Energy in each node, from water at freezing. [J]</summary>
    public Span<double> Node_J => _values.AsSpan(_firstNode, _nodes);

    /// <summary>Water vapour in the coach's air; 0 where it is not followed. [kg]</summary>
    public ref double Vapour_kg => ref _values[Vapour];

    /// <summary>Inside air; NaN without a coach. [K]</summary>
    public ref double Air_K => ref _values[Air];

    /// <summary>Furnishings; equal to the air without a slow node. [K]</summary>
    public ref double Furnishings_K => ref _values[Furnishings];

    /// <summary>The thermostat's sensor; NaN without a thermostat. [K]</summary>
    public ref double Sensor_K => ref _values[Sensor];

    // n-butane and isobutane of each cylinder, a part of its gas; none where the gas is propane alone.
    private Span<double> Butane_kg => _values.AsSpan(_firstButane, _firstWall - _firstButane);

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
        double normal_kg = Butane_kg[2 * cylinder], iso_kg = Butane_kg[2 * cylinder + 1];
        return new GasMasses(Math.Max(0, Propane_kg[cylinder] - normal_kg - iso_kg), normal_kg, iso_kg);
    }

    /// <summary>Sets a cylinder's butanes, or their rates, from a gas.</summary>
    public void SetButanes(int cylinder, in GasMasses gas)
        => (Butane_kg[2 * cylinder], Butane_kg[2 * cylinder + 1]) = (gas.NormalButane, gas.Isobutane);

    /// <summary>Each cylinder's n-butane; 0 where the gas is propane alone. [kg]</summary>
    public double NormalButane_kg(int cylinder) => Butane_kg.IsEmpty ? 0 : Butane_kg[2 * cylinder];

    /// <summary>Each cylinder's isobutane; 0 where the gas is propane alone. [kg]</summary>
    public double Isobutane_kg(int cylinder) => Butane_kg.IsEmpty ? 0 : Butane_kg[2 * cylinder + 1];

    /// <summary>The row.</summary>
    public double[] Values => _values;
}
