using System.Globalization;
using ColdSim.Files.Scenarios;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;

namespace ColdSim.Validation.Unchecked;

/// <summary>What the parts without an outside check weigh on an answer: each moved by its band, on one rig in one cold snap.</summary>
internal static class UncheckedEffects
{
    /// <summary>Rows of the table: what is changed, gas of the first night, lowest inside, first short, in the units of a camper.</summary>
    public static IEnumerable<string[]> Rows()
    {
        ReadResult read = ScenarioReader.Read(Path.Combine(CaseRun.Folder, "unchecked", "rig.toml"));
        if (read.Scenario is not { } scenario) throw new InvalidOperationException(string.Join('\n', read.Problems));
        yield return Row("as it is", NightRun.Of(scenario));
        foreach (ComparedOption option in read.Options) yield return Row(option.Name, NightRun.Of(option.Scenario));
    }

    private static string[] Row(string name, RunReport report)
    {
        NightReport first = report.Nights[0];
        RunSummary all = report.Summary;
        string short_ = all.FirstShort is { } at ? at.ToString("ddd HH:mm", CultureInfo.InvariantCulture) : "never";
        return
        [
            name, Text("0.0", first.GasUsed.Pounds), Text("0", all.InsideLow!.Value.DegreesFahrenheit), short_, Text("0.0", all.ShortTime.Hours),
            Text("0", report.Nights.Min(n => n.Water.Min(w => w.Lowest.DegreesFahrenheit))),
        ];
    }

    private static string Text(string format, double value) => value.ToString(format, CultureInfo.InvariantCulture).Replace('-', '−');
}
