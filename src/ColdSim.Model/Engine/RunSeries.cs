using ColdSim.Model.Cylinder;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Engine;

/// <summary>The curves of a run at an even spacing of one minute, SI units, one array a curve.</summary>
/// <remarks>
/// Sample i is at <see cref="Time_s"/> after the start: at <c>i × 60 s</c> in the curves of a whole run. Levels are instantaneous; rates (<see cref="Asked_W"/>,
/// <see cref="Given_W"/>, <see cref="Burner_frac"/>) are means over the minute that ends there, so that a short burner
/// cycle is neither lost nor doubled.
/// </remarks>
public sealed class RunSeries
{
    /// <summary>Spacing of the samples. [s]</summary>
    public const double Spacing_s = 60;

    private readonly double[][] _all;
    private double[]? _canGiveNow_W;
    private double[]? _canGiveWithoutEnd_W;

    /// <summary>Makes room for a run.</summary>
    /// <param name="duration_s">Length of the run. [s]</param>
    /// <param name="cylinders">How many cylinders.</param>
    /// <param name="gasPlaces">How many places for what takes gas.</param>
    /// <param name="nodes">How many nodes beside coach and cylinders.</param>
    /// <param name="mixed">Whether there is room for what a mixed gas is made of.</param>
    /// <param name="power">Whether there is a 12 V side.</param>
    public RunSeries(double duration_s, int cylinders = 1, int gasPlaces = 1, int nodes = 0, bool mixed = false, bool power = false)
    {
        int n = (int)Math.Floor(duration_s / Spacing_s) + 1;
        Outside_K = new double[n];
        Wind_m_s = new double[n];
        Inside_K = new double[n];
        SetPoint_K = new double[n];
        Liquid_K = new double[n];
        CylinderPressure_Pa = new double[n];
        DeliveryPressure_Pa = new double[n];
        Propane_kg = new double[n];
        Asked_W = new double[n];
        Given_W = new double[n];
        HeatIntoCylinder_W = new double[n];
        Burner_frac = new double[n];
        Blanket_W = new double[n];
        InUse = new byte[n];
        Gas_W = Curves(gasPlaces, n);
        Node_K = Curves(nodes, n);
        CylinderSeries[] each = new CylinderSeries[cylinders];
        for (int i = 0; i < each.Length; i++) each[i] = new CylinderSeries(n, mixed ? n : 0);
        Cylinders = each;
        Power = power ? new PowerSeries(n) : null;
        _all =
        [
            Outside_K, Wind_m_s, Inside_K, SetPoint_K, Liquid_K, CylinderPressure_Pa, DeliveryPressure_Pa, Propane_kg, Asked_W, Given_W, HeatIntoCylinder_W,
            Burner_frac, Blanket_W, .. Gas_W, .. Node_K, .. each.SelectMany(c => c.All), .. Power?.All ?? [],
        ];
    }

    private static double[][] Curves(int count, int samples)
    {
        double[][] curves = new double[count][];
        for (int i = 0; i < count; i++) curves[i] = new double[samples];
        return curves;
    }

    /// <summary>Samples filled so far.</summary>
    public int Count { get; set; }

    /// <summary>Place in the run of the first sample here; 0 for the curves of a whole run.</summary>
    public int FirstSample { get; private set; }

    /// <summary>When a sample is, since the run's start. [s]</summary>
    /// <param name="sample">Index of the sample here.</param>
    public double Time_s(int sample) => (FirstSample + sample) * Spacing_s;

    /// <summary>Outside air. [K]</summary>
    public double[] Outside_K { get; }

    /// <summary>Wind at mast height. [m/s]</summary>
    public double[] Wind_m_s { get; }

    /// <summary>Inside air; NaN without a coach. [K]</summary>
    public double[] Inside_K { get; }

    /// <summary>Set point in force; NaN without a thermostat. [K]</summary>
    public double[] SetPoint_K { get; }

    /// <summary>Liquid and shell of the cylinder in use. [K]</summary>
    public double[] Liquid_K { get; }

    /// <summary>Pressure before the regulator. [Pa gauge]</summary>
    public double[] CylinderPressure_Pa { get; }

