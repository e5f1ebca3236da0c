using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Nodes;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>Counts over one night who drew what gas, who was short of it, and how cold the water became. SI units.</summary>
internal sealed class GasConsumerTally(Rig rig)
{
    private readonly double[] _gas_J = new double[rig.GasPlaces];
    private readonly bool[] _short = new bool[rig.GasPlaces];
    private readonly IReadOnlyList<ThermalNode> _nodes = rig.Nodes();
    private readonly double[] _low_K = Filled(rig, double.PositiveInfinity);
    private readonly double[] _ice_frac = Filled(rig, 0);
    private readonly double[] _freezes_s = Filled(rig, double.NaN);
    private readonly double[] _solid_s = Filled(rig, double.NaN);

    /// <summary>Adds a step.</summary>
    public void Add(StepRecord record, double step_s)
    {
        for (int i = 0; i < _gas_J.Length; i++)
        {
            _gas_J[i] += record.Gas_W[i] * step_s;
            _short[i] |= record.IsShort[i];
        }

        for (int i = 0; i < _low_K.Length; i++)
        {
            _low_K[i] = Math.Min(_low_K[i], record.Node_K[i]);
            _ice_frac[i] = Math.Max(_ice_frac[i], record.Ice_frac[i]);
        }
    }

    /// <summary>Adds an event of a node's water.</summary>
    public void Happened(EventKind kind, int node, double time_s)
    {
        if (kind == EventKind.WaterFreezes && double.IsNaN(_freezes_s[node])) _freezes_s[node] = time_s;
        if (kind == EventKind.WaterSolid && double.IsNaN(_solid_s[node])) _solid_s[node] = time_s;
    }

    /// <summary>What each that can take gas took; empty where nothing can.</summary>
    public IReadOnlyList<ApplianceGas> Gas()
    {
        double whole_J = 0;
        foreach (double gas_J in _gas_J) whole_J += gas_J;
        int first = rig.Furnace is null ? 1 : 0;
        ApplianceGas[] each = new ApplianceGas[rig.GasPlaces - first];
        for (int i = 0; i < each.Length; i++)
        {
            double gas_J = _gas_J[first + i];
            each[i] = new ApplianceGas(
                rig.GasConsumerOf(first + i), Mass.FromKilograms(gas_J / rig.Gas.HeatingValue_J_kg), Ratio.FromDecimalFractions(whole_J > 0 ? gas_J / whole_J : 0));
        }

        return each;
    }

    /// <summary>Of those that were short, the one whose flame needs the highest pressure; null where none was.</summary>
    public string? FirstToStarve()
    {
        int first = -1;
        for (int i = 0; i < _short.Length; i++)
        {
            if (_short[i] && (first < 0 || rig.MinimumPressureOf_Pa(i) > rig.MinimumPressureOf_Pa(first))) first = i;
        }

        return first < 0 ? null : rig.GasConsumerOf(first);
    }

    /// <summary>How the rig's bays, pipes and tanks fared; empty where nothing was run.</summary>
    /// <param name="at">The instant of a time since the run's start.</param>
    public IReadOnlyList<WaterReport> Water(Func<double, DateTimeOffset?> at)
    {
        int first = _nodes.Count - rig.Water.Count;
        return
        [
            .. Enumerable.Range(first, rig.Water.Count).Where(i => double.IsFinite(_low_K[i])).Select(i => new WaterReport(
                _nodes[i].Name, Temperature.FromKelvins(_low_K[i]), Ratio.FromDecimalFractions(_ice_frac[i]), at(_freezes_s[i]), at(_solid_s[i]))
            {
                HoldsWater = _nodes[i].Water_kg > 0,
                Heated = WaterReport.IsHeated(rig, i - first),
            }),
        ];
    }

    private static double[] Filled(Rig rig, double value)
    {
        double[] values = new double[rig.Nodes().Count];
        values.AsSpan().Fill(value);
        return values;
    }
}
