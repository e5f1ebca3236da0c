using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ColdSim.Model.Numerics;

/// <summary>Weighted sums of rows of numbers, four at a time.</summary>
internal static class WeightedSum
{
    // Rows that are added in one pass: more of them save passes, fewer save idle ones.
    private const int Together = 3;

    /// <summary>Length of a row with room for a number of values.</summary>
    public static int Padded(int values) => (values + Vector256<double>.Count - 1) / Vector256<double>.Count * Vector256<double>.Count;

    /// <summary>Sets a row to another and a weighted sum of rows.</summary>
    /// <param name="sum">Row to set.</param>
    /// <param name="start">Row to start from; empty for zero.</param>
    /// <param name="rows">Rows to add, each as long; as many as there are weights, or more.</param>
    /// <param name="weights">Weight of each.</param>
    /// <param name="factor">Factor on all weights.</param>
    public static void Set(double[] sum, double[] start, double[][] rows, ReadOnlySpan<double> weights, double factor)
    {
        for (int k = 0; k < weights.Length; k += Together)
        {
            int left = weights.Length - k;
            Add(
                sum, k == 0 ? start : sum,
                rows[k], factor * weights[k],
                left > 1 ? rows[k + 1] : rows[k], left > 1 ? factor * weights[k + 1] : 0,
                left > 2 ? rows[k + 2] : rows[k], left > 2 ? factor * weights[k + 2] : 0);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Add(double[] sum, double[] start, double[] a, double weightOfA, double[] b, double weightOfB, double[] c, double weightOfC)
    {
        ReadOnlySpan<Vector256<double>> rowA = Lanes(a), rowB = Lanes(b), rowC = Lanes(c), from = Lanes(start);
        Span<Vector256<double>> into = MemoryMarshal.Cast<double, Vector256<double>>(sum.AsSpan());
        Vector256<double> ofA = Vector256.Create(weightOfA), ofB = Vector256.Create(weightOfB), ofC = Vector256.Create(weightOfC);
        for (int i = 0; i < into.Length; i++)
        {
            Vector256<double> value = from.IsEmpty ? Vector256<double>.Zero : from[i];
            value = value + rowA[i] * ofA;
            value = value + rowB[i] * ofB;
            into[i] = value + rowC[i] * ofC;
        }
    }

    private static ReadOnlySpan<Vector256<double>> Lanes(double[] row) => MemoryMarshal.Cast<double, Vector256<double>>(row.AsSpan());
}