    /// <summary>Delivery pressure at the appliances. [Pa gauge]</summary>
    public double[] DeliveryPressure_Pa { get; }

    /// <summary>Propane left in all cylinders, liquid and vapour. [kg]</summary>
    public double[] Propane_kg { get; }

    /// <summary>Gas demand, as gross heat, mean of the minute. [W]</summary>
    public double[] Asked_W { get; }

    /// <summary>Gas supplied, as gross heat, mean of the minute. [W]</summary>
    public double[] Given_W { get; }

    /// <summary>
    /// Gas that cylinder and regulator could give at this instant at full delivery pressure, as gross heat; worked out at
    /// first use. [W]
    /// </summary>
    public double[] CanGiveNow_W => _canGiveNow_W ??= Worked(Outlook is null ? null : Outlook.CanGiveNow_W);

    /// <summary>
    /// Gas that the cylinders could give without end if this weather and fill stayed, as gross heat; worked out at first use. [W]
    /// </summary>
    public double[] CanGiveWithoutEnd_W => _canGiveWithoutEnd_W ??= Worked(Outlook is null ? null : Outlook.CanGiveWithoutEnd_W);

    /// <summary>Heat from surroundings and blankets into liquid and shell of all cylinders. [W]</summary>
    public double[] HeatIntoCylinder_W { get; }

    /// <summary>Part of the minute with the furnace lit.</summary>
    public double[] Burner_frac { get; }

    /// <summary>Power of the blankets, mean of the minute. [W]</summary>
    public double[] Blanket_W { get; }

    /// <summary>Gas that each took, as gross heat, mean of the minute: the furnace, then the appliances in their order. [W]</summary>
    public IReadOnlyList<double[]> Gas_W { get; }

    /// <summary>Temperature of each node: the appliances' in their order, then the rig's water. [K]</summary>
    public IReadOnlyList<double[]> Node_K { get; }

    /// <summary>Place of the cylinder in use.</summary>
    public byte[] InUse { get; }

    /// <summary>Each cylinder's own curves.</summary>
    public IReadOnlyList<CylinderSeries> Cylinders { get; }

    /// <summary>What supply is read off with; null leaves both supply curves at zero.</summary>
    public ISupplyOutlook? Outlook { get; init; }

    /// <summary>The 12 V side; null without a battery.</summary>
    public PowerSeries? Power { get; }

    /// <summary>Room for samples that is not filled yet.</summary>
    internal int Room => Outside_K.Length - Count;

    /// <summary>Lets go of the first samples, which makes room for as many at the end.</summary>
    /// <param name="samples">How many; no more than there are.</param>
    internal void DropFirst(int samples)
    {
        int left = Count - samples;
        foreach (double[] curve in _all)
        {
            if (curve.Length > 0) curve.AsSpan(samples, left).CopyTo(curve);
        }

        InUse.AsSpan(samples, left).CopyTo(InUse);
        (FirstSample, Count, _canGiveNow_W, _canGiveWithoutEnd_W) = (FirstSample + samples, left, null, null);
    }

    /// <summary>A copy of some of the samples, at the same times.</summary>
    /// <param name="from">Index here of the first.</param>
    /// <param name="to">Index here of the last; the last that there is, where it is beyond that.</param>
    internal RunSeries Part(int from, int to)
    {
        int count = Math.Min(to, Count - 1) - from + 1;
        RunSeries part = new(
            (count - 1) * Spacing_s, Cylinders.Count, Gas_W.Count, Node_K.Count, Cylinders[0].NormalButane_kg.Length > 0, Power is not null)
        {
            FirstSample = FirstSample + from,
            Count = count,
            Outlook = Outlook,
        };
        for (int i = 0; i < _all.Length; i++)
        {
            if (_all[i].Length > 0) _all[i].AsSpan(from, count).CopyTo(part._all[i]);
        }

        InUse.AsSpan(from, count).CopyTo(part.InUse);
        return part;
    }

    private double[] Worked(Func<RunSeries, int, double>? at_W)
    {
        double[] values = new double[Outside_K.Length];
        for (int i = 0; at_W is not null && i < Count; i++) values[i] = at_W(this, i);
        return values;
    }
}

