using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Quick;

namespace ColdSim.Example;

/// <summary>The example of docs/library.md.</summary>
public static class OneNight
{
    /// <summary>Runs a night and prints what came of it.</summary>
    /// <param name="to">Where to.</param>
    public static void Print(TextWriter to)
    {
        ArgumentNullException.ThrowIfNull(to);

        // begin
        Rig rig = new()
        {
            Cylinders = [StandardSize.Find("20 lb")!.Full() with { Contents_kg = 3 }],
            Coach = GradedCoach.Of(CoachGrade.Ordinary, length_m: 7.3),
            Furnace = new() { Input_W = 7300 },
            Thermostat = new() { DaySetPoint_K = 293, NightSetPoint_K = 289 },
        };
        DateTimeOffset noon = new(2027, 1, 13, 12, 0, 0, TimeSpan.FromHours(-7));
        WeatherSeries weather = new(NightShape.Rows(noon, low_K: 251, high_K: 264), new WeatherDefaults(), rig.Site);
        Scenario scenario = new() { Title = "One night", Rig = rig, Weather = weather, Start = noon.AddHours(6), Nights = 1 };

        RunReport report = NightRun.Of(scenario);
        NightReport night = report.Nights[0];
        to.WriteLine($"{night.Verdict} from {night.FirstFailure:HH:mm}, books close: {report.Ledger.Closes}");
        to.WriteLine($"{night.GasUsed.Kilograms:0.0} kg used, {night.InsideLow?.DegreesCelsius:0} °C inside at the lowest");
        RunSeries series = report.Series;
        for (int i = 0; i < series.Count; i += 180)
        {
            DateTimeOffset time = scenario.Start.AddSeconds(i * RunSeries.Spacing_s);
            to.WriteLine($"{time:HH:mm}  {series.Inside_K[i] - 273.15:0.0} °C  {series.Propane_kg[i]:0.00} kg left");
        }

        // end
    }
}
