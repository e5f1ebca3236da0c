using Xunit;

namespace ColdSim.Validation.Furnace;

[Trait("Category", "Slow")]
public class FurnaceCaseTests
{
    public static TheoryData<string> Names => [.. FurnaceCase.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Load_input_and_temperatures_are_as_near_the_printed_ones_as_they_must_be(string name)
        => Assert.Empty(FurnaceResult.Of(FurnaceCase.All.Single(c => c.Name == name)).Comparisons().Where(c => !c.IsNear).Select(c => string.Join(", ", c.Row())));
}
