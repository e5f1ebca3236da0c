using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Fuzz.Rigs;

/// <summary>Whatever the reader accepts of drawn scenarios fits the schema.</summary>
public class RigSchemaTests
{
    private const int Rigs = 200;

    [Fact]
    public void Drawn_rigs_fit_the_schema() => Assert.All(
        Enumerable.Range(1, Rigs),
        number =>
        {
            DrawnRig rig = RigDraw.Of(number);
            Assert.True(SchemaCheck.Faults(rig.Scenario) is { Count: 0 }, $"{string.Join('\n', SchemaCheck.Faults(rig.Scenario))}\n{rig.Scenario}");
        });
}
