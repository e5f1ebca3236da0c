using System.Text.RegularExpressions;
using ArchUnitNET.xUnit;
using Xunit;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace ColdSim.Tests.Architecture;

/// <summary>The direction of the projects, and of the program's layers: Text at the bottom, Screens above it in an order of their own, Commands on both.</summary>
public class LayerTests
{
    public static TheoryData<string, string> LowerAndHigher { get; } = Pairs(
        Code.Projects, Code.AppLayers, Code.ScreenLayers, Code.ReportLayers, Code.ReportFormats, Code.OtherReportFormats, ["ColdSim.App.Text.Html", "ColdSim.App.Text.Reports"],
        ["ColdSim.App.Text.Reports", "ColdSim.App.Text.Html"], ["ColdSim.App.Text.Reports", "ColdSim.App.Text.Markdown"], ["ColdSim.App.Text.Html", "ColdSim.App.Text.Markdown"],
        ["ColdSim.App.Text.Markdown", "ColdSim.App.Text.Html"], ["ColdSim.App.Text.Markdown", "ColdSim.App.Text.Reports"]);

    private static TheoryData<string, string> Pairs(params string[][] orders)
    {
        TheoryData<string, string> pairs = [];
        HashSet<(string, string)> known = [];
        foreach (string[] order in orders)
        {
            for (int lower = 0; lower < order.Length; lower++)
            {
                for (int higher = lower + 1; higher < order.Length; higher++)
                {
                    if (known.Add((order[lower], order[higher])))
                        pairs.Add(order[lower], order[higher]);
                }
            }
        }

        return pairs;
    }

    [Theory]
    [MemberData(nameof(LowerAndHigher))]
    public void Compiled_lower_layer_does_not_use_the_higher_one(string lower, string higher)
        => Types().That().ResideInNamespaceMatching(Within(lower))
            .Should().NotDependOnAny(Types().That().ResideInNamespaceMatching(Within(higher)))
            .Check(Code.Architecture);

    [Theory]
    [MemberData(nameof(LowerAndHigher))]
    public void Source_of_the_lower_layer_has_no_using_of_the_higher_one(string lower, string higher)
    {
        string[] found = [.. Code.Usings(lower).Where(u => Code.IsIn(u.Namespace, higher)).Select(u => $"{Path.GetFileName(u.File)} has 'using {u.Namespace}'")];
        Assert.True(found.Length == 0, $"{lower} may not know {higher}:\n{string.Join('\n', found)}");
    }

    private static string Within(string layer) => $"^{Regex.Escape(layer)}(\\.|$)";
}
