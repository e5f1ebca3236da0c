using System.Text;
using ColdSim.Files;
using ColdSim.Files.Scenarios;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>Each kind of fault, with its place and its words.</summary>
public class ScenarioFaultTests
{
    private const string Sizes = "accepted: 5 lb, 10 lb, 20 lb, 30 lb, 40 lb, 100 lb, 5 kg, 6 kg, 10 kg, 11 kg, 33 kg, 5.9 gal, 10 gal, 15 gal, 20 gal, 25 gal, 30 gal, 41 gal, or water_capacity with diameter";

    [Theory]
    [InlineData("left = \"80 %\"\nlefft = 1", "s.toml:6:1: unknown key 'lefft' in [cylinder]; did you mean 'left'?")]
    [InlineData("[regulater]", "s.toml:5:1: unknown table [regulater]; did you mean 'regulator'?")]
    [InlineData("[gas]\ncolour = 1", "s.toml:6:1: unknown key 'colour' in [gas]; accepted: by_liquid_volume, by_mass, currency, grade, heating_value, price")]
    [InlineData("diameter = 12", "s.toml:5:12: 'diameter' is 12 without a unit; write \"12 in\"; accepted: \"10 cm\" to \"3 m\"")]
    [InlineData("diameter = \"12\"", "s.toml:5:12: 'diameter': '12' has no unit; write \"12 ft\" or \"12 m\" or \"12 in\"; accepted for length: m, cm, mm, in, ft")]
    [InlineData("diameter = \"12 lb\"", "s.toml:5:12: 'diameter': 'lb' is not a unit of length; accepted for length: m, cm, mm, in, ft")]
    [InlineData("diameter = \"12 inn\"", "s.toml:5:12: 'diameter': unknown unit 'inn'; accepted for length: m, cm, mm, in, ft; did you mean 'in'?")]
    [InlineData("diameter = \"12,2 in\"", "s.toml:5:12: 'diameter': a decimal comma; write 12.2 in")]
    [InlineData("diameter = \"12 ft\"", "s.toml:5:12: 'diameter' is 12 ft; accepted: \"10 cm\" to \"3 m\"")]
    [InlineData("diameter = true", "s.toml:5:12: 'diameter' is true or false; accepted: a text with a unit, \"10 cm\" to \"3 m\"")]
    [InlineData("left = 1.4", "s.toml:5:8: 'left' is 1.4; accepted: 0 % to 130 %")]
    [InlineData("left = nan", "s.toml:5:8: 'left' is NaN; accepted: 0 % to 130 %")]
    [InlineData("left = \"plenty\"", "s.toml:5:8: 'left': 'plenty' does not begin with a number; accepted: a ratio such as 0.8, 80 % or 4/5")]
    [InlineData("left = \"30 lb\"", "s.toml:5:1: 13.61 kg of propane does not fit a water capacity of 21.59 kg; accepted: up to 11.88 kg, legally 9.07 kg")]
    [InlineData("orientation = \"uprigt\"", "s.toml:5:15: 'orientation' is \"uprigt\"; accepted: \"upright\", \"horizontal\"; did you mean 'upright'?")]
    [InlineData("orientation = 1", "s.toml:5:15: 'orientation' is the number 1; accepted: one of \"upright\", \"horizontal\"")]
    [InlineData("size = \"30 lb\"", "s.toml:5:1: key 'size' in [cylinder] is given twice; it is first given in line 4")]
    [InlineData("[weather]", "s.toml:5:1: [weather] is given twice; it is first given in line 1")]
    [InlineData("water_capacity = \"47.6 lb\"", "s.toml:5:1: 'size' already says the water capacity; accepted: size, or water_capacity with diameter")]
    [InlineData("diameter = \"45 cm\"", "s.toml:5:1: 21.59 L cannot be a cylinder of 450 mm diameter and 2.1 mm wall; accepted: for this volume up to about 435 mm, less and the heads alone hold more")]
    [InlineData("diameter = \"20 cm\"\nwall = \"30 mm\"", "s.toml:6:1: a wall of 30 mm is more than a tenth of the diameter of 200 mm; accepted: up to 20 mm for this diameter")]
    [InlineData("left = 20 lb", "s.toml:5:11: not TOML: Unexpected token found `lb` while expecting token `newline`; a value with a unit, and any other text, needs quotes: \"20 lb\"")]
    [InlineData("left = \"20 lb", "s.toml:5:13: a text without its closing quote")]
    [InlineData("left = ", "s.toml:5:8: no readable value after '='")]
    [InlineData("[furnace]\ninput = \"7 kW\"\n[coach]\nlength = \"7 m\"\ngrade = \"good\"", "s.toml:5:1: a furnace without a thermostat; accepted: [furnace] together with [coach] and [thermostat]")]
    [InlineData("[furnace]\ninput = \"7 kW\"\n[thermostat]", "s.toml:5:1: a furnace without a coach; accepted: [furnace] together with [coach] and [thermostat]")]
    [InlineData("[coach]\nlength = \"7 m\"", "s.toml:5:1: [coach] does not say how it loses heat; accepted: one of heat_loss (measured), [[coach.surface]], or length with grade")]
    [InlineData("[coach]\nlength = \"7 m\"\ngrade = \"good\"\nheat_loss = \"90 W/K\"", "s.toml:5:1: [coach] says in more than one way how it loses heat; accepted: one of heat_loss (measured), [[coach.surface]], or length with grade")]
    [InlineData("[coach]\nheat_loss = \"90 W/K\"", "s.toml:5:1: [coach] lacks 'length'; accepted: length (and width) for the floor area, or air_capacity, furnishings_capacity and coupling")]
    [InlineData("[[draw]]\nname = \"lamp\"", "s.toml:5:1: [draw] lacks 'rate'; accepted: heat such as \"1,500 BTU/h\", or mass such as \"0.1 lb/h\"")]
    [InlineData("[draw]\nrate = \"1 kW\"", "s.toml:5:1: 'draw' is a table; accepted: tables [[draw]]")]
    [InlineData("[run]\nnights = 2.5", "s.toml:6:10: 'nights' is 2.5; accepted: a whole number, 1 to 400")]
    [InlineData("[run]\nnights = 0", "s.toml:6:10: 'nights' is 0; accepted: 1 to 400")]
    [InlineData("[run]\nstart = 2025-01-14T15:00:00-07:00", "s.toml:6:1: the start 2025-01-14T15:00-07:00 lies outside the weather; accepted: from 2025-01-14T16:00-07:00 to before 2025-01-14T21:00-07:00")]
    [InlineData("[run]\nstart = \"tonight\"", "s.toml:6:9: 'start' is a text; accepted: a date and time with offset, without quotes, such as 2025-01-14T16:00:00-07:00")]
    [InlineData("[people]\nawake = [\"06:30-22:30\", \"25:00-26:00\"]", "s.toml:6:25: 'awake' is \"25:00-26:00\"; accepted: a span such as \"22:00-06:30\"")]
    [InlineData("[people]\nawake = \"07:00-07:00\"", "s.toml:6:9: 'awake' begins and ends at 07:00; accepted: a span such as \"22:00-06:30\"")]
    [InlineData("[verdict]\ndawn = \"7\"", "s.toml:6:8: 'dawn' is \"7\"; accepted: a time such as \"07:00\"")]
    [InlineData("[place]\nlatitude = 95\nlongitude = 7", "s.toml:6:12: 'latitude' is 95; accepted: -90 to 90")]
    [InlineData("[place]\nlatitude = 45", "s.toml:6:1: latitude and longitude belong together; accepted: both or neither")]
    [InlineData("[regulator]\ndroop = \"1 kPa\"\nset_point = \"1 kPa\"", "s.toml:6:1: the droop is not smaller than the set point")]
    [InlineData("[thermostat]\nday = \"20 K\"", "s.toml:6:7: 'day' is 20 K; accepted: \"0 °C\" to \"35 °C\"")]
    public void A_fault_is_reported_with_its_place(string more, string expected)
        => Assert.Equal([expected], Fixtures.Faults(Fixtures.Least + "\n" + more));

