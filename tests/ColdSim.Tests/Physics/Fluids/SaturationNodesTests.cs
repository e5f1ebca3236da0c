using System.Globalization;
using System.Text;
using ColdSim.Physics.Fluids;
using ColdSim.Physics.Propane;
using ColdSim.Tests.Docs;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Physics.Fluids;

[Trait("Category", "Docs")]
public class SaturationNodesTests
{
    private static readonly (string Name, Fluid Fluid)[] Fluids =
        [("Propane", ReferenceEquation.Fluid), ("NormalButane", NormalButane.Fluid), ("Isobutane", Isobutane.Fluid)];

    [Fact]
    public void The_kept_nodes_are_those_that_the_equations_give()
    {
        if (Environment.GetEnvironmentVariable(GeneratedPage.WriteVariable) == "1")
        {
            File.WriteAllText(Path.Combine(DocPage.Source, "ColdSim.Physics", "Fluids", "SaturationNodes.cs"), Source());
            return;
        }

        foreach ((string name, Fluid fluid) in Fluids)
        {
            double[] solved = SaturationLine.Solve(fluid), kept = fluid.Saturation.Nodes;
            Assert.Equal(solved.Length, kept.Length);

            // Exponentials differ in their last bits between processors, and the smallest of the differences of large values show it most.
            for (int i = 0; i < solved.Length; i++)
                Assert.True(Math.Abs(kept[i] / solved[i] - 1) <= 1e-11, FormattableString.Invariant($"{name}, number {i}: {kept[i]:R} is kept, {solved[i]:R} is solved."));
        }
    }

    private static string Source()
    {
        StringBuilder text = new();
        text.Append("""
            // Stryker disable all : numbers alone; a change of each sign would drown all other mutations.
            namespace ColdSim.Physics.Fluids;

            /// <summary>The nodes of the saturation lines as <see cref="SaturationLine.Solve"/> gave them, one kelvin a row.</summary>
            /// <remarks>Written by a test, like the generated tables of docs, and checked by it; not to be edited by hand.</remarks>
            internal static class SaturationNodes
            {

            """);
        foreach ((string name, Fluid fluid) in Fluids)
        {
            if (fluid != Fluids[0].Fluid)
                text.Append('\n');
            text.Append(CultureInfo.InvariantCulture, $"    public static ReadOnlySpan<double> {name} =>\n    [\n");
            foreach (double[] row in SaturationLine.Solve(fluid).Chunk(SaturationLine.Stride))
                text.Append("        ").AppendJoin(", ", row.Select(v => v.ToString("R", CultureInfo.InvariantCulture))).Append(",\n");
            text.Append("    ];\n");
        }
        return text.Append("}\n").ToString().ReplaceLineEndings("\n");
    }
}
