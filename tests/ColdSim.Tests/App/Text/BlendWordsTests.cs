using ColdSim.App.Screens.Night;
using ColdSim.App.Text;
using ColdSim.Files.Results;
using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Electrical;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using Xunit;

namespace ColdSim.Tests.App.Text;

/// <summary>What is mixed is not called propane, and what is propane alone is called so still.</summary>
public class BlendWordsTests
{
    private static readonly Lazy<RunReport> FlatBlend = new(() => Flat(Blends.Winter));

    private static readonly Lazy<RunReport> FlatPropane = new(() => Flat(Rigs.Heated().Gas));

    private static readonly Lazy<RunReport> PairOfBlend = new(() => Rigs.Nights(
        Rigs.Heated() with { Gas = Blends.Winter, Cylinders = [Rigs.Bottle("20 lb"), Rigs.Bottle("20 lb")], Arrangement = new AutomaticChangeover() },
        Rigs.Steady(-5, 30), 1));

    private static RunReport Flat(ColdSim.Model.Gas.GasSpecification gas) => Rigs.Nights(
        Rigs.Heated() with
        {
            Gas = gas,
            Cylinders = [Rigs.Bottle("40 lb", 0.9)],
            Power = new PowerSpecification { Battery = BatterySpecification.Of(BatteryChemistry.Agm, 20 * NominalVoltage.AmpereHour_J) },
        },
        Rigs.Steady(-5, 30), 1);

    [Fact]
    public void A_flat_battery_leaves_gas_or_propane()
    {
        Assert.Contains(" lb of gas left: ", Sentence(FlatBlend.Value), StringComparison.Ordinal);
        Assert.Contains(" lb of propane left: ", Sentence(FlatPropane.Value), StringComparison.Ordinal);

        static string Sentence(RunReport report) => NightSentence.Of(report.Nights[0], report, UnitStyle.Us);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_nights_on_the_screen_speak_of_gas(int width, int height)
    {
        string blend = new NightPage(NightView.Open(FlatBlend.Value, UnitStyle.Us)).Draw(width, height).ToString();
        // The caution at the side speaks of alarms for propane, as everywhere.
        Assert.DoesNotMatch("propane(?! alarms)", blend);
        Assert.Contains("gas left", blend, StringComparison.Ordinal);
        Assert.Contains("propane left", new NightPage(NightView.Open(FlatPropane.Value, UnitStyle.Us)).Draw(width, height).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Curves_are_headed_by_gas()
    {
        string[] headings = Headings(PairOfBlend.Value);
        Assert.DoesNotContain(headings, h => h.Contains("propane", StringComparison.Ordinal));
        Assert.Equal("gas in cylinder [kg]", headings[9]);
        Assert.Equal(2, headings.Count(h => h.StartsWith("20 lb", StringComparison.Ordinal) && h.EndsWith(" gas [kg]", StringComparison.Ordinal)));
        Assert.Equal("propane [kg]", Headings(FlatPropane.Value)[9]);

        static string[] Headings(RunReport report)
        {
            using StringWriter text = new();
            SeriesCsv.Write(report, text);
            return text.ToString().Split('\n')[0].Split(',');
        }
    }
}
