using System.Runtime.ExceptionServices;

namespace ColdSim.Planning.Search;

/// <summary>Computes the elements of an array in parallel; the result does not depend on the number of workers.</summary>
internal static class ParallelMap
{
    /// <summary>The elements in order. The first exception of an element is thrown as it is.</summary>
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
