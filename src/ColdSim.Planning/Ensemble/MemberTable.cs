using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.Planning.Ensemble;

/// <summary>What the members came to, each in its own place, so that the order in which they end does not matter.</summary>
internal sealed class MemberTable
{
    private static readonly int Kinds = Enum.GetValues<Uncertainty>().Length;

    private readonly Lock _worst = new();
    private readonly bool[] _done;
    private readonly double[][] _drawn;
    private readonly LeanRun?[] _runs;
    private readonly bool[][] _optionHolds;

    public MemberTable(int members, int options)
    {
        _done = new bool[members];
        _drawn = new double[members][];
        _runs = new LeanRun?[members];
        _optionHolds = [.. Enumerable.Range(0, options).Select(_ => new bool[members])];
    }

    /// <summary>How well the worst run closes.</summary>
    public LedgerBalance? Ledger { get; private set; }

    /// <summary>The members that are done, in order.</summary>
    public IReadOnlyList<int> Done => [.. Enumerable.Range(0, _done.Length).Where(i => _done[i])];

    /// <summary>How many of the members that are done hold all nights.</summary>
    /// <param name="done">How many are done.</param>
    public int Holding(out int done)
    {
        int holding = 0;
        done = 0;
        for (int i = 0; i < _done.Length; i++)
        {
            if (!_done[i]) continue;
            done++;
            if (_runs[i]!.Holds) holding++;
        }

        return holding;
    }

    public LeanRun Run(int member) => _runs[member]!;

    public double Drawn(int member, Uncertainty of) => _drawn[member][(int)of];

    public bool OptionHolds(int option, int member) => _optionHolds[option][member];

    /// <summary>Room for what is drawn for a member.</summary>
    public Span<double> Room(int member) => _drawn[member] ??= new double[Kinds];

    public void Put(int member, LeanRun run)
    {
        _runs[member] = run;
        See(run.Ledger);
    }

    /// <summary>Notes whether an option holds with a member's numbers.</summary>
    /// <param name="member">Its place.</param>
    /// <param name="option">The option's place.</param>
    /// <param name="run">The whole run; null where a night does not hold, which ended it.</param>
    public void PutOption(int member, int option, LeanRun? run)
    {
        _optionHolds[option][member] = run is { Holds: true };
        if (run is not null) See(run.Ledger);
    }

    /// <summary>A member is whole once all options are run with its numbers.</summary>
    public void Finish(int member) => _done[member] = true;

    private void See(in LedgerBalance ledger)
    {
        lock (_worst)
        {
            if (Ledger is null || Worse(ledger, Ledger.Value)) Ledger = ledger;
        }
    }

    private static bool Worse(in LedgerBalance a, in LedgerBalance b)
        => a.Closes != b.Closes ? !a.Closes : !(a.WorstEnergy_frac <= b.WorstEnergy_frac);
}
