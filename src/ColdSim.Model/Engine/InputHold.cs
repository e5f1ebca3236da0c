using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;
using ColdSim.Physics.MoistAir;

namespace ColdSim.Model.Engine;

/// <summary>Sets the inputs that are held over a cell of the step grid, as they are in its middle.</summary>
/// <remarks>
/// They are set once for each cell, or for as many as take ten seconds, where their error over the cell is of second order. Steps that events cut
/// shorter within the cell keep them.
/// </remarks>
internal sealed class InputHold
{
    // Over so short a time the inputs change by less than their equations are good for.
    private const double Shortest_s = 10;

    // Part of the liquid that all that burns gas together could take at most while they are held over a whole cell.
    private const double MostDrawn_frac = 0.1;
    private const double LongestNearEmpty_s = 300;

    // A time on the grid is on it in spite of rounding.
    private const double OnGrid = 1e-9;

    private readonly Plant _plant;
    private readonly Stepper _stepper;
    private readonly HeldInputs _inputs;
    private readonly FrostLayer[] _frost;
    private readonly RunClock _clock;
    private readonly RunWeather _weather;
    private readonly PowerSide? _power;
    private readonly EnclosureBody? _enclosure;
    private readonly EnclosedCylinder[] _enclosed;
    private readonly WarmingTrend _trend;
    private readonly double _step_s, _length_s, _allLoads_kg_s;
    private double _middle_s;
    private double _enclosureAir_K = double.NaN;
    private bool _phaseChanged;

    /// <summary>Nothing is set yet.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="plant">The continuous equations.</param>
    /// <param name="controls">What switches.</param>
    /// <param name="stepper">Holds the state.</param>
    /// <param name="inputs">Receives the inputs.</param>
    /// <param name="frost">Frost on each cylinder; kept and changed by the caller.</param>
    /// <param name="clock">The clock on the wall.</param>
    /// <param name="weather">The weather of the run.</param>
    /// <param name="step_s">The step grid. [s]</param>
    public InputHold(
        Rig rig, Plant plant, Controls controls, Stepper stepper, HeldInputs inputs, FrostLayer[] frost, RunClock clock, RunWeather weather, double step_s)
    {
        (_plant, _stepper, _inputs, _frost, _clock, _weather, _power) = (plant, stepper, inputs, frost, clock, weather, controls.Power);
        _enclosure = rig.Enclosure is null ? null : new EnclosureBody(rig.Enclosure);
        _enclosed = new EnclosedCylinder[frost.Length];
        _trend = new WarmingTrend(frost.Length);
        _step_s = step_s;
        _length_s = step_s * Math.Max(1, Math.Floor(Shortest_s / step_s));
        _allLoads_kg_s = plant.Loads.Sum(l => l.Full_kg_s);
    }

    /// <summary>Until when they are held. [s]</summary>
    public double Until_s { get; private set; }

    /// <summary>The end of a step from a time on that crosses no cell: of the grid, or of the time for which the inputs are held. [s]</summary>
    public double CellEnd_s(double time_s) => Math.Min(GridEnd_s(time_s, _step_s), Until_s);

    /// <summary>How long after the middle of the time for which they are held; negative before it. [s]</summary>
    public double SinceMiddle_s(double time_s) => time_s - _middle_s;

    /// <summary>They are set anew from a time on. [s]</summary>
    public void EndAt(double time_s) => Until_s = Math.Min(Until_s, time_s);

    /// <summary>A cylinder's last liquid goes, or there is liquid again.</summary>
    /// <param name="time_s">Now. [s]</param>
    public void ChangePhase(double time_s) => (_phaseChanged, Until_s) = (true, time_s);

    /// <summary>Sets the inputs from a time on.</summary>
    /// <param name="time_s">Now. [s]</param>
    /// <param name="now">The weather now.</param>
    public void Set(double time_s, in WeatherSample now)
    {
        Until_s = Math.Min(GridEnd_s(time_s, Length_s()), _weather.NextRow_s(time_s));
        double half_s = 0.5 * (Until_s - time_s);
        _middle_s = time_s + half_s;
        WeatherSample middle = _weather.At(_middle_s);
        SetCylinders(time_s, half_s, middle);
        _inputs.Coach = _plant.Coach?.At(middle, _clock.At_s(time_s)) ?? default;
        _inputs.OutsideVapour_kg_m3 = Humidity.VapourDensity_kg_m3(middle.VapourPressure_Pa, middle.Air_K);
        bool isPoint = half_s <= 0;
        _inputs.OutsideDrift_K_s = isPoint ? 0 : (middle.Air_K - now.Air_K) / half_s;
        _inputs.CoachDrift = _plant.Coach is not { } coach || isPoint ? default : coach.DriftBetween(now, middle, half_s);
        _inputs.Outside_K = middle.Air_K;
        _inputs.AirPressure_Pa = middle.Pressure_Pa;
        _power?.TakeSun(middle, _weather.Instant(_middle_s));
        _stepper.Exchange();
    }

