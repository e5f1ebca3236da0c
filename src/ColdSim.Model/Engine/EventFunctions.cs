using ColdSim.Physics.Propane;

namespace ColdSim.Model.Engine;

/// <summary>Kinds of event function: what the continuous state can trigger.</summary>
internal enum EventFunctionKind
{
    // These depend on the coach alone.
    Thermostat,
    Freezing,
    Wakes,
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

/// <summary>One event function: its kind, and the index of its cylinder, appliance or node.</summary>
internal readonly record struct EventFunction(EventFunctionKind Kind, int Place)
{
    /// <summary>Whether it depends on the coach alone, and not on the cylinders.</summary>
    public bool IsOfCoach => Kind <= EventFunctionKind.Damp;

    /// <summary>Whether the step is made again up to it: the equations have a kink where it crosses zero, or change there and the energy shows how well it was met.</summary>
    public bool IsKink => Kind is EventFunctionKind.WaterFreezes or EventFunctionKind.WaterSolid or EventFunctionKind.Liquid;
}

/// <summary>Every event function of a rig, and its value at a state.</summary>
internal sealed class EventFunctions
{
    // Propane's at the end of its saturation line.
    private const double PressureSlope_Pa_K = 6e4;

    private readonly Rig _rig;
    private readonly Plant _plant;
    private readonly Controls _controls;
    private readonly HeldInputs _inputs;
    private readonly EventFunction[] _functions;

    public EventFunctions(Rig rig, Plant plant, Controls controls, HeldInputs inputs)
    {
        (_rig, _plant, _controls, _inputs) = (rig, plant, controls, inputs);
        List<EventFunction> functions = [];
        if (controls.Thermostat is not null) functions.Add(new(EventFunctionKind.Thermostat, 0));
        if (plant.Coach is not null) functions.Add(new(EventFunctionKind.Freezing, 0));
        if (controls.CanAct) functions.Add(new(EventFunctionKind.Wakes, 0));
        for (int i = 0; i < controls.Appliances.Length; i++)
        {
            if (rig.Appliances[i].Thermostat is not null) functions.Add(new(EventFunctionKind.Appliance, i));
        }

        for (int i = 0; i < plant.Nodes.Length; i++)
        {
            if (plant.Nodes[i].Latent_J <= 0) continue;
            functions.Add(new(EventFunctionKind.WaterFreezes, i));
            functions.Add(new(EventFunctionKind.WaterSolid, i));
        }

        for (int i = 0; i < controls.Heaters.Length; i++)
        {
            if (rig.Heaters[i].Thermostat is not null) functions.Add(new(EventFunctionKind.Heater, i));
        }

        if (plant.Damp is not null) functions.Add(new(EventFunctionKind.Damp, 0));
        functions.Add(new(EventFunctionKind.Flame, 0));
        functions.Add(new(EventFunctionKind.Supply, 0));
        if (controls.HasReserve) functions.Add(new(EventFunctionKind.Reserve, 0));
        for (int i = 0; i < plant.Cylinders.Length; i++)
        {
            functions.Add(new(EventFunctionKind.Liquid, i));
            functions.Add(new(EventFunctionKind.LiquidFull, i));
            functions.Add(new(EventFunctionKind.Relief, i));
            if (controls.Blankets[i] is null) continue;
            functions.Add(new(EventFunctionKind.Hot, i));
            functions.Add(new(EventFunctionKind.Blanket, i));
        }

        _functions = [.. functions];
    }

    public ReadOnlySpan<EventFunction> All => _functions;

    /// <summary>How far liquid is past the end of the saturation line, as a pressure of about that size. [Pa]</summary>
    public static double PastLine_Pa(double liquid_K) => (liquid_K - SaturationTable.Highest_K) * PressureSlope_Pa_K;

    /// <summary>Value of an event function at a state; a zero crossing from below is an event.</summary>
    /// <param name="function">The event function.</param>
    /// <param name="s">State to evaluate it at.</param>
    /// <param name="at">Algebraic part of the state; not used for an event function of the coach.</param>
    /// <param name="hasLiquid">Which cylinders have liquid by the equations in use.</param>
    /// <param name="stop_s">The end of the step. [s]</param>
    public double EventValue(in EventFunction function, PlantState s, AlgebraicState at, bool[] hasLiquid, double stop_s)
    {
        int i = function.Place;
        switch (function.Kind)
        {
            case EventFunctionKind.Thermostat:
                return _controls.Thermostat!.MayChangeFrom_s >= stop_s ? -1 : _controls.Thermostat.EventValue_K(s.Sensor_K);
            case EventFunctionKind.Freezing:
                return _controls.Freezing.EventValue(s.Air_K);
            case EventFunctionKind.Wakes:
                return _controls.Warm.EventValue(s.Air_K);
            case EventFunctionKind.Appliance:
                return _controls.Appliances[i].EventValue_K(_plant.Sensed_K(i, s));
            case EventFunctionKind.WaterFreezes:
                return _controls.Liquid[i].EventValue(s.Node_J[i]);
            case EventFunctionKind.WaterSolid:
                return _controls.Solid[i].EventValue(-s.Node_J[i]);
            case EventFunctionKind.Heater:
                return _controls.Heaters[i].EventValue_K(s.Air_K);
            case EventFunctionKind.Damp:
                return _controls.Damp.EventValue(_plant.Damp!.Saturation_frac(s.Vapour_kg, s.Air_K, _inputs.Outside_K));
            case EventFunctionKind.Flame:
                return at.Point.IsFull ? -1 : _controls.FlameEventValue_Pa(at.Point.Delivery_Pa);
            case EventFunctionKind.Supply:
                return _plant.Supply.Demand_kg_s <= 0 || _controls.Waiting() ? -1 : _controls.Supply.EventValue_frac(_plant.Supply.LowestSatisfied_frac(at.Point));
            case EventFunctionKind.Reserve:
                return _controls.Reserve.EventValue(at.Reserve_frac);
            case EventFunctionKind.Liquid:
                double liquid_kg = at.Cylinders.Contents[i].LiquidMass_kg;
                return hasLiquid[i] ? -liquid_kg : liquid_kg;
            case EventFunctionKind.LiquidFull:
                return at.Cylinders.Contents[i].LiquidVolume_m3 - _rig.Cylinders[i].Volume_m3;
            case EventFunctionKind.Relief:
                double past_Pa = at.CylinderPressure_Pa(i) - _rig.Cylinders[i].ReliefPressure_Pa;
                return hasLiquid[i] ? Math.Max(past_Pa, PastLine_Pa(s.Cylinder_K[i])) : past_Pa;
            case EventFunctionKind.Hot:
                return _controls.Hot[i].EventValue(_plant.Hottest_K(s, _inputs, i));
            default:
                return _controls.Blankets[i]!.EventValue_K(_plant.Covered_K(s, _inputs, i));
        }
    }
}
