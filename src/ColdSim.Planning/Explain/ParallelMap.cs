using System.Runtime.ExceptionServices;

namespace ColdSim.Planning.Explain;

/// <summary>Works out several things at once, into their places, so that the outcome does not depend on how many at once.</summary>
internal static class ParallelMap
{
    /// <summary>Works them out.</summary>
    public static T[] Of<T>(int count, Func<int, T> each, int? workers, CancellationToken cancel)
    {
        T[] all = new T[count];
        ParallelOptions parallel = new() { CancellationToken = cancel, MaxDegreeOfParallelism = workers ?? Environment.ProcessorCount };
        try
        {
            Parallel.For(0, count, parallel, i => all[i] = each(i));
        }
        catch (AggregateException e)
        {
            cancel.ThrowIfCancellationRequested();
            ExceptionDispatchInfo.Throw(e.InnerExceptions[0]);
        }

        return all;
    }
}
