using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Actions;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>A rig written by the kilogram, the millibar and the kilowatt.</summary>
public class MetricRigTests
{
    [Theory]
    [InlineData("5 kg", "6 kg")]
    [InlineData("11 kg", "33 kg")]
    [InlineData("20 lb", "30 lb")]
    public void The_next_larger_size_is_of_the_same_series(string size, string next)
    {
        Scenario scenario = Good(Fixtures.Least.Replace("20 lb", size, StringComparison.Ordinal));
        CandidateAction larger = BoughtActions.Gas(scenario, AmountGrid.Metric).Single(a => a.Kind == ActionKind.Size);
        Assert.Equal(next, larger.Change(0).Name);
    }

    [Theory]
    [InlineData("26.2 L", "11 kg")]
    [InlineData("26.2 kg", "11 kg")]
    [InlineData("47.6 lb", "20 lb")]
    public void A_cylinder_by_its_plate_is_called_in_the_units_of_the_plate(string water, string name)
        => Assert.Equal(name, Good(Fixtures.Least.Replace("size = \"20 lb\"", $"water_capacity = \"{water}\"\ndiameter = \"30 cm\"", StringComparison.Ordinal)).Rig.Cylinders[0].Name);

    [Theory]
    [InlineData("30 mbar", 3000)]
    [InlineData("37 mbar", 3700)]
    [InlineData("50 mbar", 5000)]
    public void A_regulator_may_be_written_as_on_a_European_plate(string delivery, double pa)
    {
        Scenario scenario = Good(Fixtures.Least + $"\n[regulator]\nrated_flow = \"1.5 kg/h\"\nset_point = \"{delivery}\"");
        Assert.Equal(pa, scenario.Rig.Regulator.SetPoint_Pa, 1e-9);

        // 1.5 kg of propane are 75.5 MJ.
        Assert.Equal(20_970, scenario.Rig.Regulator.RatedFlow_W, 10.0);
    }

    [Theory]
    [InlineData("de", "DE")]
    [InlineData("US", "US")]
    public void A_country_is_two_letters(string written, string country)
        => Assert.Equal(country, Good(Fixtures.Least + $"\n[place]\ncountry = \"{written}\"").Country);

    [Fact]
    public void A_country_by_its_name_is_answered_with_the_form()
        => Assert.Equal(["s.toml:6:11: 'country' is \"Germany\"; accepted: two letters, such as \"US\", \"CA\" or \"DE\""], Fixtures.Faults(Fixtures.Least + "\n[place]\ncountry = \"Germany\""));

    private static Scenario Good(string text)
    {
        ReadResult read = Fixtures.Read(text);
        Assert.Empty(read.Problems);
        return read.Scenario!;
    }
}
