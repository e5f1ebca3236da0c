using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;

namespace ColdSim.Model.Engine;

/// <summary>Looks at how a run stands and tells its observer of events.</summary>
/// <param name="plant">The equations.</param>
/// <param name="controls">What switches.</param>
/// <param name="stepper">Holds the state.</param>
/// <param name="frost">Frost on each cylinder; kept and changed by the caller.</param>
/// <param name="record">Takes the moments.</param>
internal sealed class EventPublisher(Plant plant, Controls controls, Stepper stepper, FrostLayer[] frost, StepRecord record)
{
    private double _time_s;
    private WeatherSample _sample;
    private bool _looked;

    /// <summary>Who is told.</summary>
    public IRunObserver Observer { get; set; } = null!;

    /// <summary>The run starts.</summary>
    /// <param name="sample">In this weather.</param>
    public void Begin(in WeatherSample sample) => (_time_s, _sample, _looked) = (0, sample, false);

    /// <summary>Something switched since the last look.</summary>
    public void Changed() => _looked = false;

    /// <summary>Time went on.</summary>
    /// <param name="time_s">To here. [s]</param>
    /// <param name="sample">The weather there.</param>
    public void Look(double time_s, in WeatherSample sample)
    {
        (_time_s, _sample) = (time_s, sample);
        Look();
    }

    /// <summary>Looks again where something switched since the last look.</summary>
    public void LookIfChanged()
    {
        if (!_looked) Look();
    }

    /// <summary>Tells of an event.</summary>
    /// <param name="kind">What happened.</param>
    /// <param name="value">What goes with it.</param>
    /// <param name="place">Of which cylinder or node.</param>
    public void Tell(EventKind kind, double value, int place = 0)
    {
        LookIfChanged();
        Observer.Happened(new SimulationEvent(_time_s, kind, value, place), record.Now);
    }

    /// <summary>Delivery pressure now. [Pa gauge]</summary>
    public double Delivery_Pa() => plant.Supply.Delivery_Pa(stepper.AlgebraicState.Point, stepper.AlgebraicState.Feed, stepper.AlgebraicState.AirPressure_Pa);

    // Written in place: it is done at every step, and a snapshot is large.
    private void Look()
    {
        ref Snapshot now = ref record.Now;
        PlantState s = stepper.State;
        AlgebraicState algebraic = stepper.AlgebraicState;
        for (int i = 0; i < frost.Length; i++)
        {
            now.Set(i, new CylinderReading(
                s.Propane_kg[i], s.Cylinder_K[i], algebraic.CylinderPressure_Pa(i), frost[i].Mass_kg_m2, frost[i].Thickness_m, s.NormalButane_kg(i),
                s.Isobutane_kg(i)));
        }

        now.Time_s = _time_s;
        now.Outside_K = _sample.Air_K;
        now.Wind_m_s = _sample.Wind_m_s;
        now.Inside_K = s.Air_K;
        now.SetPoint_K = controls.Thermostat?.SetPoint_K ?? double.NaN;
        now.CylinderPressure_Pa = algebraic.FeedPressure_Pa;
        now.DeliveryPressure_Pa = Delivery_Pa();
        now.Propane_kg = s.TotalPropane_kg();
        now.InUse = plant.Manifold.InUse(algebraic.Cylinders);
        _looked = true;
    }
}
