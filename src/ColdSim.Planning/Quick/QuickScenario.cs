using System.Globalization;
using ColdSim.Model;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Gas;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Quick;

/// <summary>Makes a scenario of one night from what is known at dusk.</summary>
public static class QuickScenario
{
    /// <summary>The scenario, with everything that was assumed listed in its assumptions.</summary>
    /// <param name="question">What is known.</param>
    public static Scenario Of(QuickQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        QuickNight night = question.Night;
        double inside_K = night.SetPoint_K ?? QuickQuestion.Inside_K;
        SiteSpecification site = new() { Elevation_m = question.Elevation_m ?? night.Elevation_m ?? 0 };
        return new()
        {
            Title = "Tonight",
            Start = night.Start,
            StartsNow = night.IsNow,
            Nights = 1,
            Weather = new WeatherSeries(night.Hours, night.Air, site),
            WeatherDefaults = night.Air,
            Rig = new Rig
            {
                Site = site,
                Gas = GasOf(question.Gas),
                Cylinders = [.. question.Cylinders.Select(c => Equipped(c, question))],
                Arrangement = question.Arrangement,
                Coach = night.AtStart(GradedCoach.Of(question.Grade ?? CoachGrade.Ordinary, question.CoachLength_m ?? QuickQuestion.Length_m)),
                Thermostat = new() { DaySetPoint_K = inside_K, NightSetPoint_K = inside_K },
                Furnace = new() { Input_W = question.Furnace_W },
            },
            Assumptions = AssumptionsOf(question),
        };
    }

    private static GasSpecification GasOf(GasGrade grade)
    {
        GasSpecification gas = new() { Name = grade.Name, Composition = grade.Composition };
        return gas.IsMixed ? gas with { HeatingValue_J_kg = GasBlend.Heat_J(gas.Composition) } : gas;
    }

    private static CylinderSpecification Equipped(CylinderSpecification cylinder, QuickQuestion question)
    {
        if (question.WindExposure_frac is { } shelter)
            cylinder = cylinder with { Surroundings = cylinder.Surroundings with { WindExposure_frac = shelter } };
        return question.Blanket_W is not { } power_W ? cylinder : cylinder with { Blanket = new BlanketSpecification { Power_W = power_W } };
    }

    // Names in plain words, in both unit systems, every value that was assumed.
    private static List<string> AssumptionsOf(QuickQuestion q)
    {
        List<string> assumed = [.. AssumedOfAir(q.Night)];
        if (q.WindExposure_frac is null)
            assumed.Add(Text($"cylinder sheltered to {100 * q.Cylinders[0].Surroundings.WindExposure_frac:0} % of that wind, seeing half the sky"));
        if (q.Gas.Composition != GasMasses.PurePropane)
            assumed.Add($"{q.Gas.Name}: {q.Gas.Meaning}");
        if (q.Blanket_W is not null)
            assumed.Add("each blanket powered all night, on below 50 °F (10 °C), around 70 % of the wall");
        if (q.CoachLength_m is null)
            assumed.Add(Text($"coach {QuickQuestion.Length_m / ConversionFactors.Foot_m:0} ft ({QuickQuestion.Length_m:0.0} m) long"));
        assumed.Add(HeatLoss(q.Grade ?? CoachGrade.Ordinary, q.Grade is null));
        if (q.Night.SetPoint_K is null)
            assumed.Add(Text($"thermostat at {QuickQuestion.Inside_K * 1.8 - ConversionFactors.ZeroFahrenheit_R:0} °F ({QuickQuestion.Inside_K - ConversionFactors.ZeroCelsius_K:0.0} °C) all night"));
        if (q.Elevation_m is null)
            assumed.Add(q.Night.Elevation_m is { } elevation_m ? Text($"elevation {elevation_m:0} m, as the weather file says") : "sea level");
        assumed.Add($"cylinder and air equally cold at the start{(q.Night.InsideAtStart_K is null ? "; coach warm, at the set point" : "")}");
        assumed.Add("somebody up from 06:30 to 22:30, who resets a locked-out furnace within 15 min; at night it tries again every hour");
        assumed.Add("furnace 77 % efficient; nothing else uses gas; two-stage regulator, 160,000 BTU/h (47 kW)");
        return assumed;
    }

    /// <summary>What is assumed of a night's air, in plain words.</summary>
    /// <param name="night">The night.</param>
    public static IReadOnlyList<string> AssumedOfAir(QuickNight night)
    {
        ArgumentNullException.ThrowIfNull(night);
        List<string> assumed = [];
        if (night.Rows is null)
        {
            if (night.High_K is null)
                assumed.Add($"afternoon high {Difference(QuickNight.Swing_K)} above the low");
            assumed.Add("air falling in half a cosine from the high at 15:00 to the low at 07:00, and rising likewise");
        }

        string unless = night.Rows is null ? "" : "where the weather does not say it: ";
        if (night.MastWind_m_s is null)
            assumed.Add(Text($"{unless}wind {QuickNight.Wind_m_s / ConversionFactors.MilePerHour_m_s:0} mph ({QuickNight.Wind_m_s:0.#} m/s)"));
        assumed.Add($"{unless}clear sky all night, 75 % relative humidity, no sun");
        return assumed;
    }

    private static string HeatLoss(CoachGrade grade, bool taken)
    {
        double si = GradedCoach.HeatLoss_W_mK(grade);
        double us = si * ConversionFactors.Foot_m / (ConversionFactors.BtuPerHour_W * 1.8);
        string word = grade.ToString().ToLowerInvariant();
        return Text($"{(taken ? $"{word} coach" : $"{word} coach means")}: heat loss {us:0.0} BTU/h per °F per ft ({si:0} W/K per m), ")
            + "computed for typical builds, within 30 % either way";
    }

    private static string Difference(double kelvin) => Text($"{kelvin * 1.8:0} °F ({kelvin:0} °C)");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
