using System.Globalization;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;
using ColdSim.Physics.Units;
using ColdSim.Planning;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Quick;

namespace ColdSim.App.Text;

/// <summary>A <c>coldsim tonight</c> command line with what the latest reading and the scenario say, for the evening on which no weather is at hand.</summary>
/// <remarks>What a scenario may have and the command does not take is brought to the nearest that it takes, so that the line always runs.</remarks>
internal static class TonightLine
{
    private const double AirCapacity_J_m2K = 15_000;
    private const double Day_s = 86_400;
    private const double Rounding_K = 0.5;

    /// <summary>The command line; null where the scenario has no furnace or the log no reading with gas left.</summary>
    public static string? Of(Scenario scenario, UseLog log, UnitStyle units)
    {
        if (scenario.Rig.Furnace is not { } furnace || Fullest(scenario, log) is not { } place)
            return null;
        CylinderSpecification cylinder = scenario.Rig.Cylinders[place];
        double left_kg = log.LatestOf(place)!.Contents.Mass.Kilograms;
        if (Size(cylinder, left_kg) is not { } size)
            return null;

        // Rounded down, so that a full cylinder is not overfull and nothing is promised.
        double left = Math.Floor(Math.Min(units.MassIn(left_kg), units.MassIn(size.LegalFill_kg)) * 10) / 10;
        if (left <= 0)
            return null;
        CultureInfo words = CultureInfo.InvariantCulture;
        List<string> line =
        [
            $"coldsim tonight --low \"{Degrees(Low_K(scenario, log), -60, 40, units)}\" --cylinder \"{size.Name}\" --left \"{left.ToString("0.0", words)} {units.MassUnit}\"",
            $"--furnace \"{Power(Math.Clamp(furnace.Input_W, 550, 59_900), units)}\"",
        ];
        if (scenario.Rig.Coach is { } coach)
        {
            double length_m = Length_m(coach);
            line.Add(units.IsUs ? string.Create(words, $"--length \"{length_m / ConversionFactors.Foot_m:0} ft\"") : string.Create(words, $"--length \"{length_m:0.0} m\""));
            line.Add($"--grade {Grade(coach, length_m)}");
        }

        if (scenario.Rig.Thermostat is { } thermostat)
            line.Add($"--inside \"{Degrees(thermostat.NightSetPoint_K, 0, 35, units)}\"");
        line.Add(string.Create(words, $"--wind-exposure {cylinder.Surroundings.WindExposure_frac:0.##}"));
        double elevation_m = Math.Min(scenario.Rig.Site.Elevation_m, 4999);
        if (elevation_m != 0)
            line.Add(units.IsUs ? string.Create(words, $"--elevation \"{elevation_m / ConversionFactors.Foot_m:0} ft\"") : string.Create(words, $"--elevation \"{elevation_m:0} m\""));
        if (!units.IsUs)
            line.Add("--units si");
        return string.Join(' ', line);
    }

    // The answer is for one cylinder; of several the one with the most in it.
    private static int? Fullest(Scenario scenario, UseLog log)
    {
        int? best = null;
        for (int i = 0; i < scenario.Rig.Cylinders.Count; i++)
        {
            if (log.LatestOf(i) is { } row && (best is not { } b || row.Contents.Mass.Kilograms > log.LatestOf(b)!.Contents.Mass.Kilograms))
                best = i;
        }

        return best;
    }

    // The scenario's own size, or the common one nearest to its water capacity that holds what is left.
    private static StandardSize? Size(CylinderSpecification cylinder, double left_kg)
    {
        if (StandardSize.Find(cylinder.Name) is { } own)
            return own;
        StandardSize? nearest = null;
        foreach (StandardSize size in StandardSize.All)
        {
            if (size.LegalFill_kg >= left_kg && (nearest is null || Math.Abs(size.LegalFill_kg - cylinder.LegalFill_kg) < Math.Abs(nearest.LegalFill_kg - cylinder.LegalFill_kg)))
                nearest = size;
        }

        return nearest;
    }

    // The coldest of the day at the end of the weather that is nearer to the reading.
    private static double Low_K(Scenario scenario, UseLog log)
    {
        WeatherSeries weather = scenario.Trip is { } trip ? trip.Stops[^1].Weather : scenario.Weather;
        double all_s = (weather.Last - weather.First).TotalSeconds;
        bool before = ForecastStart.TimeOf(scenario, log) == LatestTime.BeforeWeather;
        double from_s = before ? 0 : Math.Max(0, all_s - Day_s), to_s = before ? Math.Min(all_s, Day_s) : all_s, low_K = double.PositiveInfinity;
        int row = 0;
        for (int i = 0; i < weather.Count; i++)
        {
            if (weather.RowTime_s(i) is { } time_s && time_s >= from_s && time_s <= to_s)
                low_K = Math.Min(low_K, weather.At(time_s, ref row).Air_K);
        }

        return low_K;
    }

    private static double Length_m(CoachSpecification coach) => Math.Clamp(coach.AirCapacity_J_K / AirCapacity_J_m2K / GradedCoach.Width_m, 2.2, 19.8);

    private static string Grade(CoachSpecification coach, double length_m)
    {
        double perMetre = coach.HeatLoss.Sum(l => l.Conductance_W_K) / length_m;
        CoachGrade best = CoachGrade.Good;
        foreach (CoachGrade grade in (CoachGrade[])[CoachGrade.Ordinary, CoachGrade.Leaky])
        {
            if (Math.Abs(GradedCoach.HeatLoss_W_mK(grade) - perMetre) < Math.Abs(GradedCoach.HeatLoss_W_mK(best) - perMetre))
                best = grade;
        }

        return best.ToString().ToLowerInvariant();
    }

    private static string Degrees(double kelvin, double min_C, double max_C, UnitStyle units)
        => units.Temperature(Math.Clamp(kelvin, min_C + Rounding_K + ConversionFactors.ZeroCelsius_K, max_C - Rounding_K + ConversionFactors.ZeroCelsius_K));

    private static string Power(double watt, UnitStyle units)
        => units.IsUs ? string.Create(CultureInfo.InvariantCulture, $"{watt / ConversionFactors.BtuPerHour_W:0} BTU/h") : string.Create(CultureInfo.InvariantCulture, $"{watt / 1000:0.0} kW");
}
