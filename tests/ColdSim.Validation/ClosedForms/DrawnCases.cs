using System.Globalization;
using System.Text;

namespace ColdSim.Validation.ClosedForms;

/// <summary>The hundred cases in constant weather: twenty-five of each kind, drawn once with a fixed seed and kept as scenario files.</summary>
internal static class DrawnCases
{
    /// <summary>Cases of each kind.</summary>
    public const int OfEachKind = 25;

    /// <summary>The coldest and the warmest outside air that is drawn, whole degrees. [°C]</summary>
    private const int Coldest_C = -30, Warmest_C = 10;

    /// <summary>Names of a kind's files, below the folder of scenarios.</summary>
    public static IEnumerable<string> Files(string kind)
        => Enumerable.Range(1, OfEachKind).Select(i => string.Create(CultureInfo.InvariantCulture, $"closed-forms/{kind}-{i:00}.toml"));

    /// <summary>Every file with its text, as the seed gives it.</summary>
    public static IEnumerable<(string File, string Text)> All()
    {
        for (int air_C = Coldest_C; air_C <= Warmest_C; air_C++)
            yield return ($"closed-forms/{Weather(air_C)}", Constant(air_C));
        // A fixed seed: the framework keeps the numbers of a seeded generator from version to version.
        Random random = new(20270101);
        foreach ((string kind, Func<Random, int, string> text) in new (string, Func<Random, int, string>)[]
            { ("draw", Draw), ("cooling", Cooling), ("duty", Duty), ("week", Week) })
        {
            int number = 0;
            foreach (string file in Files(kind)) yield return (file, text(random, ++number));
        }
    }

    private static string Weather(int air_C) => string.Create(CultureInfo.InvariantCulture, $"air{air_C:+00;-00;+00}.csv");

    private static string Constant(int air_C)
    {
        StringBuilder text = new("# The same air all the time.\ntime,air [°C],wind [m/s]\n");
        foreach (string day in (string[])["01", "10"])
            text.Append(CultureInfo.InvariantCulture, $"2027-01-{day}T00:00-07:00,{air_C},2\n");
        return text.ToString();
    }

    // Rounded to a few digits as somebody would write them.
    private static double Between(Random random, double low, double high, int digits = 2) => Math.Round(low + (high - low) * random.NextDouble(), digits);

    private static string Head(string title, int air_C, int nights) => string.Create(CultureInfo.InvariantCulture, $"""
        title = "{title}"

        [weather]
        file = "{Weather(air_C)}"
        bridge = "31 d"

        [run]
        start = 2027-01-02T12:00:00-07:00
        nights = {nights}

        """);

    // Vapour is drawn evenly for a night from a vessel with one fixed conductance; pressure stays high enough to feed the draw.
    private static string Draw(Random random, int number)
    {
        int air_C = random.Next(-12, Warmest_C + 1);
        double litres = Between(random, 12, 110, 1), fill = Between(random, 0.5, 1), part = Between(random, 0.25, 0.55);
        double diameter_m = Between(random, 1.0, 1.2) * Math.Cbrt(litres / 1000);
        double draw_kg_h = part * fill * 0.42 * litres / 24;
        // Cooling below the air in the end, K, and the conductance that gives it at about 400 kJ/kg.
        double below_K = Between(random, 3, Math.Min(14, air_C + 26), 1), conductance = draw_kg_h / 3600 * 400e3 / below_K;
        return string.Create(CultureInfo.InvariantCulture, $"""
            {Head($"Draw {number}: an even draw with a fixed heat transfer", air_C, 1)}
            [cylinder]
            water_capacity = "{litres} L"
            diameter = "{diameter_m:0.000} m"
            metal_mass = "{Between(random, 0.28, 0.38) * litres:0.00} kg"
            left = "{100 * fill:0} %"

            [cylinder.surroundings]
            heat_transfer = "{conductance:0.000} W/K"

            [[draw]]
            name = "even draw"
            rate = "{1000 * draw_kg_h:0.0} g/h"

            """);
    }

    private static string Cylinder => """
        [cylinder]
        water_capacity = "2,000 L"
        diameter = "1.1 m"

        [cylinder.surroundings]
        heat_transfer = "500 W/K"


        """;

    private static string Coach(Random random, double start_C, double gains_W)
    {
        double floor_m2 = Between(random, 8, 22, 1);
        return string.Create(CultureInfo.InvariantCulture, $"""
            [coach]
            heat_loss = "{Between(random, 8, 16, 1) * floor_m2:0.0} W/K"
            air_capacity = "{Between(random, 10, 25, 1) * floor_m2:0.0} kJ/K"
            furnishings_capacity = "{Between(random, 40, 160, 0) * floor_m2:0} kJ/K"
            coupling = "{Between(random, 8, 40, 1) * floor_m2:0.0} W/K"
            gains = "{gains_W} W"
            solar_aperture = "0 m²"
            temperature = "{start_C} °C"

            """);
    }

    private static string Cooling(Random random, int number)
    {
        int air_C = random.Next(Coldest_C, Warmest_C + 1);
        return Head(string.Create(CultureInfo.InvariantCulture, $"Cooling {number}: a coach of two nodes without heat"), air_C, 1)
            + "\n" + Cylinder + Coach(random, Between(random, 14, 24, 1), Between(random, 0, 200, 0));
    }

    // Ideal control, so that the mean inside is the set point.
    private static string Duty(Random random, int number)
    {
        int air_C = random.Next(Coldest_C, 1);
        double set_C = Between(random, 14, 24, 1);
        return Head(string.Create(CultureInfo.InvariantCulture, $"Duty {number}: a furnace at a steady load"), air_C, 3)
            + "\n" + Cylinder + Furnace(random, set_C, ideal: true) + Coach(random, set_C, Between(random, 0, 200, 0));
    }

    private static string Week(Random random, int number)
    {
        int air_C = random.Next(Coldest_C, Warmest_C + 1);
        double set_C = Between(random, 14, 24, 1);
        string people = string.Create(CultureInfo.InvariantCulture, $"""
            [people]
            count = {random.Next(0, 4)}


            """);
        return Head(string.Create(CultureInfo.InvariantCulture, $"Week {number}: energy over seven nights"), air_C, 7)
            + "\n" + Cylinder + people + Furnace(random, set_C, ideal: false) + Coach(random, set_C, Between(random, 0, 200, 0));
    }

    private static string Furnace(Random random, double set_C, bool ideal) => string.Create(CultureInfo.InvariantCulture, $"""
        [furnace]
        input = "{Between(random, 19, 30, 1)} kW"
        efficiency = {Between(random, 0.7, 0.85)}
        fan_current = "0 A"
        {(ideal ? "pre_purge = \"0 s\"\n" : "")}
        [thermostat]
        day = "{set_C} °C"
        night = "{set_C} °C"
        {(ideal ? "differential = \"0.2 K\"\nsensor_lag = \"0 s\"\nminimum_run = \"0 s\"\nminimum_off = \"0 s\"\n" : "")}

        """) + "[regulator]\nrated_flow = \"400 kW\"\nrated_inlet = \"30 psi\"\n\n";
}