/// <summary>One cylinder's curves at the spacing of <see cref="RunSeries"/>. SI units, pressures gauge.</summary>
/// <param name="samples">Room for so many.</param>
/// <param name="mixed">Room for so many of what a mixed gas is made of.</param>
public sealed class CylinderSeries(int samples, int mixed = 0)
{
    /// <summary>Gas left. [kg]</summary>
    public double[] Propane_kg { get; } = new double[samples];

    /// <summary>Liquid and shell. [K]</summary>
    public double[] Liquid_K { get; } = new double[samples];

    /// <summary>The top of the dry wall under a blanket; the liquid without one. [K]</summary>
    public double[] Hottest_K { get; } = new double[samples];

    /// <summary>Pressure in the cylinder. [Pa gauge]</summary>
    public double[] Pressure_Pa { get; } = new double[samples];

    /// <summary>Frost on its bare wall. [kg/m²]</summary>
    public double[] FrostMass_kg_m2 { get; } = new double[samples];

    /// <summary>Depth of that frost. [m]</summary>
    public double[] FrostThickness_m { get; } = new double[samples];

    /// <summary>Of a mixed gas, the n-butane in it; empty for propane alone. [kg]</summary>
    public double[] NormalButane_kg { get; } = new double[mixed];

    /// <summary>Of a mixed gas, the isobutane in it; empty for propane alone. [kg]</summary>
    public double[] Isobutane_kg { get; } = new double[mixed];

    /// <summary>Every curve.</summary>
    internal IEnumerable<double[]> All => [Propane_kg, Liquid_K, Pressure_Pa, FrostMass_kg_m2, FrostThickness_m, NormalButane_kg, Isobutane_kg];

    /// <summary>Each species in it at a sample. [kg]</summary>
    public GasMasses Gas(int sample)
    {
        if (NormalButane_kg.Length == 0) return new GasMasses(Propane_kg[sample], 0, 0);
        double normal_kg = NormalButane_kg[sample], iso_kg = Isobutane_kg[sample];
        return new GasMasses(Math.Max(0, Propane_kg[sample] - normal_kg - iso_kg), normal_kg, iso_kg);
    }

    /// <summary>Contents of the cylinder at a sample.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="sample">Index of the sample.</param>
    public CylinderContents Contents(CylinderBody body, int sample) => Contents(body, sample, Liquid_K[sample]);

    /// <summary>Contents of the cylinder at a sample if it had another temperature.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="sample">Index of the sample.</param>
    /// <param name="t_K">That temperature. [K]</param>
    public CylinderContents Contents(CylinderBody body, int sample, double t_K)
    {
        ArgumentNullException.ThrowIfNull(body);
        return NormalButane_kg.Length == 0 ? body.Contents(Propane_kg[sample], t_K) : body.Contents(Gas(sample), t_K);
    }
}

/// <summary>The curves of the 12 V side, sampled as those of <see cref="RunSeries"/>: charge is a level, the rest are means of the minute before.</summary>
/// <param name="samples">How many samples.</param>
public sealed class PowerSeries(int samples)
{
    /// <summary>Charge, per rated.</summary>
    public double[] Charge_frac { get; } = new double[samples];

    /// <summary>Power of all loads. [W]</summary>
    public double[] Drawn_W { get; } = new double[samples];

    /// <summary>Power from the solar panels. [W]</summary>
    public double[] Solar_W { get; } = new double[samples];

    /// <summary>Power from shore power through the converter. [W]</summary>
    public double[] Shore_W { get; } = new double[samples];

    /// <summary>Power from the generator through the converter. [W]</summary>
    public double[] Generator_W { get; } = new double[samples];

    /// <summary>Every curve.</summary>
    internal IEnumerable<double[]> All => [Charge_frac, Drawn_W, Solar_W, Shore_W, Generator_W];

    /// <summary>Power from all sources. [W]</summary>
    public double[] Given_W()
    {
        double[] given_W = new double[samples];
        for (int i = 0; i < samples; i++) given_W[i] = Solar_W[i] + Shore_W[i] + Generator_W[i];
        return given_W;
    }
}
