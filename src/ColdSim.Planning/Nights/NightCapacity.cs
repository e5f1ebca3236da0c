using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Planning.Capacity;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>What the cylinders of a run could have given in one of its nights, for a time, each worked out by running it when it is first asked for.</summary>
/// <remarks>
/// A constant draw takes the place of all burners, from the state in which the run has the cylinders at that instant: contents, liquid, frost. It ends where the regulator
/// no longer passes it at the delivery pressure that the most demanding burner needs.
/// </remarks>
public sealed class NightCapacity
{
    /// <summary>The span that is shown beside what could be given without end. [s]</summary>
    public const double Span_s = 4 * 3600;

    private const double LeastGuess_W = 100;

    private readonly Lazy<Power?> _forSpan, _forNight;

    /// <summary>The capacities of a night.</summary>
    /// <param name="scenario">The run's scenario.</param>
    /// <param name="legs">Its legs.</param>
    /// <param name="series">Curves with the night.</param>
    /// <param name="low">The sample of the coldest hour.</param>
    /// <param name="evening">The night's evening.</param>
    internal NightCapacity(Scenario scenario, IReadOnlyList<Leg> legs, RunSeries series, int low, DateOnly evening)
    {
        _forSpan = From(scenario, legs, series, low, Span_s);
        DateTimeOffset dusk = new(evening.ToDateTime(Dusk), scenario.Start.Offset);
        DateTimeOffset dawn = new(evening.AddDays(1).ToDateTime(scenario.Criteria.Dawn), scenario.Start.Offset);
        if (dusk < scenario.Start) dusk = scenario.Start;
        int from = (int)Math.Round((dusk - scenario.Start).TotalSeconds / RunSeries.Spacing_s) - series.FirstSample;
        _forNight = From(scenario, legs, series, from, (dawn - dusk).TotalSeconds);
    }

    /// <summary>When a night begins, for what can be given all of it.</summary>
    public static TimeOnly Dusk { get; } = new(16, 0);

    /// <summary>From the coldest hour on for 4 h; null where the weather or the stop ends before.</summary>
    public Power? ForSpanAtLow => _forSpan.Value;

    /// <summary>From 16:00, or from the run's start if that is later, to dawn; null where the weather or the stop ends before.</summary>
    public Power? ForNight => _forNight.Value;

    // Only the state at the sample is kept, not the curves.
    private static Lazy<Power?> From(Scenario scenario, IReadOnlyList<Leg> legs, RunSeries series, int sample, double time_s)
    {
        DateTimeOffset start = scenario.Start.AddSeconds(series.Time_s(sample)), end = start.AddSeconds(time_s);
        if (sample >= series.Count || !(time_s > 0) || LegOver(legs, start, end) is not { } leg) return new((Power?)null);
        RigState state = StateAt(series, sample);
        double guess_W = Guess_W(series, sample, time_s, scenario.Rig);
        return new(() => Largest(scenario.Rig, leg, start, state, time_s, guess_W));
    }

    private static Power? Largest(Rig rig, Leg leg, DateTimeOffset start, RigState state, double time_s, double guess_W)
    {
        Rig there = leg.Of(rig);
        DrawConditions conditions = new()
        {
            Rig = there,
            Weather = leg.Weather,
            Start = start,
            From = state,
            Delivery_Pa = Delivery_Pa(there),
        };
        LastingDraw draw = LastingDraw.For(conditions, time_s, guess_W);
        if (draw.Ledger is { Closes: false } open) throw new LedgerOpenException(open);
        return Power.FromWatts(draw.Draw_W);
    }

    private static Leg? LegOver(IReadOnlyList<Leg> legs, DateTimeOffset start, DateTimeOffset end)
    {
        foreach (Leg leg in legs)
        {
            if (start >= leg.From && start < leg.To) return leg.OnTheRoad || end > leg.To || end > leg.Weather.Last ? null : leg;
        }

        return null;
    }

    private static RigState StateAt(RunSeries series, int sample)
    {
        CylinderState[] cylinders = new CylinderState[series.Cylinders.Count];
        for (int i = 0; i < cylinders.Length; i++)
        {
            CylinderSeries one = series.Cylinders[i];
            cylinders[i] = new CylinderState(one.Propane_kg[sample], one.Liquid_K[sample], new FrostLayer(one.FrostMass_kg_m2[sample], one.FrostThickness_m[sample]))
            {
                Composition = one.NormalButane_kg.Length == 0 ? null : one.Gas(sample).Parts(),
            };
        }

        return new RigState(cylinders, series.InUse[sample], double.NaN, double.NaN);
    }

    private static double Delivery_Pa(Rig rig)
    {
        double most_Pa = rig.Furnace?.FullPressure_Pa ?? 0;
        foreach (GasAppliance appliance in rig.Appliances) most_Pa = Math.Max(most_Pa, appliance.FullPressure_Pa);
        return most_Pa > 0 ? most_Pa : DrawConditions.UsualDelivery_Pa;
    }

    private static double Guess_W(RunSeries series, int sample, double time_s, Rig rig)
        => Math.Min(Math.Max(series.Outlook?.CanGiveWithoutEnd_W(series, sample) ?? 0, LeastGuess_W), 0.9 * series.Propane_kg[sample] * rig.Gas.HeatingValue_J_kg / time_s);
}
