using System.Diagnostics;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>A verdict in one word, for tables.</summary>
internal static class VerdictWord
{
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "holds",
        Verdict.RunsShort => "short",
        Verdict.RunsFlat => "flat",
        Verdict.RunsDry => "dry",
        _ => throw new UnreachableException(),
    };
}
