using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;

namespace ColdSim.Model.Engine;

/// <summary>The weather as enclosed cylinders have it at the samples of a finished run.</summary>
internal sealed class EnclosureOutlook
{
    private readonly EnclosureBody? _enclosure;
    private readonly CylinderBody[] _bodies;
    private readonly EnclosedCylinder[] _enclosed;

    /// <summary>The outlook of a rig, which may have no enclosure.</summary>
    /// <param name="rig">The rig.</param>
    public EnclosureOutlook(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        _enclosure = rig.Enclosure is null ? null : new EnclosureBody(rig.Enclosure);
        _bodies = [.. rig.Cylinders.Select(c => new CylinderBody(c))];
        _enclosed = new EnclosedCylinder[_bodies.Length];
    }

    /// <summary>The weather within at a sample; the weather itself where there is no enclosure.</summary>
    /// <param name="weather">The weather then.</param>
    /// <param name="series">The run's curves.</param>
    /// <param name="sample">Index of the sample.</param>
    /// <param name="steady_K">Temperature of the liquid of a cylinder that gives; NaN for that of the run. [K]</param>
    /// <param name="all">Whether all give, or the one in use.</param>
    /// <param name="blanket_W">Heat of each one's blanket; empty for none. [W]</param>
    public WeatherSample Within(in WeatherSample weather, RunSeries series, int sample, double steady_K, bool all, ReadOnlySpan<double> blanket_W)
    {
        ArgumentNullException.ThrowIfNull(series);
        if (_enclosure is null) return weather;
        int count = 0;
        for (int i = 0; i < _bodies.Length; i++)
        {
            if (!_bodies[i].Specification.IsEnclosed) continue;
            CylinderSeries cylinder = series.Cylinders[i];
            double t_K = !double.IsNaN(steady_K) && (all || i == series.InUse[sample]) ? steady_K : cylinder.Liquid_K[sample];
            CylinderContents contents = cylinder.Contents(_bodies[i], sample, t_K);
            _enclosed[count++] = new EnclosedCylinder(
                _bodies[i], contents.LiquidVolume_m3, t_K, new FrostLayer(cylinder.FrostMass_kg_m2[sample], cylinder.FrostThickness_m[sample]),
                i < blanket_W.Length ? blanket_W[i] : 0, HeatCoupling.WholeShell_frac(_bodies[i], contents));
        }

        return EnclosureBody.Within(weather, _enclosure.Air_K(weather, _enclosed.AsSpan(0, count), series.Inside_K[sample], weather.Air_K));
    }
}
