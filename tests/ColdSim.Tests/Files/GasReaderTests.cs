using System.Text;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Gas;
using ColdSim.Physics.Mixtures;
using ColdSim.Planning.Nights;
using Xunit;

namespace ColdSim.Tests.Files;

public class GasReaderTests
{
    private const string Head = Fixtures.Least + "\n[[draw]]\nrate = \"500 W\"\n";

    private static GasSpecification Read(string gas)
    {
        ReadResult result = Fixtures.Read(Head + gas);
        Assert.Empty(result.Problems);
        return result.Scenario!.Rig.Gas;
    }

    [Fact]
    public void Nothing_said_is_propane_alone()
    {
        Assert.Equal(new GasSpecification(), Read(""));
        Assert.Equal(new GasSpecification(), Read("[gas]\ngrade = \"propane\"\n"));
        Assert.Equal(new GasSpecification(), Read("[gas.by_mass]\npropane = 1\n"));
    }

    [Fact]
    public void A_grade_has_the_composition_of_the_page_and_is_listed_as_assumed()
    {
        ReadResult result = Fixtures.Read(Head + "[gas]\ngrade = \"winter blend\"\n");
        GasSpecification gas = result.Scenario!.Rig.Gas;
        Assert.Equal("winter blend", gas.Name);
        Assert.Equal(0.6, GasBlend.LiquidVolumes(gas.Composition).Propane, 1e-12);
        Assert.Equal(49.9e6, gas.HeatingValue_J_kg, 0.1e6);
        Assert.Contains(result.Scenario.Assumptions, a => a.Contains("winter blend", StringComparison.Ordinal));
    }

    [Fact]
    public void Parts_by_mass_and_by_liquid_volume_differ_as_the_liquids_weigh()
    {
        GasMasses mass = Read("[gas.by_mass]\npropane = 0.5\nn_butane = \"30 %\"\nisobutane = 0.2\n").Composition;
        Assert.Equal(0.3, mass.NormalButane, 1e-12);
        GasMasses volume = Read("[gas]\nby_liquid_volume = { propane = 0.5, n_butane = 0.3, isobutane = 0.2 }\n").Composition;
        Assert.InRange(volume.Propane, 0.45, 0.49);
    }

    [Fact]
    public void A_stated_heat_goes_before_what_the_composition_gives()
        => Assert.Equal(48e6, Read("[gas]\ngrade = \"winter blend\"\nheating_value = \"48 MJ/kg\"\n").HeatingValue_J_kg, 1.0);

    [Theory]
    [InlineData("[gas]\ngrade = \"winter mix\"\n", "s.toml:8:9: 'grade' is \"winter mix\"")]
    [InlineData("[gas.by_mass]\npropane = 0.5\nn_butane = 0.3\n", "s.toml:7:1: [gas.by_mass] adds up to 80 %; accepted: parts that add up to 100 %")]
    [InlineData("[gas.by_mass]\npropane = 1.5\n", "s.toml:8:11: 'propane' is 1.5; accepted: 0 % to 100 %")]
    [InlineData("[gas]\ngrade = \"summer blend\"\n[gas.by_mass]\npropane = 1\n", "'by_mass' beside 'grade'")]
    [InlineData("[gas.by_mass]\npropan = 1\n", "unknown key 'propan' in [gas.by_mass]; did you mean 'propane'?")]
    [InlineData("[gas]\ngrade = \"summer blend\"\n[[refill]]\nat = 2025-01-14T18:00:00-07:00\n", "a refill of a mixed gas")]
    public void A_fault_is_reported_with_its_place(string gas, string told)
        => Assert.Contains(Fixtures.Faults(Head + gas), f => f.Contains(told, StringComparison.Ordinal));

    [Fact]
    public void Cylinders_open_together_are_for_propane_alone()
    {
        const string Two = "[weather]\nfile = \"w.csv\"\n[[cylinder]]\nsize = \"20 lb\"\n[[cylinder]]\nsize = \"20 lb\"\n[[draw]]\nrate = \"500 W\"\n[arrangement]\nkind = \"together\"\n";
        Assert.Empty(Fixtures.Faults(Two));
        Assert.Contains(Fixtures.Faults(Two + "[gas]\ngrade = \"summer blend\"\n"), f => f.Contains("open together with a mixed gas", StringComparison.Ordinal));
    }

    [Fact]
    public void Curves_and_report_of_a_blend_have_its_butanes()
    {
        RunReport report = NightRun.Of(Fixtures.Read(Head + "[gas]\ngrade = \"winter blend\"\n").Scenario!);
        using StringWriter csv = new();
        SeriesCsv.Write(report, csv);
        Assert.EndsWith("burner [%],n-butane [kg],isobutane [kg]", csv.ToString().Split('\n')[0], StringComparison.Ordinal);
        using MemoryStream json = new();
        JsonReport.Write(report, json);
        string text = Encoding.UTF8.GetString(json.ToArray());
        Assert.Contains("\"gas\": \"winter blend\"", text, StringComparison.Ordinal);
        Assert.Contains("\"left_behind_kg\"", text, StringComparison.Ordinal);
    }
}
