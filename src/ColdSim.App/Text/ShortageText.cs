using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What a shortage of gas was, night by night: no flame, a weak flame, or a lockout that waited although there was gas.</summary>
internal static class ShortageText
{
    /// <summary>The section; none where no night is short.</summary>
    public static IEnumerable<TextSection> Sections(RunReport report, UnitStyle units)
    {
        NightReport[] nights = [.. report.Nights.Where(n => n.ShortTime.Minutes >= 1)];
        if (nights.Length > 0)
            yield return new("How gas is short", new FigureTable(ReportTable.Shortages, units).Lines(NightFigures.All, nights));
    }

    /// <summary>What a night's shortage was, such as ": 4 h no flame, 20 min a weak flame"; empty where it was one thing alone that its length says already.</summary>
    public static string Parts(NightReport night)
    {
        List<string> parts = [];
        if (night.NoFlameTime.Minutes >= 1)
            parts.Add($"{ClockText.Span(night.NoFlameTime)} with no flame");
        if (night.WeakFlameTime.Minutes >= 1)
            parts.Add($"{ClockText.Span(night.WeakFlameTime)} with a weak flame");
        if (night.LockedOutTime.Minutes >= 1)
            parts.Add($"{ClockText.Span(night.LockedOutTime)} locked out with gas there");
        return parts.Count < 2 ? "" : $" ({string.Join(", ", parts)})";
    }
}
