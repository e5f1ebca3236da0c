using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>Who drew how much from the 12 V side: a strip of letters a night, and one night's figures.</summary>
internal static class PowerStrips
{
    private const int Bar = 24;

    /// <summary>A heading and some nights, their strips on one scale.</summary>
    /// <param name="nights">All nights.</param>
    /// <param name="chosen">Index of the one that is marked.</param>
    /// <param name="first">Index of the first to show.</param>
    /// <param name="rows">How many to show.</param>
    /// <param name="width">Columns for all of it.</param>
    public static IReadOnlyList<string> Nights(IReadOnlyList<NightReport> nights, int chosen, int first, int rows, int width)
    {
        IReadOnlyList<string> figures = TextTable.Lines(
            [new(["  Night"], Left: true), new(["Out first"], Left: true), new(["Drawn Wh"])],
            [.. nights.Select((n, i) => (IReadOnlyList<string>)
            [
                $"{(i == chosen ? '>' : ' ')} {ClockText.NightShort(n)}", PowerTable.Word(n.FirstOut), UnitStyle.Number(n.Power!.DrawnInAll.WattHours, 0),
            ])]);
        int columns = Math.Max(1, width - figures.Max(f => f.Length) - 2);
        double most_J = nights.Max(n => n.Power!.DrawnInAll.Joules);
        return [figures[0], .. nights.Select((n, i) => $"{figures[i + 1]} |{Letters(n.Power!, most_J, columns)}").Skip(first).Take(rows)];
    }

    /// <summary>A letter, a name, watt-hours, a share and a row of letters for each who draws.</summary>
    public static IReadOnlyList<string> Table(NightPower power)
    {
        double all_J = power.DrawnInAll.Joules;
        return TextTable.Lines(
            [new([""], Left: true), new(["Drawn by"], Left: true), new(["Wh"]), new(["Share"]), new([""], Left: true)],
            [.. power.Drawn.Select((d, i) =>
            {
                double share_frac = all_J > 0 ? d.Energy.Joules / all_J : 0;
                return (IReadOnlyList<string>)
                [
                    GasStack.LetterOf(i).ToString(), Fitting.Cut(d.Name, Bar), UnitStyle.Number(d.Energy.WattHours, 0),
                    UnitStyle.Number(share_frac * 100, 0) + " %", new string(GasStack.LetterOf(i), (int)Math.Round(share_frac * Bar)),
                ];
            })]);
    }

    // The ends are rounded and not the parts, so that rounding does not add up.
    private static string Letters(NightPower power, double most_J, int columns)
    {
        if (!(most_J > 0))
            return "";
        string strip = "";
        double sum_J = 0;
        for (int i = 0; i < power.Drawn.Count; i++)
        {
            sum_J += power.Drawn[i].Energy.Joules;
            strip = strip.PadRight((int)Math.Round(sum_J / most_J * columns), GasStack.LetterOf(i));
        }

        return strip;
    }
}
