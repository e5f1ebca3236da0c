using System.Text.Json;
using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Trips;
using ColdSim.Tests.Planning.Trips;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class TripCommandTests
{
    [Fact]
    public void Check_shows_the_weather_of_every_stop()
    {
        Scenario trip = SomeTrips.Of([SomeTrips.Stop("Gull Flat", 0, 18), SomeTrips.Stop("Sedge Gap", 24, 44, -20)]);
        string told = string.Join(' ', Shell.Printed(CheckText.Sections(trip, UnitStyle.Si)).Split('\n', StringSplitOptions.TrimEntries));
        Assert.Contains("1 Gull Flat, Tue 12 Jan 16:00 to Wed 13 Jan 10:00, at its coldest -10 °C; weather from Tue 12 Jan 16:00 to Fri 22 Jan 16:00.", told, StringComparison.Ordinal);
        Assert.Contains("2 Sedge Gap, Wed 13 Jan 16:00 to Thu 14 Jan 12:00, at its coldest -20 °C;", told, StringComparison.Ordinal);
    }

    [Fact]
    public void The_fortnight_in_us_units() => Snapshot.Match(Printed(FortnightStoryTests.Story.Value));

    [Fact]
    public void The_fortnight_in_si_units() => Snapshot.Match(Printed(FortnightStoryTests.Story.Value, UnitStyle.Si));

    [Fact]
    public void A_refused_filling_is_said_in_the_table_the_sentence_and_the_cautions()
    {
        ColdSim.Model.Rig rig = SomeTrips.Pair() with
        {
            Cylinders = [.. SomeTrips.Pair().Cylinders.Select(c => c.Due(new DateOnly(2026, 12, 31)))],
        };
        string text = Printed(TripRun.Of(SomeTrips.Of(rig, [SomeTrips.Stop("Alder Flat", 0, 44)], SomeTrips.Fill(19))));
        text = string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("without a refill and 1 refused", text, StringComparison.Ordinal);
        Assert.Contains("may be filled only until 31 December 2026", text, StringComparison.Ordinal);
        Assert.Contains("no station may fill a cylinder past its requalification date", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Exit_code_is_a_failure_only_when_asked_and_only_where_a_night_does_not_hold()
    {
        Assert.Equal(0, new Shell().Run("trip", Shell.ColdSnap));
        Assert.Equal(1, new Shell().Run("trip", Shell.ColdSnap, "--fail-if-short"));
        Assert.Equal(0, new Shell().Run("trip", Shell.Demo("changeover.toml"), "--fail-if-short"));
        TripReport dry = TripRun.Of(SomeTrips.Of(SomeTrips.ByHand(0.02), [SomeTrips.Stop("a", 0, 20)]));
        Assert.StartsWith("0 of 1 nights hold, ", TripSentence.Of(dry, UnitStyle.Us), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_all_there_is_on_standard_output()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("trip", Shell.ColdSnap, "--json"));
        using JsonDocument document = JsonDocument.Parse(shell.Out);
        Assert.Contains("assumed: ", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_nights_are_refused_where_stops_say_how_long_it_is()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("run", Shell.Demo("fortnight.toml"), "--nights", "2"));
        Assert.Contains("--nights: the stops and refills", shell.Error, StringComparison.Ordinal);
    }

    private static string Printed(TripReport report, UnitStyle? units = null)
    {
        string printed = Shell.Printed(TripText.Sections(report, units ?? UnitStyle.Us, ["An invented caution."]));
        Assert.All(printed.Split('\n'), l => Assert.InRange(l.Length, 0, 80));
        return printed;
    }
}
