using System.Runtime.ExceptionServices;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;
using ColdSim.Planning.Trips;

namespace ColdSim.Planning.Ensemble;

/// <summary>Runs a scenario many times over and counts how often it holds; every member is a run of the whole engine.</summary>
public static class ChanceRun
{
    /// <summary>The most members of one ensemble.</summary>
    public const int MostMembers = 100_000;

    /// <summary>The most members that are run to settle on which side of the wanted chance it lies.</summary>
    public const int MostUntilSettled = 10_000;

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

    /// <summary>The same, until it is settled whether the chance of holding is above or below the scenario's <see cref="Scenario.WantedChance_frac"/>.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="options">Tried with the same random numbers; their chances are not what is settled.</param>
    /// <param name="seed">What the random numbers start from.</param>
    /// <param name="most">Members after which it stops without an answer.</param>
    /// <param name="finished">As <see cref="Of"/>.</param>
    /// <param name="workers">As <see cref="Of"/>: looks are taken at the same members however many work.</param>
    /// <param name="cancel">As <see cref="Of"/>.</param>
    /// <exception cref="OperationCanceledException">Cancelled before the first member was done.</exception>
    /// <exception cref="CannotRunException">The rig cannot start.</exception>
    public static ChanceReport UntilSettled(
        Scenario scenario, IReadOnlyList<ComparedOption> options, int seed, int most = MostUntilSettled, IProgress<int>? finished = null, int? workers = null,
        CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(most, MostMembers);
        RunReport plain = NightRun.Of(scenario, cancel);
        Work work = new(scenario, options, most, s => new ForecastMembers(s, seed), finished, cancel);
        return work.ReportWhenSettled(plain, workers) with { Seed = seed };
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
        return work.Report(plain, workers) with { Years = [.. record.Years.Select(y => y.Year)], YearsLeftOut = record.LeftOut, IsTypicalYear = record.IsTypicalYear };
    }

    private sealed class Work(
        Scenario scenario, IReadOnlyList<ComparedOption> options, int members, Func<Scenario, IMemberMaker> maker, IProgress<int>? finished,
        CancellationToken cancel)
    {
        // A refill may fill a cylinder to its legal filling, whatever it holds at the start.
        private readonly FanCounter _fan = new(
            new NightCalendar(scenario).Duration_s, scenario.Rig.Cylinders.Sum(c => Math.Max(c.LegalFill_kg, c.Contents_kg)) * 1.001);

        private readonly MemberTable _table = new(members, options.Count);
        private readonly int[] _shared = [.. options.Select(o => o.SharedLegs(scenario))];
        private Worker?[] _workers = [];
        private int _next = -1;
        private int _end;
        private int _finished;

        public ChanceReport Report(RunReport plain, int? workers)
        {
            RunTo(members, workers);
            return Reported(plain);
        }

        // Looks are taken at the same members on every machine; nothing beyond the one that settles it has been run.
        public ChanceReport ReportWhenSettled(RunReport plain, int? workers)
        {
            for (int look = Math.Min(SequentialDecision.FirstLook, members); ; look = Math.Min(SequentialDecision.NextLook(look), members))
            {
                RunTo(look, workers);
                SequentialDecision decision = SequentialDecision.Of(_table.Holding(out int done), done, scenario.WantedChance_frac, members);
                bool interrupted = done < look;
                if (decision.Side != ChanceSide.Open || look == members || interrupted)
                    return Reported(plain) with { Decision = interrupted ? decision with { Side = ChanceSide.Open } : decision };
            }
        }

        private void RunTo(int end, int? workers)
        {
            int many = Math.Clamp(workers ?? Environment.ProcessorCount, 1, end - _end);
            if (_workers.Length < many) Array.Resize(ref _workers, many);
            (_next, _end) = (_end - 1, end);
            try
            {
                Parallel.For(0, many, new ParallelOptions { MaxDegreeOfParallelism = many }, w => Go(_workers[w] ??= new Worker(scenario, options, maker, _fan)));
            }
            catch (AggregateException e)
            {
                ExceptionDispatchInfo.Throw(e.InnerExceptions[0]);
            }
        }

        private ChanceReport Reported(RunReport plain)
        {
            IReadOnlyList<int> done = _table.Done;
            if (done.Count == 0) cancel.ThrowIfCancellationRequested();
            return ChanceReport.Of(scenario, plain, _end, _table, done, Options(done), _fan.Read());
        }

        // Each worker fetches one member at a time, so that a slow member does not hold up the others.
        private void Go(Worker worker)
        {
            try
            {
                for (int i; !cancel.IsCancellationRequested && (i = Interlocked.Increment(ref _next)) < _end;)
                {
                    RunMember(worker, i);
                    _fan.Add(worker.Watch);
                    _table.Finish(i);
                    finished?.Report(Interlocked.Increment(ref _finished));
                }
            }
            catch (OperationCanceledException) when (cancel.IsCancellationRequested)
            {
                // The members that are done are kept.
            }
        }

        private void RunMember(Worker worker, int member)
        {
            worker.Watch.Begin();
            Scenario own = worker.Own.Of(member, _table.Room(member));
            OptionRun[] others = [.. worker.Others.Select((maker, o) => new OptionRun(maker.Of(member, worker.Unused), _shared[o], cancel))];
            try
            {
                _table.Put(member, NightRun.Lean(own, worker.Watch, others, cancel));
                for (int o = 0; o < others.Length; o++) _table.PutOption(member, o, others[o].Finish());
            }
            finally
            {
                foreach (OptionRun other in others) other.Dispose();
            }
        }

        private IReadOnlyList<OptionChance> Options(IReadOnlyList<int> done) =>
        [
            .. options.Select((option, o) => new OptionChance(
                option, new Proportion(done.Count(i => _table.OptionHolds(o, i)), done.Count), TripMoney.Of(RunWithRefills.Of(option.Scenario)).Cost)),
        ];
    }

    // What one thread uses again and again: shifted copies of the weathers, the grids of errors, the samples of a run.
    private sealed class Worker(Scenario scenario, IReadOnlyList<ComparedOption> options, Func<Scenario, IMemberMaker> maker, FanCounter fan)
    {
        public IMemberMaker Own { get; } = maker(scenario);

        public IMemberMaker[] Others { get; } = [.. options.Select(o => maker(o.Scenario))];

        public FanWatch Watch { get; } = new(fan);

        public double[] Unused { get; } = new double[Enum.GetValues<Uncertainty>().Length];
    }
}
