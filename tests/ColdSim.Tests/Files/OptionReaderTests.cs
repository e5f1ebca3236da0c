using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using Xunit;

namespace ColdSim.Tests.Files;

public class OptionReaderTests
{
    // 15 lines; what a test adds begins in line 16.
    private const string Rig = """
        [weather]
        file = "w.csv"
        [cylinder]
        size = "20 lb"
        left = "15 lb"
        [furnace]
        input = "4 kW"
        [thermostat]
        night = "16 °C"
        [coach]
        heat_loss = "90 W/K"
        length = "6 m"
        [[draw]]
        name = "lamp"
        rate = "500 W"
        """;

    [Fact]
    public void An_option_is_the_scenario_with_its_keys()
    {
        ReadResult read = Good("""
            [[option]]
            name = "cooler and larger"
            [option.set]
            "cylinder.size" = "30 lb"
            "thermostat.night" = "55 °F"
            "cylinder.surroundings.wind_exposure" = 1
            """);
        ComparedOption option = Assert.Single(read.Options);
        Scenario plain = read.Scenario!, other = option.Scenario;
        Assert.Equal("cooler and larger", option.Name);
        Assert.Equal(286, other.Rig.Thermostat!.NightSetPoint_K, 0.1);
        Assert.Equal("30 lb", other.Rig.Cylinders[0].Name);
        Assert.Equal(plain.Rig.Cylinders[0].Contents_kg, other.Rig.Cylinders[0].Contents_kg);
        Assert.Equal(1, other.Rig.Cylinders[0].Surroundings.WindExposure_frac);
        Assert.Equal(289.15, plain.Rig.Thermostat!.NightSetPoint_K, 9);
        Assert.Equal(0.3, plain.Rig.Cylinders[0].Surroundings.WindExposure_frac);
        Assert.Equal(plain.Rig.Furnace, other.Rig.Furnace);
        Assert.Equal((plain.Start, plain.Nights, plain.Criteria), (other.Start, other.Nights, other.Criteria));
    }

    [Theory]
    [InlineData("[option.set]\n\"draw.1.rate\" = \"800 W\"")]
    [InlineData("[option.set]\n\"draw.lamp.rate\" = \"800 W\"")]
    [InlineData("[option.set]\ndraw.lamp.rate = \"800 W\"")]
    [InlineData("[option.set.draw.Lamp]\nrate = \"800 W\"")]
    [InlineData("set = { \"draw.1\" = { rate = \"800 W\" } }")]
    public void One_of_several_tables_is_meant_by_number_or_by_name(string set)
        => Assert.Equal(800, Assert.Single(Good($"[[option]]\nname = \"bright\"\n{set}").Options[0].Scenario.Rig.Appliances).Input_W, 6);

    [Fact]
    public void A_list_may_be_emptied()
        => Assert.Empty(Good("[[option]]\nname = \"dark\"\n[option.set]\ndraw = []").Options[0].Scenario.Rig.Appliances);

    [Fact]
    public void A_list_may_be_written_anew()
    {
        Scenario other = Good("[[option]]\nname = \"warm\"\n[option.set]\nheater = [{ runs_on = \"shore\", output = \"1,500 W\" }]\ndraw = [{ rate = \"1 W\" }, { rate = \"2 W\" }]").Options[0].Scenario;
        Assert.Equal(1500, Assert.Single(other.Rig.Heaters).Output_W, 6);
        Assert.Equal(["draw 1", "draw 2"], other.Rig.Appliances.Select(a => a.Name));
    }

    [Fact]
    public void A_part_of_the_legal_filling_goes_with_the_size()
    {
        ReadResult read = Good("[[option]]\nname = \"a\"\n[option.set]\n\"cylinder.size\" = \"40 lb\"", Rig.Replace("15 lb", "3/4", StringComparison.Ordinal));
        CylinderSpecification larger = read.Options[0].Scenario.Rig.Cylinders[0];
        Assert.Equal(StandardSize.Find("40 lb")!.LegalFill_kg * 0.75, larger.Contents_kg, 12);
    }

    [Fact]
    public void Another_size_leaves_nothing_of_the_old_cylinders_plate()
    {
        string plate = Rig.Replace("size = \"20 lb\"", "water_capacity = \"30 L\"\ndiameter = \"30 cm\"\ntare = \"14 kg\"", StringComparison.Ordinal);
        CylinderSpecification standard = Good("[[option]]\nname = \"a\"\n[option.set]\n\"cylinder.size\" = \"40 lb\"", plate).Options[0].Scenario.Rig.Cylinders[0];
        StandardSize forty = StandardSize.Find("40 lb")!;
        Assert.Equal((forty.Name, forty.Tare_kg, forty.OutsideDiameter_m), (standard.Name, standard.Tare_kg, standard.OutsideDiameter_m));
        CylinderSpecification stamped = Good(
            "[[option]]\nname = \"a\"\n[option.set]\n\"cylinder.water_capacity\" = \"30 L\"\n\"cylinder.diameter\" = \"30 cm\"").Options[0].Scenario.Rig.Cylinders[0];
        Assert.Equal(0.030, stamped.Volume_m3, 12);
    }

