using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;
using UnitsNet.Units;
using Cell = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Limits.ChartCell>;
using Column = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Limits.LimitColumn>;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Limits.LimitChart>;
using Night = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Limits.StandardNight>;

namespace ColdSim.Planning.Limits;

/// <summary>What is reported of a limits chart.</summary>
internal static class LimitFigures
{
    /// <summary>The words for set-ups.</summary>
    public static WordTable<RigVariantKind> SetUps { get; } = new WordTable<RigVariantKind>()
        .With(RigVariantKind.Bare, "bare")
        .With(RigVariantKind.Blanket, "blanket")
        .With(RigVariantKind.SecondCylinder, "second_cylinder")
        .With(RigVariantKind.Both, "second_cylinder_and_blankets");

    /// <summary>The words for what a cell found.</summary>
    public static WordTable<LimitKind> Kinds { get; } = new WordTable<LimitKind>()
        .With(LimitKind.Found, "found")
        .With(LimitKind.HoldsAtColdest, "holds_at_coldest")
        .With(LimitKind.NotAtWarmest, "not_at_warmest");

    /// <summary>A cell.</summary>
    public static IReadOnlyList<Cell> Cells { get; } =
    [
        Cell.Word("set_up", c => c.Column.RigVariant.Kind, SetUps, "its column's set-up").InCsv(CsvTable.Limits, "set-up").OutsideDocuments(),
        Cell.Flag("as_it_is", c => c.Column.RigVariant.AsItIs, "whether that is the scenario's own rig").InCsv(CsvTable.Limits, "as it is").OutsideDocuments(),
        Cell.Flag("contents_as_now", c => ReferenceEquals(c.Cell, c.Column.Now), "whether each cylinder holds what the scenario says, and not the same part of its legal filling")
            .InCsv(CsvTable.Limits, "contents as now"),
        Cell.Quantity("fill", c => SiQuantity.Ratio(c.Cell.Fill_frac), RatioUnit.DecimalFraction, "part of the legal filling, of all cylinders together").InCsv(CsvTable.Limits, "fill", 1, RatioUnit.Percent),
        Cell.Quantity("contents_kg", c => SiQuantity.Mass(c.Cell.Contents_kg), MassUnit.Kilogram, "propane in all cylinders at dusk").InCsv(CsvTable.Limits, "contents", 3),
        Cell.Word("kind", c => c.Cell.Kind, Kinds, "what was found").InCsv(CsvTable.Limits, "kind"),
        Cell.Quantity("limit_c", c => SiQuantity.Temperature(c.Cell.Low_K), TemperatureUnit.DegreeCelsius, "the coldest low that holds", canBeAbsent: true)
            .InCsv(CsvTable.Limits, "limit", 2),
        Cell.Flag("emptied_one_step_colder", c => c.Cell.Emptied, "whether at most 5 % of the legal filling is left when gas falls short one step colder")
            .InCsv(CsvTable.Limits, "emptied one step colder"),
        Cell.Word("fails_one_step_colder", c => c.Cell.FailsColder, ReportWords.Verdicts, "what fails the night one step colder; `holds` where that was not run")
            .InCsv(CsvTable.Limits, "fails one step colder"),
        Cell.Flag("furnace_too_small", c => c.Cell.FurnaceTooSmall, "whether that is the furnace, too small with all its gas").InCsv(CsvTable.Limits, "furnace too small"),
        Cell.Quantity("inside_low_c", c => SiQuantity.Temperature(c.Cell.InsideLow_K), TemperatureUnit.DegreeCelsius, "lowest inside air in that night", canBeAbsent: true)
            .InCsv(CsvTable.Limits, "inside low", 2),
        Cell.Quantity("gas_used_kg", c => SiQuantity.Mass(c.Cell.Used_kg), MassUnit.Kilogram, "gas used in it", canBeAbsent: true).InCsv(CsvTable.Limits, "gas used", 3),
        Cell.Quantity("blanket_energy_wh", c => SiQuantity.Energy(c.Cell.Blanket_J), EnergyUnit.WattHour, "electricity that the blankets took in it", canBeAbsent: true)
            .InCsv(CsvTable.Limits, "blanket", 1),
    ];

    private static IReadOnlyList<Night> StandardNights { get; } =
    [
        Night.Time("from", n => n.From, "first instant"),
        Night.Time("to", n => n.To, "last instant"),
        Night.Number("swing_k", _ => StandardNight.Swing_K, "the high above the low"),
        Night.Number("wind_m_s", n => n.Air.Wind_m_s, "wind at mast height"),
        Night.Number("humidity", n => n.Air.RelativeHumidity_frac, "relative humidity"),
        Night.Number("cloud", n => n.Air.Cloud_frac, "cloud cover"),
    ];

    private static IReadOnlyList<Column> Columns { get; } =
    [
        Column.Word("set_up", c => c.RigVariant.Kind, SetUps, "which"),
        Column.Flag("as_it_is", c => c.RigVariant.AsItIs, "whether it is the scenario's own rig"),
        Column.Texts("cylinders", c => c.RigVariant.Rig.CylinderNames(), "its cylinders' names"),
        Column.Quantity("blanket_w", c => SiQuantity.Power(c.RigVariant.Blanket?.Power_W), PowerUnit.Watt, "power of its blanket", canBeAbsent: true),
        Column.Flag("blanket_powered", c => c.RigVariant.Powered, "whether that has power"),
        Column.Rows("cells", c => c.Cells.Select(cell => new ChartCell(c, cell)), Cells, "by rising fill"),
        Column.Group("now", c => new ChartCell(c, c.Now), Cells, "the same with what the scenario has in each cylinder"),
        Column.Quantity("now_shutting_limit_c", c => SiQuantity.Temperature(c.NowShutting?.Low_K), TemperatureUnit.DegreeCelsius,
            "its limit if the regulator gives nothing below its `minimum_inlet`; null where the limit does not count on that", canBeAbsent: true),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("title", c => c.Scenario.Title, "the scenario's title"),
        Document.Quantity("warmest_c", c => SiQuantity.Temperature(c.Axis.Warmest_K), TemperatureUnit.DegreeCelsius, "warmest low tried"),
        Document.Quantity("coldest_c", c => SiQuantity.Temperature(c.Axis.Coldest_K), TemperatureUnit.DegreeCelsius, "coldest low tried"),
        Document.Number("tolerance_k", c => c.Axis.Step_K, "step between lows: one step colder than a limit does not hold"),
        Document.Group("night", c => c.Night, StandardNights, "the standard night"),
        Document.Rows("set_ups", c => c.Columns, Columns, "column by column"),
        LogStartFigures.In<LimitChart>(c => c.Scenario),
        Document.Texts("assumptions", c => c.Scenario.Assumptions, "what was assumed because the scenario does not say it"),
    ];

    /// <summary>The cells of a chart, column by column.</summary>
    public static IEnumerable<ChartCell> CellsOf(LimitChart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        return chart.Columns.SelectMany(column => column.Cells.Append(column.Now).Select(cell => new ChartCell(column, cell)));
    }
}

/// <summary>A cell with the column it is in.</summary>
internal sealed record ChartCell(LimitColumn Column, LimitCell Cell);
