using ColdSim.App.Screens.Tries;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using Xunit;

namespace ColdSim.Tests.App.Screens.Tries;

public class AdjustmentTests
{
    /// <summary>What a step of each adjustment of the demo writes.</summary>
    [Theory]
    [InlineData("low", 1, "weather.colder = \"-0.", "-21 °F")]
    [InlineData("low", -2, "weather.colder = \"", "-23 °F")]
    [InlineData("wind", 2, "weather.wind_factor = 1.", " mph")]
    [InlineData("day", -1, "thermostat.day = \"18.333 °C\"", "65 °F")]
    [InlineData("night", -3, "thermostat.night = \"13.333 °C\"", "56 °F")]
    [InlineData("loss", -2, "fit.heat_loss_factor = 0.9", "x 0.90")]
    [InlineData("fill", 1, "cylinder.left = \"12.7 kg\"", "28 lb (70 %)")]
    [InlineData("size", 1, "cylinder.size = \"100 lb\"\ncylinder.left = \"full\"", "100 lb")]
    [InlineData("number", 1, "cylinder.2.size = \"40 lb\"\ncylinder.2.surroundings.wind_exposure = 0.3\ncylinder.2.surroundings.sky_view = 0.3\ncylinder.2.surroundings.sun_exposure = 0.2\ncylinder.2.left = \"full\"\narrangement.kind = \"changeover\"", "2")]
    [InlineData("blanket", 1, "cylinder.blanket.power = \"100 W\"", "100 W")]
    [InlineData("battery", 1, "battery.chemistry = \"flooded\"\nbattery.capacity = \"100 Ah\"", "100 Ah")]
    [InlineData("draw.1.off", -1, "draw.1.off = true", "off")]
    public void A_step_writes_keys_of_the_scenario(string id, int steps, string keys, string shown)
    {
        using Bench bench = new();
        bench.Turn(id, steps);
        Assert.StartsWith(keys, string.Join('\n', bench.Changes.Select(c => $"{c.Key} = {c.Value}")), StringComparison.Ordinal);
        Assert.Contains(shown, bench.Try.Chosen.Shown(bench.Try.Place), StringComparison.Ordinal);
        Assert.Equal(bench.FromTheShell().Summary, bench.Page.Report.Summary);
    }

    [Fact]
    public void Cylinders_are_joined_and_blankets_timed_only_where_there_are_some()
    {
        using Bench bench = new();
        bench.Turn("joined");
        Assert.Equal("joined: one alone", bench.Try.Notice);
        bench.Turn("number").Turn("joined", -1);
        Assert.Contains(bench.Changes, c => c is { Key: "arrangement.kind", Value: "\"by hand\"" });
        bench.Turn("hours");
        Assert.Equal("blanket's hours: no blanket", bench.Try.Notice);
        bench.Turn("blanket").Turn("hours");
        Assert.Contains(bench.Changes, c => c is { Key: "cylinder.2.blanket.hours", Value: "[\"22:00-08:00\"]" });
        Assert.Equal(bench.FromTheShell().Summary, bench.Page.Report.Summary);
    }

    [Fact]
    public void What_is_typed_is_set_and_what_is_out_of_reach_is_refused_with_what_is_accepted()
    {
        using Bench bench = new();
        bench.Choose("night").Type("52").Send(new ColdSim.App.Screens.Pages.PageMessage.Choose());
        Assert.Equal("52 °F", bench.Try.Chosen.Shown(bench.Try.Place));
        bench.Type("150").Send(new ColdSim.App.Screens.Pages.PageMessage.Choose());
        Assert.StartsWith("accepted: 36 to ", bench.Try.Notice, StringComparison.Ordinal);
        Assert.Equal("52 °F", bench.Try.Chosen.Shown(bench.Try.Place));
        bench.Choose("low").Type("-5").Send(new ColdSim.App.Screens.Pages.PageMessage.Choose());
        Assert.Equal(-5, bench.Page.Report.Nights[1].OutsideLow.DegreesFahrenheit, 0.01);
    }

    [Fact]
    public void Undo_goes_back_step_by_step_and_reset_to_what_the_file_says()
    {
        using Bench bench = new();
        RunReport asItIs = bench.Page.Report;
        RunReport one = bench.Turn("night", -1).Page.Report;
        bench.Turn("day", -1).Send(new ColdSim.App.Screens.Pages.PageMessage.UndoTry());
        Assert.Equal(one.Summary, bench.Page.Report.Summary);
        bench.Send(new ColdSim.App.Screens.Pages.PageMessage.ResetTry());
        Assert.Same(asItIs, bench.Page.Report);
        Assert.Empty(bench.Changes);
        bench.Send(new ColdSim.App.Screens.Pages.PageMessage.UndoTry());
        Assert.Equal(one.Summary, bench.Page.Report.Summary);
    }

    [Theory]
    [InlineData("low")]
    [InlineData("number")]
    [InlineData("fill")]
    [InlineData("size")]
    public void Enter_finds_the_least_that_holds_and_a_step_less_does_not(string id)
    {
        using Bench bench = new();
        bench.Choose(id).Send(new ColdSim.App.Screens.Pages.PageMessage.Choose());
        if (bench.Try.Now.IsNone)
        {
            Assert.StartsWith("even ", bench.Try.Notice, StringComparison.Ordinal);
            return;
        }

        Assert.Equal(Verdict.Holds, bench.FromTheShell().Summary.Verdict);
        bench.Turn(id, bench.Try.Chosen.IsEasierHigh ? -1 : 1);
        Assert.NotEqual(Verdict.Holds, bench.FromTheShell().Summary.Verdict);
    }

    [Fact]
    public void A_try_that_the_file_could_not_hold_is_taken_back_and_says_why()
    {
        using Bench bench = new(edit: t => t + "\n[arrangement]\nnoticed_after = \"10 min\"\n");
        bench.Turn("number");
        Assert.True(bench.Try.Now.IsNone);
        Assert.Contains("'noticed_after' has no effect", bench.Try.Notice, StringComparison.Ordinal);
    }
}
