using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Gas;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Engine;

/// <summary>Capacity of cylinders and regulator at the samples of a finished run, instantaneous and steady.</summary>
/// <remarks>Worked out after the run, for the samples that are used, so that the step loop does not pay for it.</remarks>
internal sealed class SupplyOutlook : ISupplyOutlook
{
    private readonly Plant _plant;
    private readonly WeatherSeries _weather;
    private readonly double _weatherStart_s;
    private readonly double _delivery_Pa;
    private readonly double _allowedLiquid_K;
    private readonly double _demand_kg_s;
    private readonly GasSpecification _gas;
    private readonly RunClock _clock;
    private readonly BlanketControl?[] _blankets;
    private readonly EnclosureOutlook _enclosure;
    private readonly double[] _blanket_W;

    /// <summary>The outlook of a rig in a weather.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="start">The run's first instant.</param>
    public SupplyOutlook(Rig rig, WeatherSeries weather, DateTimeOffset start)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(weather);
        _plant = new Plant(rig);
        _gas = rig.Gas;
        _weather = weather;
        _clock = new RunClock(start, []);
        _blankets = [.. rig.Cylinders.Select(c => c.Blanket is null ? null : new BlanketControl(c.Blanket, rig.Site.Hookup))];
        _enclosure = new EnclosureOutlook(rig);
        _blanket_W = new double[rig.Cylinders.Count];
        _weatherStart_s = (start - weather.First).TotalSeconds;
        foreach (GasLoad load in _plant.Loads)
        {
            _demand_kg_s += load.Full_kg_s;
            _delivery_Pa = Math.Max(_delivery_Pa, load.FullPressure_Pa);
        }

        int row = 0;
        double air_Pa = weather.At(_weatherStart_s, ref row).Pressure_Pa;
        _allowedLiquid_K = SteadySupply.AllowedLiquid_K(_plant.Regulator, _demand_kg_s, _delivery_Pa, air_Pa);
    }

    /// <inheritdoc/>
    public double AllowedLiquid_K(RunSeries series, int sample)
    {
        ArgumentNullException.ThrowIfNull(series);
        if (!_gas.IsMixed) return _allowedLiquid_K;
        int use = series.InUse[sample];
        return SteadySupply.AllowedLiquid_K(
            Needed_Pa(series, sample, series.Liquid_K[sample]), series.Cylinders[use].Gas(sample), _plant.Cylinders[use].Specification.Volume_m3);
    }

    /// <inheritdoc/>
    public double CanGiveNow_W(RunSeries series, int sample)
    {
        ArgumentNullException.ThrowIfNull(series);
        double air_Pa = WeatherAt(series, sample).Pressure_Pa;
        double reserve_Pa = _plant.Manifold is ChangeoverManifold
            ? series.Cylinders[ChangeoverManifold.Reserve].Pressure_Pa[sample] + air_Pa
            : 0;
        FeedPressures feed = new(series.CylinderPressure_Pa[sample] + air_Pa, reserve_Pa, series.Liquid_K[sample]);
        double propane_W = _plant.HeatingValue_J_kg * _plant.Regulator.Flow_kg_s(_delivery_Pa, feed, air_Pa);
        if (!_gas.IsMixed) return propane_W;
        GasMasses vapour = Vapour(series, sample, series.InUse[sample], series.Liquid_K[sample]);
        return propane_W * GasBlend.Flow_factor(vapour) * Heat_J_kg(vapour) / _plant.HeatingValue_J_kg;
    }

    /// <inheritdoc/>
    public double CanGiveWithoutEnd_W(RunSeries series, int sample)
    {
        ArgumentNullException.ThrowIfNull(series);
        double allowed_K = AllowedLiquid_K(series, sample);
        if (double.IsNaN(allowed_K)) return 0;
        WeatherSample weather = WeatherAt(series, sample);
        bool all = _plant.Manifold is not OneOpenManifold;
        for (int i = 0; i < _blanket_W.Length; i++)
        {
            double liquid_K = all || i == series.InUse[sample] ? allowed_K : series.Cylinders[i].Liquid_K[sample];
            _blanket_W[i] = BlanketPower_W(i, liquid_K, series.Time_s(sample));
        }

        WeatherSample within = _enclosure.Within(weather, series, sample, allowed_K, all, _blanket_W);
        double propane_kg_s = 0;
        for (int i = 0; i < series.Cylinders.Count; i++)
        {
            bool open = all || i == series.InUse[sample];
            if (!open) continue;
            CylinderSeries cylinder = series.Cylinders[i];
            FrostLayer frost = new(cylinder.FrostMass_kg_m2[sample], cylinder.FrostThickness_m[sample]);
            double draw_kg_s = SteadySupply.Draw_kg_s(
                _plant.Cylinders[i], _plant.Cylinders[i].Specification.IsEnclosed ? within : weather, cylinder.Contents(_plant.Cylinders[i], sample, allowed_K), allowed_K,
                _blanket_W[i], frost);
            propane_kg_s += _gas.IsMixed ? draw_kg_s * Heat_J_kg(Vapour(series, sample, i, allowed_K)) / _plant.HeatingValue_J_kg : draw_kg_s;
        }

        return _plant.HeatingValue_J_kg * propane_kg_s;
    }

    /// <inheritdoc/>
    public double LeftBehind_kg(RunSeries series, int sample, int cylinder, double t_K)
    {
        ArgumentNullException.ThrowIfNull(series);
        double needed_Pa = Needed_Pa(series, sample, t_K);
        return double.IsFinite(needed_Pa)
            ? MixedContents.LeftBehind_kg(series.Cylinders[cylinder].Gas(sample), _plant.Cylinders[cylinder].Specification.Volume_m3, t_K, needed_Pa)
            : double.NaN;
    }

    // Before the regulator, to feed every appliance in full; the same for any gas, since all holes pass as much more of a heavier one.
    private double Needed_Pa(RunSeries series, int sample, double gas_K)
        => _plant.Regulator.SufficientInlet_Pa(_demand_kg_s, _delivery_Pa, WeatherAt(series, sample).Pressure_Pa, gas_K);

    private GasMasses Vapour(RunSeries series, int sample, int cylinder, double t_K)
        => MixedContents.Of(series.Cylinders[cylinder].Gas(sample), _plant.Cylinders[cylinder].Specification.Volume_m3, t_K).Vapour;

    private double Heat_J_kg(in GasMasses vapour) => _gas.Heat_factor * GasBlend.Heat_J(vapour);

    // Liquid at the allowed temperature calls for a blanket that switches on above it, in the hours in which it has power.
    private double BlanketPower_W(int cylinder, double liquid_K, double time_s)
    {
        if (_blankets[cylinder] is not { } blanket) return 0;
        blanket.SetClock(_clock.At_s(time_s));
        blanket.Update(liquid_K);
        return blanket.Power_W;
    }

    private WeatherSample WeatherAt(RunSeries series, int sample)
    {
        double time_s = _weatherStart_s + series.Time_s(sample);
        int row = (int)(time_s / 3600);
        return _weather.At(time_s, ref row);
    }
}
