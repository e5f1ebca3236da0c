using ColdSim.Model;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;

namespace ColdSim.Planning.Quick;

/// <summary>Makes a scenario of one night out of what somebody knows at dusk.</summary>
public static class QuickScenario
{
    private const double Humidity_frac = 0.75;

    /// <summary>The scenario, with everything that was taken named in its assumptions.</summary>
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
            Assumptions = QuickAssumptions.Of(question),
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
}
