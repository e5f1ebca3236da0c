using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Electrical;
using ColdSim.Planning;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>What people write as they say it: understood, or answered with the line to write.</summary>
public class WrittenAsSaidTests
{
    private const string Heated = Fixtures.Least + "\n[thermostat]\n[coach]\nlength = \"7 m\"\ngrade = \"good\"\n";

    [Theory]
    [InlineData("30k", "'30k' has no unit; write \"30 kBTU/h\"; accepted for power: W, kW, BTU/h, kBTU/h")]
    [InlineData("30 K", "'30 K' has no unit; write \"30 kBTU/h\"; accepted for power: W, kW, BTU/h, kBTU/h")]
    [InlineData("30,000 BTU", "'BTU' is an amount of heat, and a rate is needed; write \"30,000 BTU/h\"")]
    [InlineData("30 kBTU", "'kBTU' is an amount of heat, and a rate is needed; write \"30 kBTU/h\"")]
    [InlineData("25000", "'25000' has no unit; write \"25000 BTU/h\"; accepted for power: W, kW, BTU/h, kBTU/h")]
    [InlineData("4", "'4' has no unit; write \"4 kW\"; accepted for power: W, kW, BTU/h, kBTU/h")]
    [InlineData("2,5 kW", "a decimal comma; write 2.5 kW")]
    public void A_power_without_its_unit_is_answered_with_the_text_to_write(string text, string expected)
        => Assert.Equal(expected, SiText.Read(text, Dimension.Power, out _)?.ToString());

    [Theory]
    [InlineData("62", Dimension.Temperature, "write \"62 °F\"; ")]
    [InlineData("-8", Dimension.Temperature, "write \"-8 °F\" or \"-8 °C\"; ")]
    [InlineData("24", Dimension.Length, "write \"24 ft\" or \"24 in\"; ")]
    [InlineData("11", Dimension.Mass, "write \"11 lb\" or \"11 kg\"; ")]
    [InlineData("9000", Dimension.Mass, "write it with its unit, such as \"20 lb\"; ")]
    public void A_bare_number_is_answered_with_the_units_that_it_may_have_been_meant_in(string text, Dimension dimension, string expected)
        => Assert.StartsWith(expected, SiText.Read(text, dimension, out _)?.Accepted, StringComparison.Ordinal);

    [Fact]
    public void A_bare_number_in_a_file_is_answered_with_the_line_to_write()
    {
        Assert.Equal(["s.toml:10:9: 'input' is 25000 without a unit; write \"25000 BTU/h\"; accepted: \"300 W\" to \"60 kW\""], Fixtures.Faults(Heated + "[furnace]\ninput = 25000"));
        Assert.Equal(["s.toml:5:8: 'left' is 12; write \"12 lb\" or \"12 kg\"; accepted: 0 % to 130 %"], Fixtures.Faults(Fixtures.Least + "\nleft = 12"));
    }

    [Theory]
    [InlineData("half", 0.5)]
    [InlineData("a half", 0.5)]
    [InlineData("Half full", 0.5)]
    [InlineData("a third", 1.0 / 3)]
    [InlineData("three-quarters", 0.75)]
    [InlineData("quarter", 0.25)]
    [InlineData("full", 1)]
    [InlineData("empty", 0)]
    public void A_part_may_be_said_in_a_word(string word, double part)
    {
        Assert.Null(SiText.Read(word, Dimension.Ratio, out double si));
        Assert.Equal(part, si);
        Assert.Equal(part * StandardSize.Find("20 lb")!.LegalFill_kg, Good(Fixtures.Least + $"\nleft = \"{word}\"").Rig.Cylinders[0].Contents_kg, 1e-9);
    }

    [Theory]
    [InlineData("lithium", BatteryChemistry.LithiumIronPhosphate)]
    [InlineData("LiFePO4", BatteryChemistry.LithiumIronPhosphate)]
    [InlineData("lifepo4", BatteryChemistry.LithiumIronPhosphate)]
    [InlineData("LFP", BatteryChemistry.LithiumIronPhosphate)]
    [InlineData("AGM", BatteryChemistry.Agm)]
    [InlineData("Gel", BatteryChemistry.Gel)]
    [InlineData("wet", BatteryChemistry.Flooded)]
    public void A_battery_may_be_called_what_its_case_says(string word, BatteryChemistry chemistry)
        => Assert.Equal(chemistry, Good(Heated + $"[furnace]\ninput = \"7 kW\"\n[battery]\nchemistry = \"{word}\"\ncapacity = \"200 Ah\"").Rig.Power!.Battery.Chemistry);

    [Fact]
    public void A_chemistry_that_is_none_of_them_is_answered_with_the_words()
        => Assert.Equal(["s.toml:12:13: 'chemistry' is \"nickel\"; accepted: \"flooded\", \"agm\", \"gel\", \"lithium iron phosphate\""],
            Fixtures.Faults(Heated + "[furnace]\ninput = \"7 kW\"\n[battery]\nchemistry = \"nickel\"\ncapacity = \"200 Ah\""));

