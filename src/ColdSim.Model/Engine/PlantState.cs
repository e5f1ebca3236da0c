using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Engine;

/// <summary>The continuous state of rig and coach, or its rate of change. SI units.</summary>
/// <remarks>All values are in one array, so that moving along a rate is one loop over vectors of four.</remarks>
internal sealed class PlantState
{
    private const int Air = 0, Furnishings = 1, Sensor = 2, Vapour = 3, FirstCylinder = 4;

    private readonly int _cylinders, _nodes, _firstButane, _firstNode;
    private readonly double[] _values;

    /// <summary>Room for a state.</summary>
    /// <param name="cylinders">How many cylinders.</param>
    /// <param name="nodes">How many nodes beside coach and cylinders.</param>
    /// <param name="mixed">Whether butanes are followed beside the propane.</param>
    public PlantState(int cylinders, int nodes, bool mixed = false)
    {
        (_cylinders, _nodes) = (cylinders, nodes);
        _firstButane = FirstCylinder + 2 * cylinders;
        _firstNode = _firstButane + (mixed ? 2 * cylinders : 0);
        int lanes = Vector256<double>.Count;
        _values = new double[(_firstNode + nodes + lanes - 1) / lanes * lanes];
    }

    /// <summary>Gas in each cylinder: propane, or all species together. [kg]</summary>
    public Span<double> Propane_kg => _values.AsSpan(FirstCylinder, _cylinders);

    /// <summary>Liquid and shell of each. [K]</summary>
    public Span<double> Cylinder_K => _values.AsSpan(FirstCylinder + _cylinders, _cylinders);

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
    private Span<double> Butane_kg => _values.AsSpan(_firstButane, _firstNode - _firstButane);

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

    /// <summary>Sets this to another state moved along a rate.</summary>
    /// <param name="from">State to start from.</param>
    /// <param name="rate">Its rate of change.</param>
    /// <param name="time_s">For how long. [s]</param>
    public void SetAlong(PlantState from, PlantState rate, double time_s)
    {
        ReadOnlySpan<Vector256<double>> start = from.Lanes, slope = rate.Lanes;
        Span<Vector256<double>> moved = Lanes;
        for (int i = 0; i < moved.Length; i++) moved[i] = start[i] + time_s * slope[i];
    }

    /// <summary>Sets this to another state moved along the weighted rates of the four stages of a Runge–Kutta step.</summary>
    /// <param name="from">State to start from.</param>
    /// <param name="k1">Rate at the start.</param>
    /// <param name="k2">Rate in the middle.</param>
    /// <param name="k3">Rate in the middle, once more.</param>
    /// <param name="k4">Rate at the end.</param>
    /// <param name="outer_s">Weight of the rates at start and end. [s]</param>
    /// <param name="inner_s">Weight of those in the middle. [s]</param>
    public void SetAlong(PlantState from, PlantState k1, PlantState k2, PlantState k3, PlantState k4, double outer_s, double inner_s)
    {
        ReadOnlySpan<Vector256<double>> start = from.Lanes, r1 = k1.Lanes, r2 = k2.Lanes, r3 = k3.Lanes, r4 = k4.Lanes;
        Span<Vector256<double>> moved = Lanes;
        for (int i = 0; i < moved.Length; i++)
            moved[i] = start[i] + outer_s * r1[i] + inner_s * r2[i] + inner_s * r3[i] + outer_s * r4[i];
    }

    private Span<Vector256<double>> Lanes => MemoryMarshal.Cast<double, Vector256<double>>(_values.AsSpan());
}
