using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Engine;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>Who drew what gas: a row for each, and below it the run as a stacked strip.</summary>
internal static class WhoDrew
{
    private const int Columns = 64;
    private const int Rows = 8;
    private const int Bar = 24;

    /// <summary>Whether there is more than the furnace and draws that never change.</summary>
    public static bool Applies(RunReport report) => report.Scenario.Rig.Appliances.Any(a => a is not ConstantDraw);

    /// <summary>Places of those that can take gas, in the order of the report.</summary>
    public static IReadOnlyList<int> Places(Rig rig) => [.. Enumerable.Range(0, rig.GasPlaces).Where(i => i > 0 || rig.Furnace is not null)];

    /// <summary>A letter, a name, a mass, a share and a bar for each.</summary>
    public static IReadOnlyList<string> Table(IReadOnlyList<ApplianceGas> gas, UnitStyle units) => new FigureTable(ReportTable.Appliances, units).Lines(
        NightFigures.Appliances, gas,
        new(new([""], Left: true), -1, (_, place) => GasStack.LetterOf(place).ToString()),
        new(new([""], Left: true), 1, (g, place) => new string(GasStack.LetterOf(place), (int)Math.Round(g.Share.DecimalFractions * Bar))));

    /// <summary>A name, a mass and a share for each.</summary>
    public static IReadOnlyList<string> Masses(IReadOnlyList<ApplianceGas> gas, UnitStyle units)
        => new FigureTable(ReportTable.Appliances, units).Lines(NightFigures.Appliances, gas);

    public static IReadOnlyList<string> Lines(RunReport report, UnitStyle units)
    {
        RunSeries series = report.Series;
        return
        [
            .. Table(report.Summary.GasByAppliance, units), "",
            .. series.Count < 2 ? [] : GasStack.Lines(series, Places(report.Scenario.Rig), 1, series.Count, Columns, Rows, units, report.Scenario.Start),
            .. Wrap.Lines("Each column is the mean of its stretch of time, each letter who takes that part of the gas."),
        ];
    }
}