    [Fact]
    public void What_an_option_adds_is_warned_of_with_its_name_and_the_bases_own_once()
    {
        ReadResult read = Good("[[option]]\nname = \"brim\"\n[option.set]\n\"cylinder.left\" = 1.1\n[run]\nnights = 9");
        Assert.Equal(
            [
                "run: the weather ends on 2025-01-14T21:00-07:00, before night 9 does",
                "option 'brim': cylinder: 9.98 kg is more than the legal filling of 9.07 kg",
            ],
            read.Warnings);
    }

    [Theory]
    [InlineData("\"cylinder.sise\" = \"30 lb\"", "s.toml:19:1: option 'x': unknown key 'sise' in [cylinder]; did you mean 'size'?")]
    [InlineData("\"cilinder.size\" = \"30 lb\"", "s.toml:19:1: option 'x': unknown table [cilinder]; did you mean 'cylinder'?")]
    [InlineData("\"cylinder.size\" = \"31 kb\"", "s.toml:19:19: option 'x': no common size is called \"31 kb\"; accepted: 5 lb, 10 lb, 20 lb, 30 lb, 40 lb, 100 lb, 5 kg, 6 kg, 10 kg, 11 kg, 33 kg, 5.9 gal, 10 gal, 15 gal, 20 gal, 25 gal, 30 gal, 41 gal, or water_capacity with diameter")]
    [InlineData("\"cylinder.size\" = \"10 lb\"", "s.toml:19:1: option 'x': 6.8 kg of propane does not fit a water capacity of 10.8 kg; accepted: up to 5.94 kg, legally 4.53 kg")]
    [InlineData("\"thermostat.night\" = \"60 psi\"", "s.toml:19:22: option 'x': 'night': 'psi' is not a unit of temperature; accepted for temperature: °C, °F, K")]
    [InlineData("\"thermostat.night\" = 60", "s.toml:19:22: option 'x': 'night' is 60 without a unit; write \"60 °F\"; accepted: \"0 °C\" to \"35 °C\"")]
    [InlineData("\"coach.grade\" = \"good\"", "s.toml:19:1: option 'x': [coach] says in more than one way how it loses heat; accepted: one of heat_loss (measured), [[coach.surface]], or length with grade")]
    [InlineData("\"coach.skirting.area\" = \"9 m²\"", "s.toml:19:1: option 'x': skirting without a floor; accepted: a [[coach.surface]] of kind = \"floor\"", "s.toml:19:1: option 'x': skirting needs the floor as a [[coach.surface]]; another heat loss already holds it")]
    [InlineData("\"regulator.droop\" = \"14 inH2O\"\n\"people.awake\" = [\"25:00-26:00\"]", "s.toml:19:21: option 'x': 'droop' is 14 inH2O; accepted: \"10 Pa\" to \"2 kPa\"", "s.toml:20:19: option 'x': 'awake' is \"25:00-26:00\"; accepted: a span such as \"22:00-06:30\"")]
    [InlineData("\"draw.rate\" = \"1 kW\"", "s.toml:19:1: option 'x': 'draw.rate' does not say which [[draw]] is meant; write \"draw.1.rate\", or by name: lamp")]
    [InlineData("\"draw.lump.rate\" = \"1 kW\"", "s.toml:19:1: option 'x': 'draw.lump.rate' does not say which [[draw]] is meant; write \"draw.1.rate\", or by name: lamp; did you mean 'lamp'?")]
    [InlineData("\"draw.2.rate\" = \"1 kW\"", "s.toml:19:1: option 'x': 'draw.2.rate': the scenario has 1 [[draw]], and an option adds none; write \"draw.1.rate\", or by name: lamp")]
    [InlineData("\"cylinder.left.part\" = 1", "s.toml:19:1: option 'x': 'cylinder.left.part': 'cylinder.left' is no table in the scenario")]
    [InlineData("\"cylinder\" = \"40 lb\"", "s.toml:19:1: option 'x': the scenario has no [cylinder]", "s.toml:19:14: option 'x': 'cylinder' is a text; accepted: a table [cylinder]")]
    [InlineData("\"run.nights\" = 3", "s.toml:19:1: an option may not change 'run'; all options have the scenario's own nights, weather file and verdict")]
    [InlineData("\"weather.file\" = \"x.csv\"", "s.toml:19:1: an option may not change 'weather.file'; all options have the scenario's own nights, weather file and verdict")]
    [InlineData("\"cylinder.left\" = 1\ncylinder.left = 0.5", "s.toml:20:10: key 'cylinder.left' is given twice; it is first given in line 19")]
    [InlineData("", "s.toml:18:1: the option changes nothing; accepted: a table [option.set] of keys such as \"cylinder.size\" = \"40 lb\"")]
    public void A_fault_is_reported_at_the_options_own_line(string set, params string[] expected)
        => Assert.Equal(expected, Fixtures.Faults($"{Rig}\n[[option]]\nname = \"x\"\n[option.set]\n{set}"));

