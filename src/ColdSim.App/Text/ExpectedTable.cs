using ColdSim.Planning.Figures;
using ColdSim.Planning.Gauges;

namespace ColdSim.App.Text;

/// <summary>The instruments of a cylinder, a row each: at the instant, and as warm as the air outside.</summary>
internal static class ExpectedTable
{
    /// <summary>The lines, the heading first. Instruments that show nothing in either state are left out.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="expected">The readings that it is one of.</param>
    /// <param name="units">The units to print.</param>
    public static IReadOnlyList<string> Lines(ExpectedCylinder cylinder, ExpectedReadings expected, UnitStyle units)
    {
        TextGrid grid = Grid(cylinder, expected, units, heading: "");
        return TextTable.Lines(grid.Columns, grid.Rows, gap: 3);
    }

    /// <summary>The same before it is set into lines, for formats that have tables of their own.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="expected">The readings that it is one of.</param>
    /// <param name="units">The units to print.</param>
    /// <param name="heading">What heads the column of the instruments.</param>
    public static TextGrid Grid(ExpectedCylinder cylinder, ExpectedReadings expected, UnitStyle units, string heading)
    {
        InstrumentReadings[] states = [cylinder.Then, cylinder.Warmed];
        string assumed = units.WholeTemperature(expected.Assumed_K), air = units.WholeTemperature(cylinder.Warmed.Liquid.Kelvins);
        IReadOnlyList<string>[] rows =
        [
            .. new FigureTable(ReportTable.Expected, units).Columns(ExpectedFigures.Instruments, states)
                .Select(c => (IReadOnlyList<string>)
                    [string.Join(' ', c.Heading.Heading).Replace("{assumed}", assumed, StringComparison.Ordinal), c.Of(states[0], 0), c.Of(states[1], 1)])
                .Where(r => r.Skip(1).Any(cell => cell != "-")),
        ];
        string change = cylinder.Warmed.Liquid < cylinder.Then.Liquid ? "cooled" : "warmed";
        return new([new([heading], Left: true), new([ClockText.ShortDayClock(expected.At)]), new([$"{change} to {air}"])], rows);
    }

    /// <summary>A cylinder in a line, such as "right: 37.5 lb, level 73 %, 33.4 psi.".</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="units">The units to print.</param>
    public static string Brief(ExpectedCylinder cylinder, UnitStyle units)
    {
        InstrumentReadings then = cylinder.Then;
        string level = UnitStyle.Number(then.OfHeight.Percent, 0);
        return $"{cylinder.Name}: {units.Mass(then.Scale.Kilograms)}, level {level} %, {units.GaugePressure(then.Gauge.Pascals)}.";
    }

    /// <summary>What it is of, such as "left, tare 17.5 lb (usual; its stamp decides), 10.9 inH2O at the appliances".</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="expected">The readings that it is one of.</param>
    /// <param name="units">The units to print.</param>
    public static string Title(ExpectedCylinder cylinder, ExpectedReadings expected, UnitStyle units)
        => $"{cylinder.Name}{(cylinder.InUse ? "" : ", not in use")}, "
            + $"tare {units.Mass(cylinder.Tare.Kilograms)}{(cylinder.HasUsualTare ? " (usual; its stamp decides)" : "")}, "
            + $"{units.Delivery(expected.Delivery.Pascals)} at the appliances";
}
