using ColdSim.Planning.Figures;
using UnitsNet.Units;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Purchases.PurchaseReport>;
using Row = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Purchases.PurchaseRow>;

namespace ColdSim.Planning.Purchases;

/// <summary>What is reported of set-ups that can be bought.</summary>
internal static class PurchaseFigures
{
    /// <summary>A set-up.</summary>
    public static IReadOnlyList<Row> Rows { get; } =
    [
        Row.Count("rank", r => r.Rank, "its place, from 1"),
        Row.Text("set_up", r => r.SetUp.Name, "what it is")
            .InTable(ReportTable.Purchases, "set-up", left: true,
            value: r => r.SetUp.Name.Replace("changeover", "auto", StringComparison.Ordinal)),
        Row.Count("cylinders", r => r.SetUp.Count, "how many"),
        Row.Flag("changeover", r => r.SetUp.Changeover, "whether an automatic changeover joins them"),
        Row.Flag("blanket", r => r.SetUp.Blanket, "whether each has a heated blanket, on shore power"),
        Row.Flag("on_ground", r => r.SetUp.IsOnGround, "whether it is too large to be carried: over 105 lb of water"),
        Limit("full_limit_c", 2, "full", "the coldest low that full cylinders are fed through"),
        Limit("half_limit_c", 1, "1/2", "the same half full"),
        Limit("quarter_limit_c", 0, "1/4", "the same a quarter full"),
        Row.Numbers("days", r => r.Days, "days that a filling lasts at each of `lows_c`; 0 where it is not fed")
            .InTable(ReportTable.Purchases, "days a|filling",
                value: r => string.Join("/", r.Days.Select(d => FormattableString.Invariant($"{Math.Floor(d):0}")))),
        Row.Count("short_nights", r => r.Season.ShortNights, "nights of the record for which not even full cylinders are enough")
            .InTable(ReportTable.Purchases, "short"),
        Row.Count("refills", r => r.Season.Refills, "ways to the filler over the record").InTable(ReportTable.Purchases, "fills"),
        Row.Count("fillings", r => r.Season.Fillings, "cylinders filled over the record, the last one included"),
        Row.Count("changes", r => r.Season.Changes, "changes from an empty cylinder to the next, by hand or by the changeover")
            .InTable(ReportTable.Purchases, "swaps"),
        Row.Number("money", r => r.Season.Money, "what the gas costs over the record; null without a price", canBeAbsent: true)
            .InTable(ReportTable.Purchases, "money", Display.Money, shown: rows => rows.Any(r => r.Season.Money is not null)),
        Row.Quantity("gas_used_kg", r => SiQuantity.Mass(r.Season.Used_kg), MassUnit.Kilogram, "gas burned over the record"),
        Row.Quantity("lift_kg", r => SiQuantity.Mass(r.SetUp.Lift_kg), MassUnit.Kilogram, "one full cylinder")
            .InTable(ReportTable.Purchases, "lift|{unit}"),
        Row.Quantity("weight_kg", r => SiQuantity.Mass(r.SetUp.Weight_kg), MassUnit.Kilogram, "all of them full"),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("title", r => r.Scenario.Title, "the scenario's title"),
        Document.Count("nights", r => r.Season.Nights.Count, "nights of the record"),
        Document.Day("from", r => r.Season.Nights[0].Evening, "the first one's evening"),
        Document.Day("to", r => r.Season.Nights[^1].Evening, "the last one's"),
        Document.Quantity("coldest_c", r => SiQuantity.Temperature(r.Season.Low_K(0)), TemperatureUnit.DegreeCelsius,
            "the coldest low of the record"),
        Document.Numbers("lows_c", r => r.Lows_K.Select(k => SiQuantity.Temperature(k)!.As(TemperatureUnit.DegreeCelsius)),
            "lows that nine, five and one in ten nights are colder than"),
        Document.Numbers("day_gas_kg", r => r.Lows_K.Select(r.Season.Day_kg), "gas burned in a day with each of these lows"),
        Document.Quantity("carries_kg", r => SiQuantity.Mass(r.Carries_kg), MassUnit.Kilogram, "what one person carries"),
        Document.Rows("set_ups", r => r.Rows, Rows, "the best first"),
        Document.Texts("assumptions", r => r.Scenario.Assumptions, "what was assumed because the scenario does not say it"),
    ];

    private static Row Limit(string key, int place, string heading, string explanation)
        => Row.Quantity(key, r => SiQuantity.Temperature(r.Limits.Cells[place].Low_K), TemperatureUnit.DegreeCelsius, explanation,
            canBeAbsent: true)
            .InTable(ReportTable.Purchases, $"{heading}|{{unit}}", Display.WholeDegrees);
}
