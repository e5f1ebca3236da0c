namespace ColdSim.App.Commands;

/// <summary>How many runs are done, told from several threads.</summary>
internal sealed class RunCounter : IProgress<int>
{
    private int _count;

    public int Count => Volatile.Read(ref _count);

    // A later count may come first, so they are counted here.
    public void Report(int value) => Interlocked.Increment(ref _count);
}
