using System.Globalization;
using ColdSim.Physics.Units;
using ColdSim.Tests.Planning.Capacity;

namespace ColdSim.Tests.Docs;

/// <summary>The tables of docs/model-checks.md, each worked out by the model.</summary>
internal static class ModelChecksPage
{
    private static readonly double[] Hours = [1, 4, 8];

    /// <summary>What belongs between the page's markers.</summary>
    public static IReadOnlyDictionary<string, string> Parts()
    {
        (int[] Row, int Column, TradeRule Rule)[] cells =
        [
            .. from row in TradeRules.Table from i in Enumerable.Range(0, TradeRules.TableAir_F.Count)
               select (row, i, TradeRules.Upright(row[0], TradeRules.TableAir_F[i], row[i + 1])),
        ];
        double[][] upright = Ratios([.. cells.Select(c => c.Rule)], breeze: true), to20 = Ratios(TradeRules.ToMinus20F, breeze: true), open = Ratios(TradeRules.WithoutLiquid, breeze: false);
        return new Dictionary<string, string>
        {
            ["upright summary"] = Summary(cells, upright),
            ["upright"] = "| lb in it | air °F | printed Btu/h | 1 h | 4 h | 8 h | without end | same, breeze |\n| --- | --- | --- | --- | --- | --- | --- | --- |\n"
                + string.Concat(cells.Select((c, i) => $"| {c.Row[0]} | {TradeRules.TableAir_F[c.Column]} | {Thousands(c.Row[c.Column + 1])} | {Cells(upright[i])} |\n")),
            ["to -20 °F"] = "| rule | case | printed Btu/h | 1 h | 4 h | 8 h | without end | same, breeze |\n| --- | --- | --- | --- | --- | --- | --- | --- |\n"
                + string.Concat(TradeRules.ToMinus20F.Select((r, i) => $"| {r.Name} | {r.Case} | {Thousands(r.Printed_W / ConversionFactors.BtuPerHour_W)} | {Cells(to20[i])} |\n")),
            ["without a liquid"] = "| rule | case | printed kg/h | 1 h | 4 h | 8 h | without end | liquid after 8 h, °C | without end, °C |\n| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n"
                + string.Concat(TradeRules.WithoutLiquid.Select((r, i) => $"| {r.Name} | {r.Case} | {Kilograms(r)} | {Cells(open[i])} | {After(r, 8)} | {Celsius(r.LiquidWithoutEnd_K())} |\n")),
            ["bursts"] = "| bottle, half full | printed kg/h for 20 min | liquid then, from -10 °C |\n| --- | --- | --- |\n"
                + string.Concat(TradeRules.Bursts.Select(r => $"| {r.Case.Split(" at")[0]} | {Kilograms(r)} | {After(r, 1.0 / 3)} °C |\n")),
        };
    }

    // Ours over the printed figure: for each duration, without end, and that in the breeze.
    private static double[][] Ratios(IReadOnlyList<TradeRule> rules, bool breeze)
    {
        double[][] all = new double[rules.Count][];
        Parallel.For(0, rules.Count, i => all[i] =
        [
            .. Hours.Select(h => rules[i].For_W(h) / rules[i].Printed_W), rules[i].WithoutEnd_W(0) / rules[i].Printed_W,
            .. breeze ? [rules[i].WithoutEnd_W(TradeRule.Breeze_m_s) / rules[i].Printed_W] : Array.Empty<double>(),
        ]);
        return all;
    }

    private static string Summary((int[] Row, int Column, TradeRule Rule)[] cells, double[][] ratios)
    {
        string Line(string name, IEnumerable<int> of, Func<IEnumerable<double>, double> what)
            => $"| {name} | {Cells([.. Enumerable.Range(0, 5).Select(column => what(of.Select(i => ratios[i][column])))])} |\n";
        int[] all = [.. Enumerable.Range(0, cells.Length)], zero = [.. all.Where(i => cells[i].Column == 0)];
        return "| ours over printed | 1 h | 4 h | 8 h | without end | same, breeze |\n| --- | --- | --- | --- | --- | --- |\n"
            + Line("at 0 °F, least", zero, v => v.Min()) + Line("at 0 °F, greatest", zero, v => v.Max())
            + Line("all, least", all, v => v.Min()) + Line("all, middle", all, v => v.Order().ElementAt(v.Count() / 2)) + Line("all, greatest", all, v => v.Max());
    }

    private static string Cells(IReadOnlyList<double> ratios) => string.Join(" | ", ratios.Select(r => r.ToString("F2", CultureInfo.InvariantCulture)));

    private static string Thousands(double number) => Math.Round(number).ToString("#,0", CultureInfo.InvariantCulture);

    private static string Kilograms(TradeRule rule) => (rule.Printed_W / TradeRule.HeatingValue_J_kg * 3600).ToString("0.##", CultureInfo.InvariantCulture);

    private static string After(TradeRule rule, double hours)
    {
        (double liquid_K, double left_kg) = rule.After(hours);
        return double.IsNaN(liquid_K) && left_kg < 0.05 * rule.Cylinder.LegalFill_kg ? "empty" : Celsius(liquid_K);
    }

    private static string Celsius(double t_K) => double.IsNaN(t_K) ? "below -42" : Math.Round(t_K - ConversionFactors.ZeroCelsius_K).ToString("0", CultureInfo.InvariantCulture);
}
