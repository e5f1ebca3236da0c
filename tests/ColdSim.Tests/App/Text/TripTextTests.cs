using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Trips;
using ColdSim.Tests.Model.Appliances;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.App.Text;

public class TripTextTests
{
    [Fact]
    public void A_trip_reports_who_drew_what_gas_and_what_water_froze_as_a_run_does()
    {
        TripReport trip = TripRun.Of(Scenario(Everything.Rig, Steady(-14, 30), nights: 1));
        IReadOnlyList<TextSection> sections = TripText.Sections(trip, UnitStyle.Us, []), run = RunText.Sections(trip.Run, UnitStyle.Us, []);
        foreach (string title in (string[])["Who drew what gas", "Water"])
            Assert.Equal(run.Single(s => s.Title == title).Lines, sections.Single(s => s.Title == title).Lines);
        Assert.DoesNotContain(sections, s => s.Title == "The 12 V side");
    }

    [Fact]
    public void A_trip_with_a_battery_reports_the_12_V_side_night_by_night()
    {
        TripReport trip = TripRun.Of(Planning.Explain.Explained.Flat.Report.Scenario);
        TextSection power = TripText.Sections(trip, UnitStyle.Us, []).Single(s => s.Title == "The 12 V side");
        Assert.Equal(RunText.Sections(trip.Run, UnitStyle.Us, []).Single(s => s.Title == "The 12 V side").Lines, power.Lines);
    }

    [Fact]
    public void A_trip_reports_a_blend_as_a_run_does()
    {
        TripReport trip = TripRun.Of(Scenario(Heated() with { Gas = Model.Blends.Winter }, Steady(-5, 30), nights: 1));
        IReadOnlyList<TextSection> sections = TripText.Sections(trip, UnitStyle.Us, []), run = RunText.Sections(trip.Run, UnitStyle.Us, []);
        Assert.Equal(run.Single(s => s.Title == "The gas").Lines, sections.Single(s => s.Title == "The gas").Lines);
    }

    [Fact]
    public void A_trip_with_a_furnace_and_plain_draws_alone_has_none_of_these_parts()
        => Assert.Empty(RigSections.Of(FortnightStoryTests.Story.Value.Run, UnitStyle.Us));
}
