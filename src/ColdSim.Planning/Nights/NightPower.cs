using ColdSim.Model.Electrical;
using ColdSim.Model.Engine;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>What one consumer drew from the 12 V side in a night.</summary>
/// <param name="Name">Name of the consumer.</param>
/// <param name="Energy">Energy drawn.</param>
public sealed record NightDraw(string Name, Energy Energy);

/// <summary>The 12 V side of a night.</summary>
public sealed record NightPower
{
    /// <summary>Each who draws, in order: the furnace's fan, the blankets, the loads.</summary>
    public required IReadOnlyList<NightDraw> Drawn { get; init; }

    /// <summary>What the panels gave.</summary>
    public required Energy Solar { get; init; }

    /// <summary>What shore power gave through the converter.</summary>
    public required Energy Shore { get; init; }

    /// <summary>What the generator gave through the converter.</summary>
    public required Energy Generator { get; init; }

    /// <summary>How long the generator ran.</summary>
    public required Duration GeneratorTime { get; init; }

    /// <summary>Lowest charge, of the rated.</summary>
    public required Ratio ChargeLow { get; init; }

    /// <summary>When the charge was lowest.</summary>
    public required DateTimeOffset ChargeLowAt { get; init; }

    /// <summary>Charge at the last instant counted, of the rated.</summary>
    public required Ratio ChargeAtEnd { get; init; }

    /// <summary>When voltage was first gone; null where it never was.</summary>
    public required DateTimeOffset? FlatAt { get; init; }

    /// <summary>Gas left in the cylinders when voltage was first gone; null where it never was.</summary>
    public Mass? GasLeftAtFlat { get; init; }

    /// <summary>How long it was gone in all.</summary>
    public required Duration VoltageGone { get; init; }

    /// <summary>How long the bank was too cold to be charged.</summary>
    public Duration TooCold { get; init; }

    /// <summary>When the battery first froze; null where it did not.</summary>
    public DateTimeOffset? FrozenAt { get; init; }

    /// <summary>Its charge then, of the rated; null where it did not freeze.</summary>
    public Ratio? ChargeAtFrozen { get; init; }

    /// <summary>How long it was frozen in all.</summary>
    public Duration FrozenTime { get; init; }

    /// <summary>Everything drawn.</summary>
    public Energy DrawnInAll => Energy.FromJoules(Drawn.Sum(d => d.Energy.Joules));
}

/// <summary>Counts the 12 V side over one night. SI units.</summary>
/// <param name="power">What there is.</param>
internal sealed class PowerTally(PowerSpecification power)
{
    private readonly double[] _drawn_J = new double[power.Places];
    private double _tooCold_s;
    private double _solar_J, _shore_J, _generator_J, _generator_s;
    private double _low_frac = double.PositiveInfinity, _lowAt_s, _end_frac, _gasAtFlat_kg;
    private double _frozen_s = double.NaN, _chargeAtFrozen_frac, _frozenTime_s;

    /// <summary>When voltage was first gone; NaN where it never was. [s]</summary>
    public double Flat_s { get; private set; } = double.NaN;

    /// <summary>How long it was gone. [s]</summary>
    public double VoltageGone_s { get; private set; }

    public void Add(PowerUse use, in Snapshot from, double to_s)
    {
        double step_s = to_s - from.Time_s;
        for (int i = 0; i < _drawn_J.Length; i++) _drawn_J[i] += use.Load_W[i] * step_s;
        _solar_J += use.Solar_W * step_s;
        _shore_J += use.Shore_W * step_s;
        _generator_J += use.Generator_W * step_s;
        if (use.GeneratorRuns) _generator_s += step_s;
        if (use.TooCold) _tooCold_s += step_s;
        if (use.Charge_frac < _low_frac) (_low_frac, _lowAt_s) = (use.Charge_frac, to_s);
        _end_frac = use.Charge_frac;
        if (use.IsFrozen)
        {
            if (double.IsNaN(_frozen_s)) (_frozen_s, _chargeAtFrozen_frac) = (from.Time_s, use.ChargeBefore_frac);
            _frozenTime_s += step_s;
        }

        if (use.Live) return;
        if (double.IsNaN(Flat_s)) (Flat_s, _gasAtFlat_kg) = (from.Time_s, from.Propane_kg);
        VoltageGone_s += step_s;
    }

    public NightPower Report(DateTimeOffset start) => new()
    {
        Drawn = [.. _drawn_J.Select((j, i) => new NightDraw(power.NameOf(i), Energy.FromJoules(j)))],
        Solar = Energy.FromJoules(_solar_J),
        Shore = Energy.FromJoules(_shore_J),
        Generator = Energy.FromJoules(_generator_J),
        GeneratorTime = Duration.FromSeconds(_generator_s),
        ChargeLow = Ratio.FromDecimalFractions(_low_frac),
        ChargeLowAt = start.AddSeconds(_lowAt_s),
        ChargeAtEnd = Ratio.FromDecimalFractions(_end_frac),
        FlatAt = double.IsNaN(Flat_s) ? null : start.AddSeconds(Flat_s),
        GasLeftAtFlat = double.IsNaN(Flat_s) ? null : Mass.FromKilograms(_gasAtFlat_kg),
        VoltageGone = Duration.FromSeconds(VoltageGone_s),
        TooCold = Duration.FromSeconds(_tooCold_s),
        FrozenAt = double.IsNaN(_frozen_s) ? null : start.AddSeconds(_frozen_s),
        ChargeAtFrozen = double.IsNaN(_frozen_s) ? null : Ratio.FromDecimalFractions(_chargeAtFrozen_frac),
        FrozenTime = Duration.FromSeconds(_frozenTime_s),
    };
}
