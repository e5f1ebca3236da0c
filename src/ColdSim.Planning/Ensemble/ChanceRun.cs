using System.Runtime.ExceptionServices;
using ColdSim.Model.Engine;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;

namespace ColdSim.Planning.Ensemble;

/// <summary>Runs a scenario many times over and counts how often it holds; every member is a run of the whole engine.</summary>
public static class ChanceRun
{
    public const int MostMembers = 100_000;

    /// <summary>An ensemble over what may be off, by the scenario's <see cref="Scenario.Errors"/>.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="options">Tried with the same random numbers; each has its own errors.</param>
    /// <param name="members">Number of members.</param>
    /// <param name="seed">What the random numbers start from.</param>
    /// <param name="finished">Receives the number of members that are done; may be called from several threads at once.</param>
    /// <param name="workers">How many at once; null takes one for each processor. The numbers do not depend on it.</param>
    /// <param name="cancel">Stops it; what is done by then is given.</param>
    /// <exception cref="OperationCanceledException">Cancelled before the first member was done.</exception>
    /// <exception cref="CannotRunException">The rig cannot start.</exception>
    public static ChanceReport Of(
        Scenario scenario, IReadOnlyList<ComparedOption> options, int members, int seed, IProgress<int>? finished = null, int? workers = null,
        CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(members, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(members, MostMembers);
        RunReport plain = NightRun.Of(scenario, cancel);
        Work work = new(scenario, options, members, s => new ForecastMembers(s, seed), finished, cancel);
        return work.Report(plain, workers) with { Seed = seed };
    }

    /// <summary>The same days of every year in a record, the scenario otherwise as it is.</summary>
    /// <param name="scenario">The question; in one place, without refills.</param>
    /// <param name="options">Tried in the same years.</param>
    /// <param name="read">Reads the record for what the years need, as a <see cref="YearCollector"/> finds it; called once, when the days are known.</param>
    /// <param name="finished">As <see cref="Of"/>.</param>
    /// <param name="workers">As <see cref="Of"/>.</param>
    /// <param name="cancel">As <see cref="Of"/>.</param>
    /// <exception cref="OperationCanceledException">Cancelled before the first year was done.</exception>
    /// <exception cref="ArgumentException">A trip.</exception>
    /// <exception cref="CannotRunException">No year of the record covers these days, or the rig cannot start.</exception>
    public static ChanceReport OfYears(
        Scenario scenario, IReadOnlyList<ComparedOption> options, Func<RecordDays, CancellationToken, RecordYears> read,
        IProgress<int>? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(read);
        if (scenario.Trip is not null || options.Any(o => o.Scenario.Trip is not null))
            throw new ArgumentException("A record is of one place: not for a trip with stops or refills.", nameof(scenario));

        // How long it runs in each year is known only now, because a plain run may end before its nights do.
        RunReport plain = NightRun.Of(scenario, cancel);
        int nights = plain.Nights.Count;
        double duration_s = new NightCalendar(scenario with { Nights = nights }).Duration_s;
        RecordYears record = read(new RecordDays(scenario.Start, TimeSpan.FromSeconds(duration_s)), cancel);
        if (record.Years.Count == 0)
            throw new CannotRunException("No year of the record covers these days without a gap of over 3 h.");
        Work work = new(scenario with { Nights = nights }, options, record.Years.Count, s => new YearMembers(s, nights, record), finished, cancel);
        return work.Report(plain, workers) with { Years = [.. record.Years.Select(y => y.Year)], YearsLeftOut = record.LeftOut };
    }

    private sealed class Work(
        Scenario scenario, IReadOnlyList<ComparedOption> options, int members, Func<Scenario, IMemberMaker> maker, IProgress<int>? finished,
        CancellationToken cancel)
    {
        // A refill may fill a cylinder to its legal filling, whatever it holds at the start.
        private readonly FanCounter _fan = new(
            new NightCalendar(scenario).Duration_s, scenario.Rig.Cylinders.Sum(c => Math.Max(c.LegalFill_kg, c.Contents_kg)) * 1.001);

        private readonly MemberTable _table = new(members, options.Count);
        private int _next = -1;
        private int _finished;

        public ChanceReport Report(RunReport plain, int? workers)
        {
            int many = Math.Clamp(workers ?? Environment.ProcessorCount, 1, members);
            try
            {
                Parallel.For(0, many, new ParallelOptions { MaxDegreeOfParallelism = many }, _ => Go());
            }
            catch (AggregateException e)
            {
                ExceptionDispatchInfo.Throw(e.InnerExceptions[0]);
            }

            IReadOnlyList<int> done = _table.Done;
            if (done.Count == 0) cancel.ThrowIfCancellationRequested();
            return ChanceReport.Of(scenario, plain, members, _table, done, Options(done), _fan.Read());
        }

        // Each worker fetches one member at a time, so that a slow member does not hold up the others.
        private void Go()
        {
            IMemberMaker own = maker(scenario);
            IMemberMaker[] others = [.. options.Select(o => maker(o.Scenario))];
            FanWatch watch = new(_fan);
            Unwatched nobody = new();
            double[] unused = new double[Enum.GetValues<Uncertainty>().Length];
            try
            {
                for (int i; !cancel.IsCancellationRequested && (i = Interlocked.Increment(ref _next)) < members;)
                {
                    watch.Begin();
                    LeanRun run = NightRun.Lean(own.Of(i, _table.Room(i)), watch, cancel);
                    _table.Put(i, run);
                    for (int o = 0; o < others.Length; o++)
                        _table.PutOption(i, o, NightRun.Lean(others[o].Of(i, unused), nobody, cancel));
                    _fan.Add(watch);
                    _table.Finish(i);
                    finished?.Report(Interlocked.Increment(ref _finished));
                }
            }
            catch (OperationCanceledException) when (cancel.IsCancellationRequested)
            {
                // The members that are done are kept.
            }
        }

        private IReadOnlyList<OptionChance> Options(IReadOnlyList<int> done) =>
        [
            .. options.Select((option, o) => new OptionChance(
                option, new Proportion(done.Count(i => _table.OptionHolds(o, i)), done.Count), TripMoney.Of(RunWithRefills.Of(option.Scenario)).Cost)),
        ];
    }

    private sealed class Unwatched : IRunObserver
    {
        public void Stepped(StepRecord record)
        {
        }

        public void Happened(in SimulationEvent happened, in Snapshot moment)
        {
        }
    }
}
