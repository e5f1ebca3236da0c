using System.Globalization;
using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Nodes;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>Runs a scenario up to an instant, and from there on without its furnace.</summary>
internal static class CoolDownRun
{
    /// <summary>How far ahead is looked at most. [s]</summary>
    public const double LongestWatch_s = 14 * 86_400;

    /// <summary>Whether a run reaches an instant, with weather after it.</summary>
    /// <param name="scenario">The run.</param>
    /// <param name="at">The instant.</param>
    public static bool Reaches(Scenario scenario, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return LegAt(NightRun.LegsOf(scenario with { HeatStops = null }), at) is not null;
    }

    /// <summary>What happens when the furnace stops.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="at">When it stops; within the run and before the end of its weather.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="TimeOutsideRunException">An instant outside the run.</exception>
    /// <exception cref="CannotRunException">The run ends before that instant.</exception>
    /// <exception cref="LedgerOpenException">The ledger of either part does not close.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static CoolDown At(Scenario scenario, DateTimeOffset at, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        IReadOnlyList<Leg> legs = NightRun.LegsOf(scenario with { HeatStops = null });
        Leg last = LegAt(legs, at) ?? throw new TimeOutsideRunException(at);
        LegRun before = new(scenario, new NightWatch(scenario, new NightCalendar(scenario), UnwatchedRun.Only, RunDetail.Nights));
        foreach (Leg leg in legs)
        {
            bool reaches = leg.To >= at;
            if (leg.From >= at || !before.Go(reaches ? leg with { To = at } : leg, cancel) || reaches) break;
        }

        if (before.State is not null && !before.Ledger.Closes) throw new LedgerOpenException(before.Ledger);
        if (before.Ended < at) throw new CannotRunException(EndsBefore(before.End, before.Ended.Value, at));
        return After(scenario, last, at, before.State, cancel);
    }

    private static string EndsBefore(RunEnd end, DateTimeOffset ended, DateTimeOffset at) => string.Create(
        CultureInfo.InvariantCulture,
        $"The run ends at {ended:yyyy-MM-dd'T'HH:mm}, before {at:yyyy-MM-dd'T'HH:mm}: {(end == RunEnd.LiquidFull ? "liquid fills a cylinder" : end == RunEnd.ReliefPressure ? "a cylinder's relief valve would open" : "the weather ends")}.");

    private static Leg? LegAt(IReadOnlyList<Leg> legs, DateTimeOffset at) => legs.FirstOrDefault(l => at >= l.From && at < l.To && at < l.Weather.Last);

    private static CoolDown After(Scenario scenario, Leg leg, DateTimeOffset at, RigState? state, CancellationToken cancel)
    {
        Rig rig = leg.Of(scenario.Rig) with { Furnace = null };
        (Watch watch, SimulationResult result) = Run(scenario, rig, leg, at, state, cancel);
        CoolDown own = new()
        {
            At = at,
            Outside = Temperature.FromKelvins(watch.First.Outside_K),
            Inside = rig.Coach is null ? null : Temperature.FromKelvins(watch.First.Inside_K),
            FiftyAfter = Span(watch.Fifty_s),
            FreezingAfter = Span(watch.Freezing_s),
            Water = watch.Water(),
            Watched = Duration.FromSeconds(result.Ended_s),
        };
        if (rig.Coach is null) return own;
        double[] fifty_s = new double[StorageUncertainty.Corners.Count], freezing_s = new double[fifty_s.Length];
        for (int i = 0; i < fifty_s.Length; i++)
        {
            Rig other = rig with { Coach = StorageUncertainty.At(rig.Coach, StorageUncertainty.Corners[i]) };
            (Watch of, _) = Run(scenario, other, leg, at, state, cancel);
            (fifty_s[i], freezing_s[i]) = (of.Fifty_s, of.Freezing_s);
        }

        return own.Over(fifty_s, freezing_s);
    }

    private static (Watch Watch, SimulationResult Result) Run(
        Scenario scenario, Rig rig, Leg leg, DateTimeOffset at, RigState? state, CancellationToken cancel)
    {
        Simulation simulation = new(rig, leg.Weather, new SimulationSettings
        {
            Start = at,
            Duration_s = Math.Min(LongestWatch_s, (leg.Weather.Last - at).TotalSeconds),
            Step_s = scenario.Step_s,
            Undersupplied_frac = scenario.Criteria.Undersupplied.DecimalFractions,
            From = state,
        });
        Watch watch = new(rig);
        SimulationResult result = simulation.Run(watch, cancel);
        return result.Ledger.Closes ? (watch, result) : throw new LedgerOpenException(result.Ledger);
    }

    private static Duration? Span(double time_s) => double.IsNaN(time_s) ? null : Duration.FromSeconds(time_s);

    // Water from the events, which are located; the air from the steps, which are short.
    private sealed class Watch : IRunObserver
    {
        private readonly IReadOnlyList<ThermalNode> _nodes;
        private readonly double[] _begins_s, _solid_s;
        private bool _begun;

        public bool ReadsDelivery => false;

        public Watch(Rig rig)
        {
            _nodes = rig.Nodes();
            _begins_s = new double[_nodes.Count];
            _solid_s = new double[_nodes.Count];
            Array.Fill(_begins_s, double.NaN);
            Array.Fill(_solid_s, double.NaN);
        }

        public Snapshot First { get; private set; }

        public double Fifty_s { get; private set; } = double.NaN;

        public double Freezing_s { get; private set; } = double.NaN;

        public void Stepped(StepRecord record)
        {
            if (!_begun) Begin(record);
            Fifty_s = Passed_s(Fifty_s, CoolDown.Fifty_K, record);
            Freezing_s = Passed_s(Freezing_s, CoolDown.Freezing_K, record);
        }

        public void Happened(in SimulationEvent happened, in Snapshot moment)
        {
            if (happened.Kind is not (EventKind.WaterFreezes or EventKind.WaterSolid)) return;
            double[] times_s = happened.Kind == EventKind.WaterFreezes ? _begins_s : _solid_s;
            if (double.IsNaN(times_s[happened.Cylinder])) times_s[happened.Cylinder] = happened.Time_s;
        }

        public IReadOnlyList<WaterAfter> Water()
            => [.. Enumerable.Range(0, _nodes.Count).Where(i => _nodes[i].Water_kg > 0)
                .Select(i => new WaterAfter(_nodes[i].Name, Span(_begins_s[i]), Span(_solid_s[i])))];

        // Water that is ice already when the furnace stops raises no event.
        private void Begin(StepRecord record)
        {
            _begun = true;
            First = record.From;
            for (int i = 0; i < _nodes.Count; i++)
            {
                if (record.Ice_frac[i] > 0 && double.IsNaN(_begins_s[i])) _begins_s[i] = 0;
                if (record.Ice_frac[i] >= 1 && double.IsNaN(_solid_s[i])) _solid_s[i] = 0;
            }
        }

        private static double Passed_s(double before_s, double level_K, StepRecord record)
        {
            double from_K = record.From.Inside_K, to_K = record.To.Inside_K;
            if (!double.IsNaN(before_s) || !(to_K <= level_K)) return before_s;
            return from_K <= level_K
                ? record.From.Time_s
                : record.From.Time_s + (from_K - level_K) / (from_K - to_K) * (record.To.Time_s - record.From.Time_s);
        }
    }
}
