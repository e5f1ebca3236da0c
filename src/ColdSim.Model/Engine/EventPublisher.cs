using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;

namespace ColdSim.Model.Engine;

/// <summary>Captures snapshots of a run and publishes its events to the observer.</summary>
/// <param name="plant">The continuous equations.</param>
/// <param name="controls">What switches.</param>
/// <param name="stepper">Holds the state.</param>
/// <param name="inputs">Inputs held over a step.</param>
/// <param name="frost">Frost on each cylinder; kept and changed by the caller.</param>
/// <param name="record">Receives the snapshots.</param>
internal sealed class EventPublisher(Plant plant, Controls controls, Stepper stepper, HeldInputs inputs, FrostLayer[] frost, StepRecord record)
{
    private double _time_s;
    private WeatherSample _sample;
    private bool _isCaptured, _readsDelivery;

    /// <summary>Receives steps and events.</summary>
    public IRunObserver Observer
    {
        get;
        set => (field, _readsDelivery) = (value, value.ReadsDelivery);
    } = null!;

    /// <summary>The run starts.</summary>
    /// <param name="sample">Weather at the start.</param>
    public void Begin(in WeatherSample sample) => (_time_s, _sample, _isCaptured) = (0, sample, false);

    /// <summary>Marks the last snapshot as outdated, because something switched.</summary>
    public void Invalidate() => _isCaptured = false;

    /// <summary>Captures a snapshot at a later time.</summary>
    /// <param name="time_s">Time since the start. [s]</param>
    /// <param name="sample">The weather there.</param>
    public void Capture(double time_s, in WeatherSample sample)
    {
        (_time_s, _sample) = (time_s, sample);
        Capture();
    }

    /// <summary>Captures a new snapshot if the last one is outdated.</summary>
    public void CaptureIfChanged()
    {
        if (!_isCaptured) Capture();
    }

    /// <summary>Publishes an event with a snapshot of its instant.</summary>
    /// <param name="kind">Kind of event.</param>
    /// <param name="value">Value that goes with the kind; see <see cref="EventKind"/>.</param>
    /// <param name="place">Index of the cylinder or node.</param>
    public void Publish(EventKind kind, double value, int place = 0)
    {
        CaptureIfChanged();
        Observer.Happened(new SimulationEvent(_time_s, kind, value, place), record.Now);
    }

    /// <summary>Delivery pressure now. [Pa gauge]</summary>
    public double Delivery_Pa() => plant.Supply.Delivery_Pa(stepper.AlgebraicState.Point, stepper.AlgebraicState.Feed, stepper.AlgebraicState.AirPressure_Pa);

    // Written in place: it is done at every step, and a snapshot is large.
    private void Capture()
    {
        ref Snapshot now = ref record.Now;
        PlantState s = stepper.State;
        AlgebraicState algebraic = stepper.AlgebraicState;
        for (int i = 0; i < frost.Length; i++)
        {
            now.Set(i, new CylinderReading(
                s.Propane_kg[i], s.Cylinder_K[i], plant.Hottest_K(s, inputs, i), algebraic.CylinderPressure_Pa(i), frost[i].Mass_kg_m2, frost[i].Thickness_m, s.NormalButane_kg(i),
                s.Isobutane_kg(i)));
        }

        now.Time_s = _time_s;
        now.Outside_K = _sample.Air_K;
        now.Wind_m_s = _sample.Wind_m_s;
        now.Inside_K = s.Air_K;
        now.SetPoint_K = controls.Thermostat?.SetPoint_K ?? double.NaN;
        now.CylinderPressure_Pa = algebraic.FeedPressure_Pa;
        now.DeliveryPressure_Pa = _readsDelivery ? Delivery_Pa() : double.NaN;
        now.Propane_kg = s.TotalPropane_kg();
        now.InUse = plant.Manifold.InUse(algebraic.Cylinders);
        _isCaptured = true;
    }
}
