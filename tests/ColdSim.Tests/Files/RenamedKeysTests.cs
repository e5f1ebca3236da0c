using ColdSim.Files;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>A key that had another name in older files.</summary>
public class RenamedKeysTests
{
    private const string Rig = """
        [weather]
        file = "w.csv"
        [[draw]]
        name = "lamp"
        rate = "500 W"
        [cylinder]
        size = "20 lb"
        left = "15 lb"

        """;

    private static ReadResult Read(string text) => Fixtures.Read(text);

    [Theory]
    [InlineData("[cylinder.surroundings]\nwind_exposure = 0.7")]
    [InlineData("[cylinder.surroundings]\nwind_shelter = 0.7")]
    [InlineData("surroundings.wind_shelter = 0.7")]
    [InlineData("[fit]\nwind_exposure = 0.7\nwind_exposure_error = 0.1")]
    [InlineData("[fit]\nwind_shelter = 0.7\nwind_shelter_error = 0.1")]
    public void A_cylinder_open_to_the_wind_is_read_by_the_new_name_and_by_the_old(string written)
        => Assert.Equal(0.7, Read(Rig + written).Scenario!.Rig.Cylinders[0].Surroundings.WindExposure_frac);

    [Fact]
    public void A_key_by_both_its_names_is_a_fault_at_the_old_one()
    {
        FileProblem problem = Assert.Single(Read(Rig + "[cylinder.surroundings]\nwind_exposure = 0.7\nwind_shelter = 0.7").Problems);
        Assert.Equal((11, 1), (problem.Line, problem.Column));
        Assert.Contains("'wind_shelter' is the old name of 'wind_exposure', which is there too", problem.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wind_exposure", "wind_shelter")]
    [InlineData("wind_shelter", "wind_exposure")]
    [InlineData("wind_shelter", "wind_shelter")]
    public void An_option_changes_it_by_either_name(string inFile, string inOption)
    {
        ReadResult read = Read($"""
            {Rig}[cylinder.surroundings]
            {inFile} = 0.7
            [[option]]
            name = "in the open"
            [option.set]
            "cylinder.surroundings.{inOption}" = 1
            """);
        Assert.Empty(read.Problems);
        Assert.Equal(1, Assert.Single(read.Options).Scenario.Rig.Cylinders[0].Surroundings.WindExposure_frac);
    }

    [Fact]
    public void Two_files_that_differ_in_the_name_alone_do_not_differ()
    {
        Dictionary<string, string> files = new()
        {
            ["old.toml"] = Rig + "[cylinder.surroundings]\nwind_shelter = 0.7",
            ["new.toml"] = Rig + "[cylinder.surroundings]\nwind_exposure = 0.7",
        };
        Assert.Empty(InputDifferences.Of("old.toml", "new.toml", path => new MemoryStream(System.Text.Encoding.UTF8.GetBytes(files[path]))));
    }
}
