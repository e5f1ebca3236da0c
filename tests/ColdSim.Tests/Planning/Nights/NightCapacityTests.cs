using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Commands;
using Xunit;

namespace ColdSim.Tests.Planning.Nights;

public class NightCapacityTests
{
    private static readonly RunReport Demo = NightRun.Of(ScenarioReader.Read(Shell.ColdSnap).Scenario!);

    // The demo again, from its start, with a constant draw in place of its burners from an instant on.
    private static bool IsFed(NightReport night, double draw_W)
    {
        Rig rig = Demo.Scenario.Rig;
        Scenario draw = Demo.Scenario with
        {
            Nights = 1,
            Rig = rig with
            {
                Furnace = null,
                Coach = null,
                Thermostat = null,
                Power = null,
                Water = [],
                Heaters = [],
                Appliances = [new ConstantDraw { Name = "draw", Input_W = draw_W, FullPressure_Pa = rig.Furnace!.FullPressure_Pa }],
            },
        };
        NightReport alone = NightRun.Of(draw).Nights[0];
        Assert.Equal(night.Evening, alone.Evening);
        DateTimeOffset dawn = new(night.Evening.AddDays(1).ToDateTime(Demo.Scenario.Criteria.Dawn), night.From.Offset);
        return alone.FirstShort is not { } first || first >= dawn;
    }

    [Fact]
    public void The_draw_for_the_night_is_fed_until_dawn_in_a_run_of_its_own_and_a_twentieth_more_is_not()
    {
        NightReport first = Demo.Nights[0];
        double night_W = (double)first.Capacity!.ForNight!.Value.Watts;
        Assert.True(IsFed(first, 0.99 * night_W));
        Assert.False(IsFed(first, 1.05 * night_W));
    }

    [Fact]
    public void Every_night_that_the_weather_covers_has_both()
    {
        foreach (NightReport night in Demo.Nights.Where(n => n.LeftAtDawn is not null))
        {
            Assert.NotNull(night.Capacity!.ForNight);
            Assert.NotNull(night.Capacity.ForSpanAtLow);
        }
    }

    [Fact]
    public void The_nights_sentence_says_for_how_long()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("run", Shell.ColdSnap, "--full"));
        string text = string.Join(' ', shell.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Matches("the cylinder could give [0-9,]+ BTU/h for 4 h, [0-9,]+ BTU/h all night and (only )?[0-9,]+ BTU/h without end with its liquid at", text);
        Assert.DoesNotContain("keep giving", text, StringComparison.Ordinal);
    }
}
