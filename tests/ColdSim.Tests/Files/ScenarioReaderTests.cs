using ColdSim.Files;
using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Furnace;
using ColdSim.Physics.Flow;
using ColdSim.Planning;
using Xunit;

namespace ColdSim.Tests.Files;

public class ScenarioReaderTests
{
    private const string Furnace = """

        [furnace]
        input = "25,000 BTU/h"
        [thermostat]
        """;

    /// <summary>The example on the page.</summary>
    public static IEnumerable<string> ExampleLines()
        => DocPage.Lines("scenario.md").SkipWhile(l => l != "```toml").Skip(1).TakeWhile(l => l != "```");

    /// <summary>The example of a trip on the page.</summary>
    public static IEnumerable<string> TripExampleLines()
        => DocPage.Lines("scenario.md").SkipWhile(l => l != "## Stops and refills").SkipWhile(l => l != "```toml").Skip(1).TakeWhile(l => l != "```");

    /// <summary>The example of appliances and water on the page.</summary>
    public static IEnumerable<string> AppliancesExampleLines()
        => DocPage.Lines("scenario.md").SkipWhile(l => l != "## Appliances and water").SkipWhile(l => l != "```toml").Skip(1).TakeWhile(l => l != "```");

    [Fact]
    public void The_examples_on_the_page_read()
    {
        foreach (IEnumerable<string> example in (IEnumerable<string>[])[ExampleLines(), TripExampleLines(), AppliancesExampleLines()])
        {
            ReadResult result = ScenarioReader.ReadText(
                string.Join('\n', example), "page", new Fixtures.OneFile("weather.csv", StarterScenario.WeatherText()));
            Assert.Empty(result.Problems);
            Assert.Empty(result.Warnings);
        }
    }

