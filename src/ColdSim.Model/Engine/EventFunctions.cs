namespace ColdSim.Model.Engine;

/// <summary>What the equations can reach that makes something switch.</summary>
internal enum EventFunctionKind
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
internal readonly record struct EventFunction(EventFunctionKind Kind, int Place)
{
    /// <summary>Whether it can be told from the coach, without what stands in the cylinders.</summary>
    public bool OfCoach => Kind <= EventFunctionKind.Damp;
}

/// <summary>Every switching point of a rig, and how far a state is past each.</summary>
internal sealed class EventFunctions
{
    private readonly Rig _rig;
    private readonly Plant _plant;
    private readonly Controls _controls;
    private readonly HeldInputs _conditions;
    private readonly EventFunction[] _points;

    public EventFunctions(Rig rig, Plant plant, Controls controls, HeldInputs conditions)
    {
        (_rig, _plant, _controls, _conditions) = (rig, plant, controls, conditions);
        List<EventFunction> points = [];
        if (controls.Thermostat is not null) points.Add(new(EventFunctionKind.Thermostat, 0));
        if (plant.Coach is not null) points.Add(new(EventFunctionKind.Freezing, 0));
        for (int i = 0; i < controls.Appliances.Length; i++)
        {
            if (rig.Appliances[i].Thermostat is not null) points.Add(new(EventFunctionKind.Appliance, i));
        }

        for (int i = 0; i < plant.Nodes.Length; i++)
        {
            if (plant.Nodes[i].Latent_J <= 0) continue;
            points.Add(new(EventFunctionKind.WaterFreezes, i));
            points.Add(new(EventFunctionKind.WaterSolid, i));
        }

        for (int i = 0; i < controls.Heaters.Length; i++)
        {
            if (rig.Heaters[i].Thermostat is not null) points.Add(new(EventFunctionKind.Heater, i));
        }

        if (plant.Damp is not null) points.Add(new(EventFunctionKind.Damp, 0));
        points.Add(new(EventFunctionKind.Flame, 0));
        points.Add(new(EventFunctionKind.Supply, 0));
        if (controls.HasReserve) points.Add(new(EventFunctionKind.Reserve, 0));
        for (int i = 0; i < plant.Cylinders.Length; i++)
        {
            points.Add(new(EventFunctionKind.Liquid, i));
            points.Add(new(EventFunctionKind.LiquidFull, i));
            points.Add(new(EventFunctionKind.Relief, i));
            if (controls.Blankets[i] is null) continue;
            points.Add(new(EventFunctionKind.Hot, i));
            points.Add(new(EventFunctionKind.Blanket, i));
        }

        _points = [.. points];
    }

    public ReadOnlySpan<EventFunction> All => _points;

    /// <summary>How far a state is past a switching point; above 0 it switches.</summary>
    /// <param name="point">Which.</param>
    /// <param name="s">The state.</param>
    /// <param name="at">What stands and flows there; not looked at for a point of the coach.</param>
    /// <param name="hasLiquid">Which cylinders are taken to have liquid.</param>
    /// <param name="stop_s">The end of the step. [s]</param>
    public double EventValue(in EventFunction point, PlantState s, AlgebraicState at, bool[] hasLiquid, double stop_s)
    {
        int i = point.Place;
        switch (point.Kind)
        {
            case EventFunctionKind.Thermostat:
                return _controls.Thermostat!.MayChangeFrom_s >= stop_s ? -1 : _controls.Thermostat.EventValue_K(s.Sensor_K);
            case EventFunctionKind.Freezing:
                return _controls.Freezing.EventValue(s.Air_K);
            case EventFunctionKind.Appliance:
                return _controls.Appliances[i].EventValue_K(_plant.Sensed_K(i, s));
            case EventFunctionKind.WaterFreezes:
                return _controls.Liquid[i].EventValue(s.Node_J[i]);
            case EventFunctionKind.WaterSolid:
                return _controls.Solid[i].EventValue(-s.Node_J[i]);
            case EventFunctionKind.Heater:
                return _controls.Heaters[i].EventValue_K(s.Air_K);
            case EventFunctionKind.Damp:
                return _controls.Damp.EventValue(_plant.Damp!.Saturation_frac(s.Vapour_kg, s.Air_K, _conditions.Outside_K));
            case EventFunctionKind.Flame:
                return at.Point.IsFull ? -1 : _controls.FlameEventValue_Pa(at.Point.Delivery_Pa);
            case EventFunctionKind.Supply:
                return _plant.Supply.Asked_kg_s <= 0 || _controls.Waiting() ? -1 : _controls.Supply.EventValue_frac(_plant.Supply.WorstTaken_frac(at.Point));
            case EventFunctionKind.Reserve:
                return _controls.Reserve.EventValue(at.Reserve_frac);
            case EventFunctionKind.Liquid:
                double liquid_kg = at.Cylinders.Contents[i].LiquidMass_kg;
                return hasLiquid[i] ? -liquid_kg : liquid_kg;
            case EventFunctionKind.LiquidFull:
                return at.Cylinders.Contents[i].LiquidVolume_m3 - _rig.Cylinders[i].Volume_m3;
            case EventFunctionKind.Relief:
                return at.CylinderPressure_Pa(i) - _rig.Cylinders[i].ReliefPressure_Pa;
            case EventFunctionKind.Hot:
                return _controls.Hot[i].EventValue(s.Cylinder_K[i]);
            default:
                return _controls.Blankets[i]!.EventValue_K(s.Cylinder_K[i]);
        }
    }
}
