using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>The tables of a chance, within 80 columns.</summary>
internal static class ChanceTable
{
    private const int LongestName = 46;

    public static IReadOnlyList<string> Nights(ChanceReport report, UnitStyle units)
    {
        string dawn = report.Scenario.Criteria.Dawn.ToString("HH:mm", null);
        TextColumn[] columns =
        [
            new(["Night"], Left: true), new(["Holds", "%"]), new(["Within", "%"]),
            new(["Left", dawn, units.MassUnit]), new(["", "half", ""]), new(["", "nine", "tenths"]),
            new(["Dry", "a tenth", "at"]), new(["", "half", ""]), new(["", "nine", "tenths"]),
        ];
        return TextTable.Lines(columns, [.. report.Nights.Select(n => Row(n, report.Dry, units))], gap: 2);
    }

    public static IReadOnlyList<string> Influences(ChanceReport report, int gap = 2)
    {
        TextColumn[] columns = [new(["What is not known"], Left: true), new(["Rank", "correlation"]), new(["Share"])];
        return report.Influences.Count == 0 ? [] : TextTable.Lines(
            columns,
            [.. report.Influences.Select(i => (string[])[ChanceSentence.Name(i.Of), UnitStyle.Number(i.Correlation, 2), ChanceSentence.Share(i.Share_frac)])],
            gap: gap);
    }

    public static IReadOnlyList<string> Options(ChanceReport report)
    {
        bool priced = report.Options.Any(o => o.Cost is not null);
        List<TextColumn> columns = [new(["Option"], Left: true), new(["Holds", "%"]), new(["Within", "%"])];
        if (priced) columns.Add(new(["Cost"]));
        return TextTable.Lines(columns, [.. report.Options.Select(o => Row(o, priced))], gap: 2);
    }

    private static string[] Row(OptionChance option, bool priced)
    {
        string name = option.Option.Name.Length <= LongestName ? option.Option.Name : option.Option.Name[..(LongestName - 3)] + "...";
        string[] row = [name, ChanceSentence.Figure(option.AllNights.Chance_frac), Within(option.AllNights)];
        return priced ? [.. row, option.Cost is { } cost ? ChanceSentence.Money(cost) : "-"] : row;
    }

    private static string[] Row(NightChance night, Spread<DateTimeOffset?> dry, UnitStyle units) =>
    [
        ClockText.NightShort(night.Night),
        ChanceSentence.Figure(night.Holds.Chance_frac),
        Within(night.Holds),
        Mass(night.LeftAtDawn_kg?.Low, units),
        Mass(night.LeftAtDawn_kg?.Median, units),
        Mass(night.LeftAtDawn_kg?.High, units),
        Clock(dry.Low, night.Night),
        Clock(dry.Median, night.Night),
        Clock(dry.High, night.Night),
    ];

    private static string Within(Proportion chance) => $"{ChanceSentence.Figure(chance.Low_frac)}-{ChanceSentence.Figure(chance.High_frac)}";

    private static string Mass(double? kg, UnitStyle units) => kg is { } mass ? units.MassNumber(mass) : "-";

    private static string Clock(DateTimeOffset? time, NightReport night)
        => time is { } t && t >= night.From && t < night.To ? ClockText.Clock(t) : "-";
}