    [Theory]
    [InlineData("", "s.toml:1:1: the scenario has no [weather]", "s.toml:1:1: the scenario has no [cylinder]")]
    [InlineData("[weather]\n[cylinder]\n", "s.toml:1:1: [weather] lacks 'file'; accepted: the name of a weather file, or [[weather.day]] for each day", "s.toml:2:1: [cylinder] lacks 'size'; accepted: size, or water_capacity with diameter")]
    [InlineData("[weather]\nfile = \"x.csv\"\n[cylinder]\nsize = \"20 kb\"", "s.toml:2:8: the weather file 'x.csv' cannot be opened: there is no such file", "s.toml:4:8: no common size is called \"20 kb\"; " + Sizes)]
    [InlineData("[weather]\nfile = 3\n[cylinder]\nwater_capacity = \"20 L\"", "s.toml:2:8: 'file' is the number 3; accepted: a text in quotes", "s.toml:3:1: [cylinder] lacks 'diameter'; accepted: \"10 cm\" to \"3 m\"")]
    public void What_is_missing_is_reported_at_its_header(string scenario, string first, string second)
        => Assert.Equal([first, second], Fixtures.Faults(scenario));

    [Fact]
    public void Many_faults_are_reported_at_once_in_order_of_place()
        => Assert.Equal(
            [
                "s.toml:1:1: unknown key 'titel' at the top level; did you mean 'title'?",
                "s.toml:3:8: the weather file 'x.csv' cannot be opened: there is no such file",
                "s.toml:5:11: not TOML: Unexpected token found `lb` while expecting token `newline`; a value with a unit, and any other text, needs quotes: \"20 lb\"",
                "s.toml:6:8: 'left' is 200 %; accepted: 0 % to 130 %",
                "s.toml:7:9: a '[' without its ']'; accepted: key = value, [table], # comment",
                "s.toml:8:9: 'input': 'mph' is not a unit of power; accepted for power: W, kW, BTU/h, kBTU/h",
                "s.toml:9:9: 'tries' is 2.5; accepted: a whole number, 1 to 10",
                "s.toml:10:18: a text without its closing quote",
                "s.toml:13:1: key 'day' in [thermostat] is given twice; it is first given in line 12",
            ],
            Fixtures.Faults("""
                titel = "x"
                [weather]
                file = "x.csv"
                [cylinder]
                size = 20 lb
                left = "200 %"
                [furnace
                input = "7 mph"
                tries = 2.5
                altitude = "fixed
                [thermostat]
                day = "20 °C"
                day = "21 °C"
                """));