    private void SetCylinders(double time_s, double half_s, in WeatherSample middle)
    {
        PlantState present = _stepper.State, then = _stepper.Predict(half_s);
        for (int i = 0; i < _frost.Length; i++) then.Cylinder_K[i] = _trend.Ahead_K(i, time_s, present.Cylinder_K[i], then.Cylinder_K[i], half_s);
        _trend.Begin(time_s, present.Cylinder_K);

        // At the last liquid both sets of equations must see the same heat, of all cylinders that are open on it, or each would bring the
        // other back at once.
        PlantState from = _phaseChanged ? present : then;
        double ahead_s = _phaseChanged ? 0 : half_s;
        _phaseChanged = false;
        WeatherSample within = _enclosure is null ? middle : Within(_enclosure, middle, from, ahead_s);
        for (int i = 0; i < _frost.Length; i++)
        {
            double liquid_K = from.Cylinder_K[i];
            FrostLayer frost = _frost[i].After(_inputs.Cylinders[i], ahead_s);
            CylinderBody body = _plant.Cylinders[i];
            WeatherSample around = body.Specification.IsEnclosed ? within : middle;
            if (_inputs.HasLiquid[i])
            {
                _inputs.Cylinders[i] = HeatCoupling.At(body, around, _plant.Gas.LiquidVolume_m3(from, i, liquid_K), 0, liquid_K, frost);
                continue;
            }

            _inputs.Cylinders[i] = HeatCoupling.At(body, around, 0, 0, liquid_K, frost);
            _inputs.WholeShells[i] = HeatCoupling.At(body, around, 0, 1, liquid_K, frost);
            CylinderStates cylinders = _stepper.AlgebraicState.Cylinders;
            _inputs.Unsaturated_kg[i] = HeatCoupling.Unsaturated_kg(body, cylinders.Contents[i], cylinders.Capacity_J_K[i], Apart_W(i, from, liquid_K));
        }
    }

    private static double GridEnd_s(double time_s, double length_s) => (Math.Floor(time_s / length_s + OnGrid) + 1) * length_s;

    // The less liquid there is the faster a draw takes away the wall that it wets: the inputs are then held over half a long cell, and so
    // without liquid, or they would jump at the last of it.
    private double Length_s()
    {
        if (_length_s <= LongestNearEmpty_s) return _length_s;
        double most_kg = _length_s * _allLoads_kg_s / MostDrawn_frac;
        foreach (ref readonly CylinderContents contents in _stepper.AlgebraicState.Cylinders.Contents.AsSpan())
        {
            if (Math.Max(0, contents.LiquidMass_kg) < most_kg) return 0.5 * _length_s;
        }

        return _length_s;
    }

    // Heat by which the whole shell and what a last drop wets differ.
    private double Apart_W(int i, PlantState at, double liquid_K)
    {
        HeatCoupling whole = _inputs.WholeShells[i], drop = _inputs.Cylinders[i];
        double apart_W = whole.DirectHeat_W(liquid_K, 0) - drop.DirectHeat_W(liquid_K, 0);
        return _plant.Cylinders[i].IsUnderBlanket
            ? Math.Abs(apart_W) + Math.Abs((whole.Wall.ToLiquid_W_K - drop.Wall.ToLiquid_W_K) * drop.Wall.Excess_K(at.Wall_J[i]))
            : apart_W;
    }

    // The weather as the cylinders in the enclosure have it, at the same instant as their heat.
    private WeatherSample Within(EnclosureBody enclosure, in WeatherSample middle, PlantState from, double ahead_s)
    {
        int count = 0;
        for (int i = 0; i < _frost.Length; i++)
        {
            CylinderBody body = _plant.Cylinders[i];
            if (!body.Specification.IsEnclosed) continue;
            double liquid_K = from.Cylinder_K[i], liquid_m3 = _inputs.HasLiquid[i] ? _plant.Gas.LiquidVolume_m3(from, i, liquid_K) : 0;
            FrostLayer frost = _frost[i].After(_inputs.Cylinders[i], ahead_s);
            _enclosed[count++] = new EnclosedCylinder(body, liquid_m3, liquid_K, frost, _inputs.Blanket_W[i], WholeShell_frac(i));
        }

        _enclosureAir_K = enclosure.Air_K(middle, _enclosed.AsSpan(0, count), from.Air_K, double.IsNaN(_enclosureAir_K) ? middle.Air_K : _enclosureAir_K);
        return EnclosureBody.Within(middle, _enclosureAir_K);
    }

    // As the heat itself goes over to the whole shell, so that the air does not jump at the last liquid.
    private double WholeShell_frac(int i)
        => _inputs.HasLiquid[i] || !(_inputs.Unsaturated_kg[i] > 0)
            ? 0
            : HeatCoupling.WholeShell_frac(_stepper.AlgebraicState.Cylinders.Contents[i], _inputs.Unsaturated_kg[i]);
}