    [Theory]
    [InlineData("Sun", DayOfWeek.Sunday)]
    [InlineData("sun.", DayOfWeek.Sunday)]
    [InlineData("Thurs", DayOfWeek.Thursday)]
    [InlineData("Sundays", DayOfWeek.Sunday)]
    [InlineData("Sunday", DayOfWeek.Sunday)]
    public void A_day_of_the_week_may_be_short(string word, DayOfWeek day)
        => Assert.Equal([day], Good(Fixtures.Least + $"\n[[refill]]\nat = 2025-01-14T17:00:00\nclosed = [\"{word}\"]").Trip!.Refills[0].Closed.Weekly);

    [Theory]
    [InlineData("Su")]
    [InlineData("sunny")]
    public void What_may_be_no_day_is_refused(string word)
        => Assert.Equal([$"s.toml:7:11: 'closed' is \"{word}\"; accepted: days such as \"Sunday\" or \"Sun\", and dates such as 2027-01-18"],
            Fixtures.Faults(Fixtures.Least + $"\n[[refill]]\nat = 2025-01-14T17:00:00\nclosed = [\"{word}\"]"));

    [Theory]
    [InlineData("$4.10/gal", "4.10 per gal")]
    [InlineData("$4.10 per gal", "4.10 per gal")]
    [InlineData("4.10 / gal", "4.10 per gal")]
    [InlineData("2.60 €/kg", "2.60 per kg")]
    public void A_price_may_be_written_as_on_the_sign(string written, string plain)
        => Assert.Equal(Good(Gas(plain)).Prices.Gas, Good(Gas(written)).Prices.Gas);

    [Theory]
    [InlineData("\"2,60/kg\"", "'price' is \"2,60/kg\": a decimal comma; write 2.60; accepted: ")]
    [InlineData("4.10", "'price' is 4.1, which does not say for how much gas; write \"4.1 per gal\" or \"4.1 per kg\"; accepted: ")]
    public void A_price_that_cannot_be_read_says_why(string written, string expected)
        => Assert.StartsWith("s.toml:6:9: " + expected, Assert.Single(Fixtures.Faults($"{Fixtures.Least}\n[gas]\nprice = {written}")), StringComparison.Ordinal);

    [Fact]
    public void A_count_of_cylinders_is_answered_with_the_tables_to_write()
        => Assert.Equal(["s.toml:4:8: \"2x20 lb\" is 2 cylinders in one table; write a table [[cylinder]] with size = \"20 lb\" for each"],
            Fixtures.Faults(Fixtures.Least.Replace("20 lb", "2x20 lb", StringComparison.Ordinal)));

    [Theory]
    [InlineData("[[cylinder]]", "s.toml:5:1: [[cylinder]] in line 5 and [cylinder] in line 3; of several each is [[cylinder]]: write [[cylinder]] in line 3")]
    [InlineData("[cylinder]", "s.toml:5:1: [cylinder] is given twice; for several write [[cylinder]], in line 3 and here")]
    public void A_second_cylinder_beside_a_single_one_is_answered_with_the_brackets(string header, string expected)
        => Assert.Contains(expected, Fixtures.Faults(Fixtures.Least + $"\n{header}\nsize = \"30 lb\""));

    [Fact]
    public void A_single_cylinder_after_several_is_answered_with_the_brackets()
        => Assert.Contains("s.toml:5:1: [[cylinder]] in line 3 and [cylinder] in line 5; of several each is [[cylinder]]: write [[cylinder]] in line 5",
            Fixtures.Faults(Fixtures.Least.Replace("[cylinder]", "[[cylinder]]", StringComparison.Ordinal) + "\n[cylinder]\nsize = \"30 lb\""));

    [Fact]
    public void Beside_a_second_cylinder_the_plain_key_is_the_firsts()
    {
        const string set = "\n[[option]]\nname = \"two\"\n[option.set]\n\"cylinder.size\" = \"40 lb\"\n\"cylinder.2.size\" = \"30 lb\"\n\"arrangement.kind\" = \"together\"\n";
        foreach (string header in (string[])["[cylinder]", "[[cylinder]]"])
        {
            ReadResult read = Fixtures.Read(Fixtures.Least.Replace("[cylinder]", header, StringComparison.Ordinal) + set);
            Assert.Empty(read.Problems);
            Assert.Equal(["40 lb", "30 lb"], read.Options[0].Scenario.Rig.Cylinders.Select(c => c.Name));
        }
    }

    [Fact]
    public void Of_several_cylinders_the_key_to_write_is_named()
        => Assert.Contains("'cylinder.size' does not say which [[cylinder]] is meant; write \"cylinder.1.size\" to \"cylinder.2.size\"",
            Assert.Single(Fixtures.Faults(Fixtures.Least.Replace("[cylinder]", "[[cylinder]]", StringComparison.Ordinal)
                + "\n[[cylinder]]\nsize = \"20 lb\"\n[[option]]\nname = \"x\"\n[option.set]\n\"cylinder.size\" = \"30 lb\"")), StringComparison.Ordinal);

    [Fact]
    public void A_decimal_comma_is_explained_where_a_plain_number_is_wanted()
        => Assert.Contains(Fixtures.Faults(Fixtures.Least + "\n[place]\nlatitude = 45,5\nlongitude = 7"), f => f.EndsWith("a decimal comma; write 45.5", StringComparison.Ordinal));

    private static string Gas(string price) => $"{Fixtures.Least}\n[gas]\nprice = \"{price}\"";

    private static Scenario Good(string text)
    {
        ReadResult read = Fixtures.Read(text);
        Assert.Empty(read.Problems);
        return read.Scenario!;
    }
}
