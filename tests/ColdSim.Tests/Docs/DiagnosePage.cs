using System.Globalization;
using System.Text;
using ColdSim.Planning.Diagnosis;
using ColdSim.Tests.Planning.Diagnosis;

namespace ColdSim.Tests.Docs;

/// <summary>The tables of docs/diagnose.md: priors and likelihoods as the program has them, and how it does on the cases.</summary>
internal static class DiagnosePage
{
    public static IReadOnlyDictionary<string, string> Parts() => new Dictionary<string, string>
    {
        ["priors"] = Priors(),
        ["likelihoods"] = Likelihoods(),
        ["hits"] = Hits(),
    };

    private static string Priors()
    {
        StringBuilder page = new("| cause | before anything is known |\n| --- | ---: |\n");
        foreach (Cause cause in Enum.GetValues<Cause>())
            page.Append(CultureInfo.InvariantCulture, $"| {Name(cause)} | {100 * LikelihoodTable.Prior(cause):0} % |\n");
        return page.ToString();
    }

    private static string Likelihoods()
    {
        StringBuilder page = new();
        foreach (Sign sign in Enum.GetValues<Sign>())
        {
            IReadOnlyList<string> states = SignStates.Of(sign);
            page.Append($"**{DiagnosisFigures.Signs[sign].Key}**\n\n| cause | {string.Join(" | ", states)} | basis |\n| --- "
                + $"|{string.Concat(states.Select(_ => " ---: |"))} --- |\n");
            IReadOnlyList<LikelihoodRow> rows = LikelihoodTable.Of(sign);
            foreach (LikelihoodRow row in rows.Skip(1).Append(rows[0]))
            {
                string name = row.Cause is { } cause ? Name(cause) : "every other";
                page.Append($"| {name} | {string.Join(" | ", row.Weights.Select(w => w.ToString("0.00", CultureInfo.InvariantCulture)))} | {row.Basis} |\n");
            }

            page.Append('\n');
        }

        return page.ToString();
    }

    private static string Hits()
    {
        StringBuilder page = new("| taken away | cases that have it | cause first | among the first three | nothing left, so it asks |\n| "
            + "--- | ---: | ---: | ---: | ---: |\n");
        foreach (string? kind in (string?[])[null, .. DiagnosisCase.Kinds])
        {
            int[] places = [.. DiagnosisCase.All.Select(c => c.Place(kind))];
            string having = kind is null ? "-"
                : DiagnosisCase.All.Count(c => c.Signs.ContainsKey(kind)).ToString(CultureInfo.InvariantCulture);
            page.Append(CultureInfo.InvariantCulture,
                $"| {(kind is null ? "nothing" : $"`--{kind}`")} | {having} | {places.Count(p => p == 1)} | "
                + $"{places.Count(p => p is 1 or 2 or 3)} | {places.Count(p => p == 0)} |\n");
        }

        return page.ToString();
    }

    private static string Name(Cause cause) => DiagnosisFigures.Causes[cause].Text;
}