    [Fact]
    public void The_starter_reads_without_a_fault_or_a_warning_and_says_it_is_invented()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            string path = Path.Combine(folder, "trip.toml");
            string weather = Starter.Write(path);
            ReadResult result = ScenarioReader.Read(path);
            Assert.Empty(result.Problems);
            Assert.Empty(result.Warnings);
            Assert.Equal(Path.Combine(folder, "trip.weather.csv"), weather);
            Assert.StartsWith("# Invented", File.ReadAllText(weather), StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Values_arrive_in_si()
    {
        Scenario scenario = Good("""
            title = "A"
            [place]
            elevation = "5,000 ft"
            [weather]
            file = "w.csv"
            [run]
            start = 2025-01-14T17:30:00-07:00
            step = "30 s"
            [cylinder]
            size = "20 lb"
            left = "1/3"
            temperature = "-8 °F"
            [cylinder.surroundings]
            heat_transfer = "1.9 W/K"
            [furnace]
            input = "25,000 BTU/h"
            altitude = "code percentage"
            [thermostat]
            day = "68 °F"
            night_hours = "21:00-07:00"
            [people]
            count = 2
            [coach]
            heat_loss = "180 BTU/h·°F"
            length = "24 ft"
            gains = "60 W"
            [[draw]]
            rate = "0.1 lb/h"
            hours = "08:00-09:00"
            """);
        Rig rig = scenario.Rig;
        Assert.Equal("A", scenario.Title);
        Assert.Equal(1524, rig.Site.Elevation_m, 9);
        Assert.Equal(new DateTimeOffset(2025, 1, 14, 17, 30, 0, TimeSpan.FromHours(-7)), scenario.Start);
        Assert.Equal(30, scenario.Step_s);
        Assert.Equal(rig.Cylinders[0].LegalFill_kg / 3, rig.Cylinders[0].Contents_kg, 12);
        Assert.Equal(250.92777777, rig.Cylinders[0].InitialTemperature_K!.Value, 6);
        Assert.Equal(1.9, rig.Cylinders[0].Surroundings.FixedConductance_W_K);
        Assert.Equal(AltitudeRule.CodePercentage, rig.Furnace!.Altitude);
        Assert.Equal(293.15, rig.Thermostat!.DaySetPoint_K, 9);
        Assert.Equal(rig.Thermostat.DaySetPoint_K, rig.Thermostat.NightSetPoint_K);
        Assert.Equal(new ClockWindow(21 * 3600, 7 * 3600), rig.Thermostat.NightHours);
        Assert.Equal(94.95502668, Assert.Single(rig.Coach!.HeatLoss).Conductance_W_K, 6);
        Assert.Equal(0, rig.Coach.LeakageArea_cm2);
        Assert.Equal(210, rig.Coach.InternalGains_W);
        Assert.Equal(15e3 * 7.3152 * 2.4, rig.Coach.AirCapacity_J_K, 3);
        Assert.Equal(0.1 * 0.45359237 / 3600 * 50.33e6, Assert.Single(rig.Appliances).Input_W, 6);
        Assert.Equal(new ClockWindow(8 * 3600, 9 * 3600), Assert.Single(rig.Appliances[0].Hours));
    }

    [Fact]
    public void A_coach_adds_up_from_its_surfaces()
    {
        CoachSpecification coach = Coach("""
            [coach]
            shelter = "scattered"
            [[coach.surface]]
            kind = "wall"
            area = "30 m²"
            u = "1.2 W/m²K"
            [[coach.surface]]
            kind = "wall"
            area = "10 m²"
            u = "1.0 W/m²K"
            [[coach.surface]]
            kind = "floor"
            area = "17 m²"
            [[coach.surface]]
            kind = "window"
            panes = 2
            area = "4 m²"
            [[coach.slide_out]]
            seal_perimeter = "10 m"
            """);
        Assert.Equal(
            [new("walls", 46), new("floor", 0.9 * 17), new("windows, double glass", 4.2 * 4), new("slide-outs, seal", 4.0)],
            coach.HeatLoss);
        Assert.Equal((2 * 61) + (2 * 10), coach.LeakageArea_cm2);
        Assert.Equal(0.65 * 4, coach.SolarAperture_m2, 12);
        Assert.Equal(ShelterClass.AcrossTheRoad, coach.Shelter);
        Assert.Equal(80e3 * 17, coach.FurnishingsCapacity_J_K);
    }

    [Fact]
    public void Skirting_carries_the_same_heat_as_the_buffer_it_replaces()
    {
        CoachSpecification coach = Coach("""
            [coach]
            leakage_area = "0 cm²"
            [[coach.surface]]
            kind = "floor"
            area = "20 m²"
            u = "1 W/m²K"
            [coach.skirting]
            area = "10 m²"
            u = "3 W/m²K"
            ventilation = "5 W/K"
            ground = "0.75 W/m²K"
            ground_temperature = "2 °C"
            """);
        const double inside = 20, outside = -15, ground = 2;
        double buffer = ((20 * inside) + (35 * outside) + (15 * ground)) / 70;
        double loss = (Assert.Single(coach.HeatLoss).Conductance_W_K * (inside - outside)) + (coach.GroundConductance_W_K * (inside - ground));
        Assert.Equal(20 * (inside - buffer), loss, 9);
        Assert.Equal(275.15, coach.GroundTemperature_K, 9);
    }

    [Theory]
    [InlineData("good", 105)]
    [InlineData("ordinary", 140)]
    [InlineData("leaky", 182)]
    public void A_grade_is_a_heat_loss_per_metre(string grade, double watts)
        => Assert.Equal(watts, Assert.Single(Coach($"[coach]\nlength = \"7 m\"\ngrade = \"{grade}\"").HeatLoss).Conductance_W_K, 9);

    [Fact]
    public void A_cylinder_may_be_given_by_its_plate()
    {
        CylinderSpecification cylinder = Good("""
            [weather]
            file = "w.csv"
            [cylinder]
            water_capacity = "47.6 lb"
            diameter = "12.2 in"
            wall = "2.1 mm"
            left = "12 lb"
            """).Rig.Cylinders[0];
        StandardSize twenty = StandardSize.Find("20 lb")!;
        Assert.Equal(twenty.Volume_m3, cylinder.Volume_m3, 12);
        Assert.Equal(twenty.ShellMass_kg, cylinder.MetalMass_kg, 0.1);
        Assert.Equal(twenty.LegalFill_kg, cylinder.LegalFill_kg, 9);
        Assert.Equal(12 * 0.45359237, cylinder.Contents_kg, 9);
    }

    [Theory]
    [InlineData("", "", "50 % cloud")]
    [InlineData(",cloud [%]", ",25", "the file's cloud")]
    public void Panels_without_a_column_of_sun_have_a_clear_skys(string heading, string cell, string cloud)
    {
        const string panels = "\n[battery]\nchemistry = \"agm\"\ncapacity = \"100 Ah\"\n[solar]\nrated = \"200 W\"\n", place = "\n[place]\nlatitude = 40\nlongitude = -105\n";
        string[] lines = Fixtures.Weather.Split('\n', StringSplitOptions.TrimEntries);
        string weather = string.Join('\n', lines.Select((l, i) => l + (i == 0 ? heading : cell)));
        IReadOnlyList<string> assumed = Fixtures.Read(Fixtures.Least + panels + place, weather).Scenario!.Assumptions;
        Assert.Contains("sun: not in the weather file; assumed 0 W/m² on coach and cylinders", assumed);
        Assert.Contains($"panels: sun from a clear sky and {cloud}", assumed);
        Assert.Contains("sun: not in the weather file; assumed 0 W/m²", Fixtures.Read(Fixtures.Least + place, weather).Scenario!.Assumptions);

        // Where the sun stands is not known, so there is none on the panels either.
        Assert.Contains("sun: not in the weather file; assumed 0 W/m²", Fixtures.Read(Fixtures.Least + panels, weather).Scenario!.Assumptions);
    }

    [Fact]
    public void A_window_of_weather_that_ends_before_it_begins_is_refused()
        => Assert.Contains(
            "s.toml:3:1: 'from' lies after 'to', or at it",
            Fixtures.Faults(Fixtures.Least.ReplaceLineEndings("\n").Replace("file = \"w.csv\"\n", "file = \"w.csv\"\nfrom = 2025-01-15\nto = 2025-01-13\n", StringComparison.Ordinal)));

    [Fact]
    public void What_was_assumed_is_named()
    {
        IReadOnlyList<string> assumptions = Good(Fixtures.Least).Assumptions;
        Assert.Contains("wind: not in the weather file; assumed 2.0 m/s", assumptions);
        Assert.Contains("place: elevation not given; assumed sea level", assumptions);
        Assert.Contains("cylinder: left not given; assumed full, 9.07 kg", assumptions);
    }

    [Fact]
    public void A_given_value_is_not_listed_as_assumed()
    {
        IReadOnlyList<string> assumptions = Good("""
            [weather]
            file = "w.csv"
            [cylinder]
            size = "20 lb"
            left = "full"
            """, "time,air [°C],wind [m/s]\n2025-01-14T16:00-07:00,-5,1\n2025-01-14T17:00-07:00,-5,\n").Assumptions;
        Assert.Contains("w.csv: wind is empty in 1 rows; 0 filled in between their neighbours, 1 left to the stand-in", assumptions);
        Assert.Contains("wind: missing in 1 of 2 rows of weather, there assumed to be 2.0 m/s", assumptions);
        Assert.DoesNotContain(assumptions, a => a.Contains("left", StringComparison.Ordinal) && a.StartsWith("cylinder", StringComparison.Ordinal));
    }

    [Fact]
    public void An_overfilled_cylinder_and_short_weather_are_worth_a_warning()
    {
        ReadResult result = Fixtures.Read(Fixtures.Least + "\nleft = 1.1\n[run]\nnights = 3\n[[draw]]\nrate = \"1 kW\"");
        Assert.Equal(
            [
                "run: the weather ends on 2025-01-14T21:00-07:00, before night 3 does",
                "cylinder: 9.98 kg is more than the legal filling of 9.07 kg",
            ],
            result.Warnings);
    }

    [Fact]
    public void One_key_can_be_changed_and_the_rest_stays()
    {
        string text = Fixtures.Least + "   # the small one\n";
        string changed = ScenarioText.With(text, "cylinder.size", "\"30 lb\"");
        Assert.Equal(text.Replace("20 lb", "30 lb", StringComparison.Ordinal), changed);
        string added = ScenarioText.With(ScenarioText.With(changed, "cylinder.left", "0.5"), "run.nights", "1");
        Scenario scenario = Good(added);
        Assert.Equal(StandardSize.Find("30 lb")!.LegalFill_kg / 2, scenario.Rig.Cylinders[0].Contents_kg, 12);
        Assert.Equal(1, scenario.Nights);
        Assert.Contains("# the small one", added, StringComparison.Ordinal);
    }

    private static CoachSpecification Coach(string coach) => Good(Fixtures.Least + Furnace + "\n" + coach).Rig.Coach!;

    private static Scenario Good(string text, string weather = Fixtures.Weather)
    {
        ReadResult result = Fixtures.Read(text, weather);
        Assert.Empty(result.Problems);
        return result.Scenario!;
    }
}
