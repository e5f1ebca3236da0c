using System.Globalization;
using ColdSim.Model;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Quick;

/// <summary>Makes a scenario of one night from what is known at dusk.</summary>
public static class QuickScenario
{
    private const double Humidity_frac = 0.75;

    /// <summary>The scenario, with everything that was assumed listed in its assumptions.</summary>
    /// <param name="question">What is known.</param>
    public static Scenario Of(QuickQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        double high_K = question.High_K ?? question.Low_K + QuickQuestion.Swing_K;
        double inside_K = question.SetPoint_K ?? QuickQuestion.Inside_K;
        SiteSpecification site = new() { Elevation_m = question.Elevation_m ?? 0 };
        WeatherDefaults weather = new()
        {
            Wind_m_s = question.MastWind_m_s ?? QuickQuestion.Wind_m_s,
            RelativeHumidity_frac = Humidity_frac,
            Cloud_frac = 0,
            Sun_W_m2 = 0,
        };
        return new()
        {
            Title = "Tonight",
            Start = Start(question),
            Nights = 1,
            Weather = new WeatherSeries(NightShape.Rows(question.Noon, question.Low_K, high_K), weather, site),
            Rig = new Rig
            {
                Site = site,
                Cylinders = [Sheltered(question)],
                Coach = GradedCoach.Of(question.Grade ?? CoachGrade.Ordinary, question.CoachLength_m ?? QuickQuestion.Length_m),
                Thermostat = new() { DaySetPoint_K = inside_K, NightSetPoint_K = inside_K },
                Furnace = new() { Input_W = question.Furnace_W },
            },
            Assumptions = AssumptionsOf(question),
        };
    }

    private static DateTimeOffset Start(QuickQuestion question)
    {
        TimeSpan sinceNoon = question.Start.ToTimeSpan() - question.Noon.TimeOfDay;
        return question.Noon + (sinceNoon < TimeSpan.Zero ? sinceNoon + TimeSpan.FromDays(1) : sinceNoon);
    }

    private static Model.Cylinder.CylinderSpecification Sheltered(QuickQuestion question)
        => question.WindShelter_frac is not { } shelter
            ? question.Cylinder
            : question.Cylinder with { Surroundings = question.Cylinder.Surroundings with { WindShelter_frac = shelter } };

    // Names in plain words, in both unit systems, every value that was assumed.
    private static List<string> AssumptionsOf(QuickQuestion q)
    {
        List<string> assumed = [];
        if (q.High_K is null)
            assumed.Add($"afternoon high {Difference(QuickQuestion.Swing_K)} above the low");
        assumed.Add("air falling in half a cosine from the high at 15:00 to the low at 07:00, and rising likewise");
        if (q.MastWind_m_s is null)
            assumed.Add(Text($"wind {QuickQuestion.Wind_m_s / ConversionFactors.MilePerHour_m_s:0} mph ({QuickQuestion.Wind_m_s:0.#} m/s)"));
        if (q.WindShelter_frac is null)
            assumed.Add(Text($"cylinder sheltered to {100 * q.Cylinder.Surroundings.WindShelter_frac:0} % of that wind, seeing half the sky"));
        assumed.Add("clear sky all night, 75 % relative humidity, no sun");
        if (q.CoachLength_m is null)
            assumed.Add(Text($"coach {QuickQuestion.Length_m / ConversionFactors.Foot_m:0} ft ({QuickQuestion.Length_m:0.0} m) long"));
        assumed.Add(HeatLoss(q.Grade ?? CoachGrade.Ordinary, q.Grade is null));
        if (q.SetPoint_K is null)
            assumed.Add(Text($"thermostat at {QuickQuestion.Inside_K * 1.8 - ConversionFactors.ZeroFahrenheit_R:0} °F ({QuickQuestion.Inside_K - ConversionFactors.ZeroCelsius_K:0.0} °C) all night"));
        if (q.Elevation_m is null)
            assumed.Add("sea level");
        assumed.Add("cylinder and air equally cold at the start; coach warm, at the set point");
        assumed.Add("somebody up from 06:30 to 22:30, who resets a locked-out furnace within 15 min; at night it tries again every hour");
        assumed.Add("furnace 77 % efficient; nothing else uses gas; two-stage regulator, 160,000 BTU/h (47 kW)");
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
