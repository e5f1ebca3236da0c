namespace ColdSim.Model.Engine;

/// <summary>What the equations can reach that makes something switch.</summary>
internal enum SwitchingKind
{
    // These look at the coach alone.
    Thermostat,
    Freezing,
    Appliance,
    WaterFreezes,
    WaterSolid,
    Heater,
    Damp,
    Flame,
    Supply,
    Reserve,

    // From here on one for each cylinder.
    Liquid,
    LiquidFull,
    Relief,
    Hot,
    Blanket,
}

/// <summary>One switching point: what, and of which cylinder, appliance or node.</summary>
internal readonly record struct SwitchingPoint(SwitchingKind Kind, int Place)
{
    /// <summary>Whether it can be told from the coach, without what stands in the cylinders.</summary>
    public bool OfCoach => Kind <= SwitchingKind.Damp;
}

/// <summary>Every switching point of a rig, and how far a state is past each.</summary>
internal sealed class SwitchingPoints
{
    private readonly Rig _rig;
    private readonly Plant _plant;
    private readonly Controls _controls;
    private readonly StepConditions _conditions;
    private readonly SwitchingPoint[] _points;

    public SwitchingPoints(Rig rig, Plant plant, Controls controls, StepConditions conditions)
    {
        (_rig, _plant, _controls, _conditions) = (rig, plant, controls, conditions);
        List<SwitchingPoint> points = [];
        if (controls.Thermostat is not null) points.Add(new(SwitchingKind.Thermostat, 0));
        if (plant.Coach is not null) points.Add(new(SwitchingKind.Freezing, 0));
        for (int i = 0; i < controls.Appliances.Length; i++)
        {
            if (rig.Appliances[i].Thermostat is not null) points.Add(new(SwitchingKind.Appliance, i));
        }

        for (int i = 0; i < plant.Nodes.Length; i++)
        {
            if (plant.Nodes[i].Latent_J <= 0) continue;
            points.Add(new(SwitchingKind.WaterFreezes, i));
            points.Add(new(SwitchingKind.WaterSolid, i));
        }

        for (int i = 0; i < controls.Heaters.Length; i++)
        {
            if (rig.Heaters[i].Thermostat is not null) points.Add(new(SwitchingKind.Heater, i));
        }

        if (plant.Damp is not null) points.Add(new(SwitchingKind.Damp, 0));
        points.Add(new(SwitchingKind.Flame, 0));
        points.Add(new(SwitchingKind.Supply, 0));
        if (controls.HasReserve) points.Add(new(SwitchingKind.Reserve, 0));
        for (int i = 0; i < plant.Cylinders.Length; i++)
        {
            points.Add(new(SwitchingKind.Liquid, i));
            points.Add(new(SwitchingKind.LiquidFull, i));
            points.Add(new(SwitchingKind.Relief, i));
            if (controls.Blankets[i] is null) continue;
            points.Add(new(SwitchingKind.Hot, i));
            points.Add(new(SwitchingKind.Blanket, i));
        }

        _points = [.. points];
    }

    public ReadOnlySpan<SwitchingPoint> All => _points;

    /// <summary>How far a state is past a switching point; above 0 it switches.</summary>
    /// <param name="point">Which.</param>
    /// <param name="s">The state.</param>
    /// <param name="at">What stands and flows there; not looked at for a point of the coach.</param>
    /// <param name="hasLiquid">Which cylinders are taken to have liquid.</param>
    /// <param name="stop_s">The end of the step. [s]</param>
    public double Past(in SwitchingPoint point, PlantState s, Standing at, bool[] hasLiquid, double stop_s)
    {
        int i = point.Place;
        switch (point.Kind)
        {
            case SwitchingKind.Thermostat:
                return _controls.Thermostat!.MayChangeFrom_s >= stop_s ? -1 : _controls.Thermostat.Past_K(s.Sensor_K);
            case SwitchingKind.Freezing:
                return _controls.Freezing.Past(s.Air_K);
            case SwitchingKind.Appliance:
                return _controls.Appliances[i].Past_K(_plant.Sensed_K(i, s));
            case SwitchingKind.WaterFreezes:
                return _controls.Liquid[i].Past(s.Node_J[i]);
            case SwitchingKind.WaterSolid:
                return _controls.Solid[i].Past(-s.Node_J[i]);
            case SwitchingKind.Heater:
                return _controls.Heaters[i].Past_K(s.Air_K);
            case SwitchingKind.Damp:
                return _controls.Damp.Past(_plant.Damp!.Saturation_frac(s.Vapour_kg, s.Air_K, _conditions.Outside_K));
            case SwitchingKind.Flame:
                return at.Point.IsFull ? -1 : _controls.FlamePast_Pa(at.Point.Delivery_Pa);
            case SwitchingKind.Supply:
                return _plant.Supply.Asked_kg_s <= 0 || _controls.Waiting() ? -1 : _controls.Supply.Past_frac(_plant.Supply.WorstTaken_frac(at.Point));
            case SwitchingKind.Reserve:
                return _controls.Reserve.Past(at.Reserve_frac);
            case SwitchingKind.Liquid:
                double liquid_kg = at.Cylinders.Contents[i].LiquidMass_kg;
                return hasLiquid[i] ? -liquid_kg : liquid_kg;
            case SwitchingKind.LiquidFull:
                return at.Cylinders.Contents[i].LiquidVolume_m3 - _rig.Cylinders[i].Volume_m3;
            case SwitchingKind.Relief:
                return at.CylinderPressure_Pa(i) - _rig.Cylinders[i].ReliefPressure_Pa;
            case SwitchingKind.Hot:
                return _controls.Hot[i].Past(s.Cylinder_K[i]);
            default:
                return _controls.Blankets[i]!.Past_K(s.Cylinder_K[i]);
        }
    }
}
