using System.Globalization;
using ColdSim.Files.Scenarios.Drafts;
using ColdSim.Physics.Units;

namespace ColdSim.App.Screens.Tries;

/// <summary>The set points, and what the coach loses.</summary>
internal static class HeatAdjustments
{
    private const string Day = "thermostat.day", Night = "thermostat.night", Loss = "fit.heat_loss_factor";
    private const double Lowest_K = 275.15, Highest_K = 303.15;

    /// <summary>All of them.</summary>
    public static IEnumerable<Adjustment> Of() =>
    [
        SetPoint("day", "day set point", p => p.Scenario.Rig.Thermostat?.DaySetPoint_K, DayChanges),
        SetPoint("night", "night set point", p => p.Scenario.Rig.Thermostat?.NightSetPoint_K, (value_K, _) => [new(Night, Written(value_K))]),
        new("loss", "coach's heat loss")
        {
            AsItIs = p => p.Scenario.Rig.Coach is null ? null : p.Scenario.Fit?.Factors.HeatLoss ?? 1,
            Show = (factor, _) => $"x {factor.ToString("0.00", CultureInfo.InvariantCulture)}",
            Grid = _ => new(0.2, 3, 0.05, v => v, v => Math.Round(v, 4)),
            Changes = (factor, _) => [new(Loss, factor.ToString("0.####", CultureInfo.InvariantCulture))],
            WhyOff = _ => "no coach",
            IsEasierHigh = false,
        },
    ];

    private static Adjustment SetPoint(string id, string name, Func<TryPlace, double?> asItIs, Func<double, TryPlace, IEnumerable<KeyChange>> changes) => new(id, name)
    {
        AsItIs = p => p.Scenario.Rig.Furnace is null ? null : asItIs(p),
        Show = (value_K, p) => p.Units.Temperature(value_K),
        Grid = p => new(
            Math.Ceiling(p.Units.TemperatureIn(Lowest_K)), Math.Floor(p.Units.TemperatureIn(Highest_K)), p.Units.IsUs ? 1 : 0.5, p.Units.TemperatureIn, p.Units.Kelvin),
        Changes = changes,
        WhyOff = _ => "no furnace",
        IsEasierHigh = false,
    };

    // Without a set point by night the one by day holds at night too.
    private static IEnumerable<KeyChange> DayChanges(double value_K, TryPlace place)
    {
        yield return new(Day, Written(value_K));
        if (place.Settings["night"] is null && place.Draft.Written(Night) is null)
            yield return new(Night, Written(place.Scenario.Rig.Thermostat!.NightSetPoint_K));
    }

    private static string Written(double value_K) => string.Create(CultureInfo.InvariantCulture, $"\"{value_K - ConversionFactors.ZeroCelsius_K:0.###} °C\"");
}
