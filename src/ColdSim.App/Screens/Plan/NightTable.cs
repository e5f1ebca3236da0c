using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Planning.Actions;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Screens.Plan;

/// <summary>A row a night, with as many columns as there is room for: the night and how it went always, then what matters most.</summary>
internal static class NightTable
{
    /// <summary>Columns that are left before a row for the pointer.</summary>
    private const int Pointer = 2;

    private const int Between = 1;

    /// <summary>A column.</summary>
    /// <param name="Head">Its name.</param>
    /// <param name="Unit">Its unit.</param>
    /// <param name="Rank">The lower, the later it is left out.</param>
    /// <param name="Cell">Its text for a night.</param>
    private sealed record Column(string Head, string Unit, int Rank, Func<int, string> Cell)
    {
        public bool IsLeft { get; init; }
    }

    /// <summary>The heading's two rows, then a row a night, each beginning with two blanks for a pointer.</summary>
    /// <param name="report">The run.</param>
    /// <param name="margins">How much colder each night could be; null while it is not known.</param>
    /// <param name="units">The units to print.</param>
    /// <param name="width">The columns there are.</param>
    public static IReadOnlyList<string> Lines(RunReport report, IReadOnlyList<NightMargin>? margins, UnitStyle units, int width)
    {
        IReadOnlyList<NightReport> nights = report.Nights;
        Column[] shown = Fitting(Columns(nights, margins, units), nights.Count, width);
        int[] widths = [.. shown.Select(c => Width(c, nights.Count))];
        string Cell(Column column, int width, string text) => column.IsLeft ? text.PadRight(width) : text.PadLeft(width);
        string Line(Func<Column, string> text)
            => (new string(' ', Pointer) + string.Join(new string(' ', Between), shown.Select((c, i) => Cell(c, widths[i], text(c))))).TrimEnd();
        return [Line(c => c.Head), Line(c => c.Unit), .. Enumerable.Range(0, nights.Count).Select(i => Line(c => c.Cell(i)))];
    }

    private static Column[] Columns(IReadOnlyList<NightReport> nights, IReadOnlyList<NightMargin>? margins, UnitStyle units) =>
    [
        new("Night", "", 0, i => ClockText.NightShort(nights[i])) { IsLeft = true },
        new("low", units.TemperatureUnit, 1, i => units.TemperatureNumber(nights[i].OutsideLow.Kelvins)),
        .. Inside(nights, units),
        new("gas", units.MassUnit, 4, i => units.MassNumber(nights[i].GasUsed.Kilograms)),
        new("left", units.MassUnit, 3, i => units.MassNumber((nights[i].LeftAtDawn ?? nights[i].LeftAtEnd).Kilograms)),
        new("colder", units.TemperatureUnit, 5, i => margins is null ? "…" : i < margins.Count ? Margin(margins[i], units) : ""),
        new("", "", 0, i => NightOutcome.Short(nights[i])) { IsLeft = true },
        new("", "", 6, i => Length(nights[i]) is { } length ? $"for {ClockText.Span(length)}" : "") { IsLeft = true },
    ];

    // Without a coach there is no inside.
    private static IEnumerable<Column> Inside(IReadOnlyList<NightReport> nights, UnitStyle units)
    {
        if (nights.Any(n => n.InsideLow is not null))
            yield return new("inside", units.TemperatureUnit, 2, i => nights[i].InsideLow is { } low ? units.TemperatureNumber(low.Kelvins) : "");
    }

    private static Column[] Fitting(Column[] all, int nights, int width)
    {
        List<Column> shown = [.. all.Where(c => c.Rank == 0)];
        foreach (Column next in all.Where(c => c.Rank > 0).OrderBy(c => c.Rank))
        {
            if (Pointer + shown.Append(next).Sum(c => Width(c, nights) + Between) - Between <= width)
                shown.Add(next);
        }

        return [.. all.Where(shown.Contains)];
    }

    private static int Width(Column column, int nights)
        => Math.Max(Math.Max(column.Head.Length, column.Unit.Length), Enumerable.Range(0, nights).Max(i => column.Cell(i).Length));

    private static string Margin(NightMargin margin, UnitStyle units)
        => margin.Colder_K is not { } colder ? "-" : $"{(margin.IsMost ? "over " : "")}{UnitStyle.Number(units.DifferenceIn(colder), 0)}";

    /// <summary>For how long a night fails, in all; null where it holds or where that has no length.</summary>
    private static Duration? Length(NightReport night) => night.Verdict switch
    {
        Verdict.GasShort or Verdict.GasGone => night.ShortTime,
        Verdict.BatteryFlat => night.Power?.VoltageGone,
        Verdict.FurnaceStopped => night.NoHeatTime,
        Verdict.WaterFreezes => night.FreezingTime,
        _ => null,
    };

    /// <summary>Where in a row the word that it fails begins; -1 for a night that holds.</summary>
    public static int FailingAt(string line) => line.IndexOf(Fails, StringComparison.Ordinal);

    /// <summary>The word for a night that fails.</summary>
    public const string Fails = "FAILS";
}
