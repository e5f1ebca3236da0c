using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Thermostat;
using ColdSim.Model.Weather;
using ColdSim.Planning.Sensitivity;
using ColdSim.Planning.Trips;
using static ColdSim.Planning.Ensemble.CounterRandom;

namespace ColdSim.Planning.Ensemble;

/// <summary>Makes the members of one scenario, one after the other; belongs to one thread.</summary>
internal interface IMemberMaker
{
    /// <summary>A member, which is valid until the next call.</summary>
    /// <param name="member">Its place, from 0.</param>
    /// <param name="drawn">Takes what was drawn for each <see cref="Uncertainty"/>.</param>
    Scenario Of(int member, Span<double> drawn);
}

/// <summary>A scenario with its forecast, rig, reading and habits each a little other than it says.</summary>
internal sealed class ForecastMembers : IMemberMaker
{
    // Half the air of a coach of 30 m³ goes out and as much comes in: 15 m³ of 1.3 kg/m³ and 1006 J/(kg·K). An assumption.
    private const double DoorOpening_J_K = 15 * 1.3 * 1006;
    private const double Day_s = 86_400;

    private readonly Scenario _scenario;
    private readonly ErrorSizes _errors;
    private readonly int _seed;
    private readonly ErrorGrid _grid;
    private readonly IReadOnlyList<WeatherSeries> _weathers;
    private readonly ShiftedWeather[] _shifted;
    private readonly double[] _warmer_K;
    private readonly double[] _windLog;

    public ForecastMembers(Scenario scenario, int seed)
    {
        (_scenario, _errors, _seed) = (scenario, scenario.Errors, seed);
        IEnumerable<WeatherSeries> stops = scenario.Trip?.Stops.Select(s => s.Weather) ?? [];
        _weathers = [.. stops.Prepend(scenario.Weather).Distinct()];
        _grid = new ErrorGrid(_weathers, scenario.Start, scenario.Start.AddSeconds(new NightCalendar(scenario).Duration_s), _errors);
        _shifted = [.. _weathers.Select(w => new ShiftedWeather(w))];
        (_warmer_K, _windLog) = (new double[_grid.Count], new double[_grid.Count]);
    }

    /// <inheritdoc/>
    public Scenario Of(int member, Span<double> drawn)
    {
        CounterRandom numbers = CounterRandom.Of(_seed, member);
        DrawWeather(numbers, drawn);
        Rig rig = DrawRig(numbers, drawn);
        Scenario made = _scenario with { Rig = rig, Weather = Shifted(_scenario.Weather) };
        if (_scenario.Trip is not { } trip) return made;
        Trip moved = trip with { Stops = [.. trip.Stops.Select(s => s with { Weather = Shifted(s.Weather) })] };
        return made with { Trip = moved, Legs = TripLegs.Of(moved, rig.Cylinders) };
    }

    private WeatherSeries Shifted(WeatherSeries weather)
    {
        for (int i = 0; i < _weathers.Count; i++)
        {
            if (ReferenceEquals(_weathers[i], weather)) return _shifted[i].Series;
        }

        return weather;
    }

    private void DrawWeather(in CounterRandom numbers, Span<double> drawn)
    {
        _grid.Temperature(numbers, numbers.TailScale(_errors.Tail.Value), _warmer_K);
        _grid.Wind(numbers, _errors.Wind.Value, _windLog);
        drawn[(int)Uncertainty.Temperature] = Mean(_warmer_K);
        drawn[(int)Uncertainty.Wind] = Mean(_windLog);
        for (int w = 0; w < _shifted.Length; w++)
        {
            (int first, int count) = _grid.Rows[w];
            int[] places = _grid.Places[w];
            for (int i = 0; i < count; i++)
                _shifted[w].Shift(first + i, _warmer_K[places[i]], Math.Exp(_windLog[places[i]]));
        }
    }

    private Rig DrawRig(in CounterRandom numbers, Span<double> drawn)
    {
        double loss = Math.Exp(drawn[(int)Uncertainty.HeatLoss] = _errors.HeatLoss.Value * numbers.Normal(Purpose.HeatLoss));
        double leakage = Math.Exp(drawn[(int)Uncertainty.Infiltration] = _errors.Infiltration.Value * numbers.Normal(Purpose.Infiltration));
        double warmer_K = drawn[(int)Uncertainty.SetPoint] = _errors.SetPoint.Value * numbers.Normal(Purpose.SetPoint);
        double openings = drawn[(int)Uncertainty.DoorOpenings] = _errors.DoorOpenings.Value * numbers.Uniform(Purpose.DoorOpenings);
        double more_kg = 0;
        CylinderSpecification[] cylinders = [.. _scenario.Rig.Cylinders];
        for (int i = 0; i < cylinders.Length; i++)
        {
            double off_kg = _errors.Reading.Value * numbers.Normal(Purpose.Contents, i);
            more_kg += off_kg;
            cylinders[i] = InputErrors.Holding(cylinders[i], off_kg);
        }

        drawn[(int)Uncertainty.Contents] = more_kg;
        return _scenario.Rig with
        {
            Cylinders = cylinders,
            Coach = _scenario.Rig.Coach is { } coach ? Leaking(coach, loss, leakage, openings) : null,
            Thermostat = _scenario.Rig.Thermostat is { } t ? Warmer(t, warmer_K) : null,
        };
    }

    private static CoachSpecification Leaking(CoachSpecification coach, double loss, double leakage, double openings)
    {
        CoachSpecification off = InputErrors.Leaking(coach, loss, leakage);
        return openings > 0 ? off with { HeatLoss = [.. off.HeatLoss, new HeatLossItem("door openings", openings * DoorOpening_J_K / Day_s)] } : off;
    }

    private static ThermostatSpecification Warmer(ThermostatSpecification thermostat, double warmer_K) => thermostat with
    {
        DaySetPoint_K = thermostat.DaySetPoint_K + warmer_K,
        NightSetPoint_K = thermostat.NightSetPoint_K + warmer_K,
    };

    private static double Mean(double[] values)
    {
        double sum = 0;
        foreach (double value in values) sum += value;
        return sum / values.Length;
    }
}