    [Theory]
    [InlineData("[[option]]\n[option.set]\n\"cylinder.left\" = 1", "s.toml:16:1: [option] lacks 'name'; accepted: a text in quotes, the option's name in the table")]
    [InlineData("[[option]]\nname = \"x\"", "s.toml:16:1: [option] lacks 'set'; accepted: a table [option.set] of keys such as \"cylinder.size\" = \"40 lb\"")]
    [InlineData("[[option]]\nname = \"x\"\nset = 1", "s.toml:18:7: 'set' is a number; accepted: a table [option.set] of keys such as \"cylinder.size\" = \"40 lb\"")]
    [InlineData("[[option]]\nname = \"x\"\nsat = 1\n[option.set]\n\"cylinder.left\" = 1", "s.toml:18:1: unknown key 'sat' in [option]; did you mean 'set'?")]
    [InlineData("[[option]]\nname = \" \"\n[option.set]\n\"cylinder.left\" = 1", "s.toml:17:8: 'name' is empty, too long or more than a line; accepted: a text of 1 to 60 characters")]
    [InlineData("[[option]]\nname = \"As it is\"\n[option.set]\n\"cylinder.left\" = 1", "s.toml:17:8: 'name' is \"As it is\", which is what the scenario without changes is called")]
    [InlineData("[option]\nname = \"x\"", "s.toml:16:1: 'option' is a table; accepted: tables [[option]]")]
    public void A_fault_of_the_option_itself_is_reported_with_its_place(string option, string expected)
        => Assert.Equal([expected], Fixtures.Faults($"{Rig}\n{option}"));

    [Fact]
    public void All_faults_of_all_options_are_reported_at_once_and_the_bases_only_once()
        => Assert.Equal(
            [
                "s.toml:7:9: 'input': 'mph' is not a unit of power; accepted for power: W, kW, BTU/h, kBTU/h",
                "s.toml:19:1: option 'a': unknown key 'lefft' in [cylinder]; did you mean 'left'?",
                "s.toml:21:8: 'name' is \"A\", and another option is called so; it is first given in line 17",
                "s.toml:23:19: option 'without a name': 'left' is 3; write \"3 lb\" or \"3 kg\"; accepted: 0 % to 130 %",
            ],
            Fixtures.Faults(Rig.Replace("4 kW", "4 mph", StringComparison.Ordinal)
                + "\n[[option]]\nname = \"a\"\n[option.set]\n\"cylinder.lefft\" = 1\n[[option]]\nname = \"A\"\n[option.set]\n\"cylinder.left\" = 3"));

    [Fact]
    public void Options_of_a_scenario_that_does_not_parse_are_still_checked()
        => Assert.Equal(
            [
                "s.toml:1:8: a key without '='; accepted: key = value, [table], # comment",
                "s.toml:9:1: option 'x': unknown key 'lefft' in [cylinder]; did you mean 'left'?",
            ],
            Fixtures.Faults($"weather\n{Fixtures.Least.Replace("[weather]", "[place]", StringComparison.Ordinal).Replace("file", "name", StringComparison.Ordinal)}\n[[option]]\nname = \"x\"\n[option.set]\n\"cylinder.lefft\" = 1"));

    [Fact]
    public void The_weather_is_read_once()
    {
        Counting source = new();
        string options = string.Concat(Enumerable.Range(1, 5).Select(i => $"\n[[option]]\nname = \"{i}\"\nset = {{ \"cylinder.left\" = 0.{i} }}"));
        Assert.Equal(5, ScenarioReader.ReadText(Rig + options, "s.toml", source).Options.Count);
        Assert.Equal(1, source.Opened);
    }

    private static ReadResult Good(string more, string rig = Rig)
    {
        ReadResult read = Fixtures.Read($"{rig}\n{more}");
        Assert.Empty(read.Problems);
        return read;
    }

    private sealed class Counting : IWeatherSource
    {
        public int Opened { get; private set; }

        public bool TryOpen(string file, out Stream? stream, out string shown)
        {
            Opened++;
            return new Fixtures.OneFile("w.csv", Fixtures.Weather).TryOpen(file, out stream, out shown);
        }
    }
}
