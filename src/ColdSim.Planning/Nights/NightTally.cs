using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Nights;

/// <summary>Counts over one night while the run goes through it. SI units.</summary>
/// <param name="rig">The rig.</param>
/// <param name="consumers">Counts who drew what gas, and how cold the water became.</param>
/// <param name="from_s">When the night begins. [s]</param>
internal sealed class NightTally(Rig rig, GasConsumerTally consumers, double from_s)
{
    private readonly int _cylinders = rig.Cylinders.Count;
    private readonly bool _isChangeover = rig.Arrangement is AutomaticChangeover;
    private readonly double _minimumInlet_Pa = rig.MinimumInlet_Pa;
    private CylinderReadings _eachAtEnd;
    private bool _wasShort;

    public GasConsumerTally Consumers { get; } = consumers;

    /// <summary>The 12 V side; null without a battery.</summary>
    public PowerTally? Power { get; } = rig.Power is { } power ? new PowerTally(power) : null;

    /// <summary>What harms the people and the water.</summary>
    public HarmTally Harm { get; } = new() { From_s = from_s };

    public double From_s { get; } = from_s;

    public double To_s { get; set; }

    public double OutsideLow_K { get; private set; } = double.PositiveInfinity;

    public double OutsideLowAt_s { get; private set; }

    public double InsideLow_K { get; private set; } = double.PositiveInfinity;

    public double InsideLowAt_s { get; private set; }

    public double LiquidLow_K { get; private set; } = double.PositiveInfinity;

    public double CylinderPressureLow_Pa { get; private set; } = double.PositiveInfinity;

    public double DeliveryLow_Pa { get; private set; } = double.PositiveInfinity;

    public double Burner_s { get; private set; }

    public int BurnerStarts { get; private set; }

    public double PropaneAtStart_kg { get; private set; } = double.NaN;

    public double PropaneAtEnd_kg { get; private set; } = double.NaN;

    public double PropaneAtDawn_kg { get; set; } = double.NaN;

    public CylinderReadings EachAtDawn { get; set; }

    public CylinderReadings EachAtStart { get; private set; }

    public CylinderReadings EachAtEnd => _eachAtEnd;

    public double Used_kg { get; private set; }

    public double Blanket_J { get; private set; }

    /// <summary>Heat of the heaters beside the furnace. [J]</summary>
    public double OtherHeat_J { get; private set; }

    public double Hottest_K { get; private set; }

    public double Damp_s { get; private set; }

    public int CylinderChanges { get; private set; }

    public int ReserveStarts { get; private set; }

    public double PropaneAtFirstShort_kg { get; private set; }

    public double LiquidAtFirstShort_K { get; private set; }

    public double CylinderPressureAtFirstShort_Pa { get; private set; }

    /// <summary>How long gas flowed with less than the regulator's least inlet pressure before it. [s]</summary>
    public double BelowMinimumInlet_s { get; private set; }

    public double FirstLockout_s { get; private set; } = double.NaN;

    public int Lockouts { get; private set; }

    public double LiquidGone_s { get; private set; } = double.NaN;

    public double CylinderHot_s { get; private set; } = double.NaN;

    public int HotCylinder { get; private set; }

    public double Freezing_s { get; private set; } = double.NaN;

    /// <summary>Adds a step, or the part of one that lies in this night.</summary>
    public void Add(StepRecord record)
    {
        double step_s = record.To.Time_s - record.From.Time_s;
        if (double.IsNaN(PropaneAtStart_kg))
        {
            EachAtStart = record.From.Cylinders;
            Begin(record.From);
        }

        See(record.To);
        PropaneAtEnd_kg = record.To.Propane_kg;
        for (int i = 0; i < _cylinders; i++) _eachAtEnd[i] = record.To.Cylinder(i);
        Used_kg += record.From.Propane_kg - record.To.Propane_kg;
        Blanket_J += record.Blanket_W * step_s;
        OtherHeat_J += record.OtherHeat_W * step_s;
        To_s = record.To.Time_s;
        Consumers.Add(record, step_s);
        if (record.BurnerLit) Burner_s += step_s;
        if (record.DampSettles) Damp_s += step_s;
        if (record.Power is { } use) Power?.Add(use, record.From, record.To.Time_s);
        if (record.Given_W > 0 && Inlet_Pa(record.To) < _minimumInlet_Pa) BelowMinimumInlet_s += step_s;
        if (record.Asked_W > 0) DeliveryLow_Pa = Math.Min(DeliveryLow_Pa, record.To.DeliveryPressure_Pa);
        if (!record.Undersupplied || _wasShort) return;
        _wasShort = true;
        PropaneAtFirstShort_kg = record.From.Propane_kg;
        LiquidAtFirstShort_K = record.From.Liquid_K;
        CylinderPressureAtFirstShort_Pa = record.From.CylinderPressure_Pa;
    }

    /// <summary>Counts an event that the night's report contains.</summary>
    public void Count(in SimulationEvent happened, double time_s)
    {
        switch (happened.Kind)
        {
            case EventKind.BurnerOn:
                BurnerStarts++;
                break;
            case EventKind.Lockout:
                if (Lockouts++ == 0) FirstLockout_s = time_s;
                break;
            case EventKind.LiquidGone when double.IsNaN(LiquidGone_s):
                LiquidGone_s = time_s;
                break;
            case EventKind.CylinderHot when double.IsNaN(CylinderHot_s):
                (CylinderHot_s, HotCylinder) = (time_s, happened.Cylinder);
                break;
            case EventKind.CylinderChanged:
                CylinderChanges++;
                break;
            case EventKind.ReserveFeeds:
                ReserveStarts++;
                break;
            case EventKind.InsideFreezing when double.IsNaN(Freezing_s):
                Freezing_s = time_s;
                break;
        }
    }

    // The regulator is fed by the higher side of a changeover.
    private double Inlet_Pa(in Snapshot m) => _isChangeover ? Math.Max(m.Cylinder(0).Pressure_Pa, m.Cylinder(1).Pressure_Pa) : m.CylinderPressure_Pa;

    private void Begin(in Snapshot m)
    {
        PropaneAtStart_kg = m.Propane_kg;
        See(m);
    }

    private void See(in Snapshot m)
    {
        if (m.Outside_K < OutsideLow_K) (OutsideLow_K, OutsideLowAt_s) = (m.Outside_K, m.Time_s);
        if (m.Inside_K < InsideLow_K) (InsideLow_K, InsideLowAt_s) = (m.Inside_K, m.Time_s);
        LiquidLow_K = Math.Min(LiquidLow_K, m.Liquid_K);
        for (int i = 0; i < _cylinders; i++) Hottest_K = Math.Max(Hottest_K, m.Cylinder(i).Hottest_K);
        CylinderPressureLow_Pa = Math.Min(CylinderPressureLow_Pa, m.CylinderPressure_Pa);
    }
}
