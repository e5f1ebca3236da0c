using System.Globalization;
using ColdSim.Tests.Docs;
using ColdSim.Tests.Files;
using ColdSim.Validation.ClosedForms;
using ColdSim.Validation.DegreeDays;
using ColdSim.Validation.Durations;
using ColdSim.Validation.Furnace;
using ColdSim.Validation.Unchecked;
using Xunit;

namespace ColdSim.Validation.Page;

[Trait("Category", "Docs"), Trait("Category", "Slow")]
public class ValidationPageTests
{
    private static readonly string[] Headings = ["case", "what", "ours", "reference", "difference", "allowed"];

    [Fact]
    public void The_generated_tables_of_docs_validation_md_are_current() => GeneratedPage.AssertCurrent("validation.md", new Dictionary<string, string>
    {
        ["furnace cases"] = Table(Headings, FurnaceCase.All.Select(FurnaceResult.Of).SelectMany(r => r.Comparisons()).Select(c => c.Row())),
        ["degree days"] = Table(["week", "degree days, K·d", "ours, kg", "by degree days, kg", "difference"], WinterWeek.All().Select(Week)),
        ["trade table"] = Table(["in it, lb", "air, °F", "printed, BTU/h", "1 h", "4 h", "8 h", "without end"], TradeTable.Rows().Select(Trade)),
        ["unchecked"] = Table(["changed", "gas of the first night, lb", "lowest inside, °F", "first short", "short, h", "lowest of the bay, °F"], UncheckedEffects.Rows()),
        ["closed forms"] = Table(["kind", "cases", "largest difference", "mean difference", "allowed"], Kinds()),
    });

    [Fact]
    public void The_plots_of_docs_validation_md_are_current()
    {
        foreach ((string file, string svg) in Plots.All())
        {
            string path = DocPage.PathOf(file);
            if (Environment.GetEnvironmentVariable(GeneratedPage.WriteVariable) == "1")
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllText(path, svg);
            }
            else
                Assert.Equal(svg, File.ReadAllText(path).ReplaceLineEndings("\n"));
        }
    }

    [Fact]
    public void Every_plot_is_shown_on_the_page()
        => Assert.All(Plots.All(), p => Assert.Contains($"({p.File})", File.ReadAllText(DocPage.PathOf("validation.md")), StringComparison.Ordinal));

    private static string[] Week(WinterWeek week)
        => [Text("0", week.Number), Text("0.0", week.DegreeDays), Text("0.00", week.Ours_kg), Text("0.00", week.ByDegreeDays_kg), Percent(week.Ours_kg / week.ByDegreeDays_kg - 1)];

    private static string[] Trade((double Pounds, double Air_F, double Printed, double[] Ours) row)
        => [Text("0", row.Pounds), Text("0", row.Air_F), Text("#,0", row.Printed), .. row.Ours.Select(o => $"{Text("#,0", 1000 * Math.Round(o / 1000))} ({Text("0.00", o / row.Printed)})")];

    private static IEnumerable<string[]> Kinds()
    {
        yield return Kind("draw with a fixed heat transfer", "draw", ClosedForm.Draw, v => Percent(v) + " of the fall", KindLimits.Draw_K_K);
        yield return Kind("cooling of two nodes", "cooling", ClosedForm.Cooling, v => Text("0.0000", v) + " K", KindLimits.Cooling_K);
        yield return Kind("duty at a steady load", "duty", ClosedForm.Duty, Percent, KindLimits.Duty_frac);
        yield return Kind("energy of a week", "week", ClosedForm.Week, Percent, KindLimits.Week_frac);
    }

    private static string[] Kind(string name, string kind, Func<string, ClosedForm> of, Func<double, string> shown, double limit)
    {
        double[] all = [.. DrawnCases.Files(kind).Select(f => Math.Abs(of(f).Difference))];
        return [name, Text("0", all.Length), shown(all.Max()), shown(all.Average()), shown(limit)];
    }

    private static string Percent(double part) => Text("0.00", 100 * part) + " %";

    private static string Text(string format, double value) => value.ToString(format, CultureInfo.InvariantCulture).Replace('-', '−');

    private static string Table(string[] headings, IEnumerable<string[]> rows)
        => string.Concat(rows.Prepend([.. headings.Select(_ => "---")]).Prepend(headings).Select(r => $"| {string.Join(" | ", r)} |\n"));
}