    [Fact]
    public void The_weather_files_faults_come_with_their_own_lines()
        => Assert.Equal(
            ["s.toml:5:8: 'left' is 2; write \"2 lb\" or \"2 kg\"; accepted: 0 % to 130 %", "w.csv:3:24: air [°C]: 'cold' is not a number; accepted: a number, or nothing where it is not known"],
            Fixtures.Faults(Fixtures.Least + "\nleft = 2", "time,air [°C]\n2025-01-14T16:00-07:00,-5\n2025-01-14T17:00-07:00,cold\n2025-01-14T18:00-07:00,-7\n"));

    [Fact]
    public void A_scenario_that_is_not_there_is_a_fault()
        => Assert.Equal("none.toml:1:1: the scenario cannot be opened: there is no such file", Assert.Single(ScenarioReader.Read("none.toml").Problems).ToString());

    [Fact]
    public void Nesting_without_end_is_a_fault()
        => Assert.StartsWith("s.toml:1:37: nested over 32 deep", Assert.Single(Fixtures.Faults("a = " + new string('[', 100_000))), StringComparison.Ordinal);

    [Fact]
    public void Damage_to_a_scenario_is_reported_and_never_thrown()
    {
        byte[] whole = Encoding.UTF8.GetBytes(string.Join('\n', ScenarioReaderTests.ExampleLines()));
        string weather = StarterScenario.WeatherText();
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte, Gen.Int[0, 2]).Array[1, 8].Sample(hits =>
        {
            List<byte> bytes = [.. whole];
            foreach ((int at, byte value, int kind) in hits)
            {
                int place = Math.Min(at, bytes.Count - 1);
                if (kind == 0)
                    bytes[place] = value;
                else if (kind == 1)
                    bytes.RemoveAt(place);
                else
                    bytes.Insert(place, value);
            }
            ReadResult result = ScenarioReader.ReadText(Encoding.UTF8.GetString([.. bytes]), "s.toml", new Fixtures.OneFile("weather.csv", weather));
            Assert.Equal(result.Problems.Count == 0, result.Scenario is not null);
        });
    }
}
