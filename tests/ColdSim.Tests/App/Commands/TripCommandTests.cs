using ColdSim.App.Commands;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
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
        Shell shell = new() { Parts = Shell.AlgebraicState with { ReadScenario = _ => new(trip, [], []) } };
        Assert.Equal(0, shell.Run("check", Shell.AnyFile, "--units", "si"));
        string told = string.Join(' ', shell.Out.Split('\n', StringSplitOptions.TrimEntries));
        Assert.Contains("1 Gull Flat, Tue 12 Jan 16:00 to Wed 13 Jan 10:00, at its coldest there -10.0 °C; its weather from Tue 12 Jan 16:00 to Fri 22 Jan 16:00.", told, StringComparison.Ordinal);
        Assert.Contains("2 Sedge Gap, Wed 13 Jan 16:00 to Thu 14 Jan 12:00, at its coldest there -20.0 °C;", told, StringComparison.Ordinal);
    }

    private static Shell Telling(TripReport report, Action? before = null) => new()
    {
        Parts = Shell.AlgebraicState with
        {
            RunTrip = (_, _, _) =>
            {
                before?.Invoke();
                return report;
            },
        },
    };

    [Fact]
    public void The_fortnight_in_us_units() => Snapshot.Match(Printed(FortnightStoryTests.Story.Value));

    [Fact]
    public void The_fortnight_in_si_units() => Snapshot.Match(Printed(FortnightStoryTests.Story.Value, "--units", "si"));

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
        TripReport dry = TripRun.Of(SomeTrips.Of(SomeTrips.ByHand(0.02), [SomeTrips.Stop("a", 0, 20)]));
        Assert.Equal(0, Telling(dry).Run("trip", Shell.AnyFile));
        Assert.Equal(1, Telling(dry).Run("trip", Shell.AnyFile, "--fail-if-short"));
        Assert.Equal(0, Telling(FortnightStoryTests.Story.Value).Run("trip", Shell.AnyFile, "--fail-if-short"));
        Assert.StartsWith("0 of 1 nights hold, ", TripSentence.Of(dry, UnitStyle.Us), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_all_there_is_on_standard_output()
    {
        Shell shell = Telling(FortnightStoryTests.Story.Value);
        Assert.Equal(0, shell.Run("trip", Shell.AnyFile, "--json"));
        Assert.Equal(Shell.Document, shell.Out);
        Assert.Contains("assumed: ", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ledger_that_does_not_close_shows_nothing()
    {
        TripReport story = FortnightStoryTests.Story.Value;
        Shell shell = Telling(story with { Run = story.Run with { Ledger = new LedgerBalance(0, 2e-3, 0, 0, 0, 0, 0, 0) } });
        Assert.Equal(3, shell.Run("trip", Shell.AnyFile));
        Assert.Equal("", shell.Out);
        Assert.Contains("the ledger does not close", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_interrupted_trip_prints_nothing_and_leaves_no_file()
    {
        string folder = Directory.CreateTempSubdirectory("coldsim-").FullName;
        try
        {
            using CancellationTokenSource source = new();
            Shell shell = Telling(FortnightStoryTests.Story.Value, source.Cancel);
            Assert.Equal(130, await shell.RunAsync(["trip", Shell.AnyFile, "--csv", Path.Combine(folder, "n.csv")], source.Token));
            Assert.Equal("", shell.Out);
            Assert.Empty(Directory.GetFileSystemEntries(folder));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Other_nights_are_refused_where_stops_say_how_long_it_is()
    {
        Shell shell = new() { Parts = Shell.AlgebraicState with { ReadScenario = _ => new(FortnightStoryTests.Story.Value.Run.Scenario, [], []) } };
        Assert.Equal(2, shell.Run("run", Shell.AnyFile, "--nights", "2"));
        Assert.Contains("--nights: the stops and refills", shell.Error, StringComparison.Ordinal);
    }

    private static string Printed(TripReport report, params string[] more)
    {
        Shell shell = Telling(report);
        Assert.Equal(0, shell.Run(["trip", Shell.AnyFile, .. more]));
        Assert.All(shell.Out.Split('\n'), l => Assert.InRange(l.Length, 0, 80));
        return shell.Out;
    }
}
