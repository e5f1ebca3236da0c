using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;

namespace ColdSim.Model.Engine;

/// <summary>Reads off a finished run what cylinder and regulator could have given, now and steadily.</summary>
/// <remarks>Worked out after the run, for the samples that somebody looks at, so that the step loop does not pay for it.</remarks>
public sealed class SupplyOutlook
{
    private readonly Plant _plant;
    private readonly WeatherSeries _weather;
    private readonly double _weatherStart_s;
    private readonly double _delivery_Pa;

    /// <summary>The outlook of a rig in a weather.</summary>
    /// <param name="rig">What stands there.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="start">The run's first instant.</param>
    public SupplyOutlook(Rig rig, WeatherSeries weather, DateTimeOffset start)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(weather);
        _plant = new Plant(rig);
        _weather = weather;
        _weatherStart_s = (start - weather.First).TotalSeconds;
        double asked_kg_s = 0;
        foreach (GasLoad load in _plant.Loads)
        {
            asked_kg_s += load.Full_kg_s;
            _delivery_Pa = Math.Max(_delivery_Pa, load.FullPressure_Pa);
        }

        int row = 0;
        double air_Pa = weather.At(_weatherStart_s, ref row).Pressure_Pa;
        AllowedLiquid_K = SteadySupply.AllowedLiquid_K(_plant.Regulator, asked_kg_s, _delivery_Pa, air_Pa);
    }

    /// <summary>
    /// The coldest liquid at which every appliance at once is still fed in full: the temperature that a steady supply is stated for;
    /// NaN where the regulator never passes that much. [K]
    /// </summary>
    public double AllowedLiquid_K { get; }

    /// <summary>Gas that could be given at a sample, at the delivery pressure that every appliance needs, as gross heat. [W]</summary>
    /// <param name="series">The run's curves.</param>
    /// <param name="sample">Which sample.</param>
    public double CanGiveNow_W(RunSeries series, int sample)
    {
        ArgumentNullException.ThrowIfNull(series);
        double air_Pa = WeatherAt(sample).Pressure_Pa;
        return _plant.HeatingValue_J_kg * _plant.Regulator.Flow_kg_s(
            _delivery_Pa, series.CylinderPressure_Pa[sample] + air_Pa, air_Pa, series.Liquid_K[sample]);
    }

    /// <summary>Gas that could be kept up at a sample's weather, fill and frost, as gross heat. [W]</summary>
    /// <param name="series">The run's curves.</param>
    /// <param name="sample">Which sample.</param>
    public double CanKeepGiving_W(RunSeries series, int sample)
    {
        ArgumentNullException.ThrowIfNull(series);
        if (double.IsNaN(AllowedLiquid_K)) return 0;
        FrostLayer frost = new(series.FrostMass_kg_m2[sample], series.FrostThickness_m[sample]);
        return _plant.HeatingValue_J_kg * SteadySupply.Draw_kg_s(
            _plant.Cylinder, WeatherAt(sample), series.Propane_kg[sample], AllowedLiquid_K, frost);
    }

    private WeatherSample WeatherAt(int sample)
    {
        double time_s = _weatherStart_s + sample * RunSeries.Spacing_s;
        int row = (int)(time_s / 3600);
        return _weather.At(time_s, ref row);
    }
}
