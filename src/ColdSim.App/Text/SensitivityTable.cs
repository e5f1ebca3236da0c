using ColdSim.Planning.Explain;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>What easing each limit does to the first shortage.</summary>
internal static class SensitivityTable
{
    public static IReadOnlyList<string> Lines(BindingLimit limit) => TextTable.Lines(
        [new(["Eased"], Left: true), new(["The first shortage then"], Left: true)],
        [.. limit.Eased.Select(e => (IReadOnlyList<string>)[ExplainText.Name(e.Limit), Does(e)])],
        gap: 2);

    private static string Does(LimitSensitivity eased)
    {
        if (!eased.Applies)
            return "there is none";
        if (eased.GoneAt_frac is { } gone)
            return $"is gone, from {UnitStyle.Number(gone * 100, 0)} % on";
        if (double.IsNegativeInfinity(eased.Delay_s))
            return "cannot be told: that run proves nothing";
        double minutes = Math.Round(eased.Delay_s / 60);
        string span = ClockText.Span(Duration.FromMinutes(Math.Abs(minutes)));
        return minutes > 0 ? $"comes {span} later" : minutes < 0 ? $"comes {span} earlier" : "comes at the same minute";
    }
}
