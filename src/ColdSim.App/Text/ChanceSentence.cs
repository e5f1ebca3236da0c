using System.Globalization;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Harms;

namespace ColdSim.App.Text;

/// <summary>The chance in a sentence, in numbers and in words.</summary>
internal static class ChanceSentence
{
    private const double MinorShare = 0.02;

    public static string Of(ChanceReport report)
    {
        bool one = report.Nights.Count == 1;
        string subject = report.Nights.Count switch { 1 => "the night", 2 => "both nights", var n => $"all {n} nights" };
        string nights = $"{Capital(subject)} {(one ? "holds" : "hold")}";
        string partial = report.IsPartial ? $"Interrupted after {Count(report.Done)} of {Count(report.Asked)} {Members(report, report.Asked)}, so only of these: " : "";
        string plain = report.Plain.Summary.Verdict == Verdict.Holds ? "they hold" : VerdictWords.Clause(report.Plain.Summary.Verdict);
        string without = report.Seed is not null ? "With everything just as the scenario says" : "In the scenario's own weather";
        return $"{partial}{(partial.Length > 0 ? char.ToLowerInvariant(nights[0]) + nights[1..] : nights)} in {Count(report.AllNights.Count)} of {Count(report.Done)} "
            + $"{Members(report, report.Done)}: a chance of {Percent(report.AllNights)}, {Words(report.AllNights)}. {without}, "
            + $"{(report.Nights.Count == 1 && report.Plain.Summary.Verdict == Verdict.Holds ? "it holds" : plain)}.";
    }

    /// <summary>On which side of the wanted chance it is, where the members were run until that was settled.</summary>
    public static string Decided(ChanceReport report, SequentialDecision decision)
    {
        string wanted = $"the {Round(report.Scenario.WantedChance_frac)} that you want";
        string within = $"within {Figure(decision.Low_frac)} to {Figure(decision.High_frac)} %, by bounds that hold at every look";
        string after = $"after {Count(report.Done)} {Members(report, report.Done)}";
        return decision.Side switch
        {
            ChanceSide.Above => $"That is above {wanted}: settled {after} ({within}).",
            ChanceSide.Below => $"That is below {wanted}: settled {after} ({within}).",
            _ => $"Whether that is above or below {wanted} is not settled {after} ({within}).",
        };
    }

    /// <summary>Why the years say little of the chance; null where they are several years that were.</summary>
    public static string? LittleKnown(ChanceReport report)
        => report.IsTypicalYear
            ? "CAUTION: this is a typical year, put together from months picked for being usual. It has no rare cold in it, and one year says little of "
                + "a chance. Use a record of many years that were."
            : report.Years.Count == 1 ? "CAUTION: one year says little of a chance. Use a record of many years."
            : null;

    public static string Matters(ChanceReport report)
    {
        if (report.Influences.Count == 0)
            return "Nothing: all members go the same way.";
        Influence most = report.Influences[0];
        string better = most.Correlation > 0 ? "more is better" : "less is better";
        return $"{Capital(ChanceReportFigures.Uncertainties[most.Of].Text)}: {better}, {Share(most.Share_frac)} of the spread. Knowing it better helps most.";
    }

    public static string Lifts(ChanceReport report)
    {
        string wanted = $"the {Round(report.Scenario.WantedChance_frac)} that is wanted";
        string sampled = report.Seed is null ? "in the same years" : "with the same random numbers";
        if (report.MeetsWantedChance)
            return $"It need not be lifted: as it is, the chance is not below {wanted}. The options {sampled}:";
        if (report.Cheapest is not { } cheapest)
            return $"None of the options reaches {wanted}. Tried {sampled}:";
        string edge = cheapest.AllNights.Low_frac < report.Scenario.WantedChance_frac ? ", though its interval reaches below" : "";
        string how = cheapest.Cost is { } cost ? $"The cheapest option that reaches {wanted} is" : $"Nothing here has a price; the first option that reaches {wanted} is";
        string price = cheapest.Cost is { } c ? $" at a cost of {Money(c)}" : "";
        return $"{how} \"{cheapest.Option.Name}\"{price}: {Percent(cheapest.AllNights)}{edge}. All {sampled}:";
    }

    /// <summary>Such as "member" or "year".</summary>
    public static string Member(ChanceReport report) => report.Seed is null ? "year" : "member";

    /// <summary>The same of a number of them.</summary>
    public static string Members(ChanceReport report, int count) => Member(report) + (count == 1 ? "" : "s");

    /// <summary>Such as "87 % (85 to 89 %)".</summary>
    public static string Percent(Proportion chance)
        => $"{Round(chance.Chance_frac)} ({Figure(chance.Low_frac)} to {Figure(chance.High_frac)} %)";

    /// <summary>Such as "87 %"; nothing is rounded up to certainty.</summary>
    public static string Round(double chance_frac) => $"{Figure(chance_frac)} %";

    /// <summary>The same without the sign.</summary>
    public static string Figure(double chance_frac) => chance_frac switch
    {
        > 0 and < 0.01 or > 0.99 and < 1 => (chance_frac > 0.5 ? Math.Floor(chance_frac * 1000) / 10 : Math.Ceiling(chance_frac * 1000) / 10).ToString("0.0", CultureInfo.InvariantCulture),
        _ => UnitStyle.Number(chance_frac * 100, 0),
    };

    public static string Count(int count) => count.ToString("#,0", CultureInfo.InvariantCulture);

    public static string Money(double cost) => UnitStyle.Number(cost, 2);

    /// <summary>A share, with "under" where it is little.</summary>
    public static string Share(double share) => share < MinorShare ? "under 2 %" : $"{UnitStyle.Number(share * 100, 0)} %";

    /// <summary>The chance in words; both ends where few members leave open which word it is.</summary>
    internal static string Words(Proportion chance) => Words(chance.Low_frac) is var low && Words(chance.High_frac) is var high && low == high
        ? low : $"from {low} to {high}";

    // The words of the climate panel's note on uncertainty (Mastrandrea and others 2010).
    private static string Words(double chance_frac) => chance_frac switch
    {
        > 0.99 => "virtually certain",
        > 0.9 => "very likely",
        > 0.66 => "likely",
        >= 0.33 => "about as likely as not",
        >= 0.1 => "unlikely",
        >= 0.01 => "very unlikely",
        _ => "exceptionally unlikely",
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
