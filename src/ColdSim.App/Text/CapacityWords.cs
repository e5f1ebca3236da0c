using System.Globalization;
using ColdSim.Planning.Capacity;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>What capacities, their times and fills are called, in one wording for answer and full text.</summary>
internal static class CapacityWords
{
    /// <summary>Such as "for 4 h", "for the night" or "without end".</summary>
    public static string For(CapacityTime time) => time.Kind switch
    {
        CapacityTimeKind.Night => "for the night",
        CapacityTimeKind.WithoutEnd => "without end",
        _ => $"for {Span(time)}",
    };

    /// <summary>The same for the head of a column.</summary>
    public static string Heading(CapacityTime time) => time.Kind switch
    {
        CapacityTimeKind.Night => "night",
        CapacityTimeKind.WithoutEnd => "without end",
        _ => Span(time),
    };

    /// <summary>A capacity to two figures, three from 100,000 on, rounded down, so that what is printed is fed.</summary>
    public static string Number(double draw_W, UnitStyle units)
    {
        double value = units.PowerIn(draw_W);
        if (value <= 0) return "0";
        double step = Math.Pow(10, Math.Floor(Math.Log10(value) + 1e-9) - (units.IsUs && value >= 100_000 ? 2 : 1));
        double down = Math.Floor(value / step + 1e-9) * step;
        return units.IsUs ? down.ToString("#,0", CultureInfo.InvariantCulture) : UnitStyle.Number(down, step >= 1 ? 0 : Math.Min(3, (int)Math.Round(-Math.Log10(step))));
    }

    /// <summary>The same with its unit.</summary>
    public static string Power(double draw_W, UnitStyle units) => $"{Number(draw_W, units)} {units.PowerUnit}";

    /// <summary>A cell of the table; a letter where it is not the cold that sets it.</summary>
    public static string Cell(CapacityCell cell, UnitStyle units) => Number(cell.Draw_W, units) + (cell.Draw_W <= 0 ? " " : cell.End switch
    {
        CapacityEnd.Emptied => "d",
        CapacityEnd.Regulator => "r",
        _ => " ",
    });

    /// <summary>What the letters in this table mean; empty where there are none.</summary>
    public static IEnumerable<string> Signs(CapacityTable table)
    {
        if (table.Cells.Any(c => c.End == CapacityEnd.Emptied && c.Draw_W > 0))
            yield return "d: the gas is used up then.";
        if (table.Cells.Any(c => c.End == CapacityEnd.Regulator && c.Draw_W > 0))
            yield return "r: all the regulator passes.";
    }

    /// <summary>Such as "full" or "40 % full".</summary>
    public static string Filled(double fill_frac) => fill_frac >= 1 ? "full" : $"{LimitWords.Percent(fill_frac)} full";

    private static string Span(CapacityTime time) => ClockText.Span(Duration.FromSeconds(time.Time_s));
}
