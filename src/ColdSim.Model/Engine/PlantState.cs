namespace ColdSim.Model.Engine;

/// <summary>The continuous state of rig and coach, or its rate of change. SI units.</summary>
/// <param name="cylinders">How many cylinders.</param>
/// <param name="nodes">How many nodes beside coach and cylinders.</param>
internal sealed class PlantState(int cylinders, int nodes)
{
    /// <summary>Propane in each cylinder. [kg]</summary>
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
