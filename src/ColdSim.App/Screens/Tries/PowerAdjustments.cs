using System.Globalization;
using ColdSim.App.Text;
using ColdSim.Files.Scenarios.Drafts;
using ColdSim.Model.Electrical;

namespace ColdSim.App.Screens.Tries;

/// <summary>The battery.</summary>
internal static class PowerAdjustments
{
    // In ampere-hours, as batteries are sold.
    private const double Least = 10, Most = 1000, Step = 10, First = 100;

    /// <summary>All of them.</summary>
    public static IEnumerable<Adjustment> Of() =>
    [
        new("battery", "battery")
        {
            AsItIs = p => p.Scenario.Rig.Power?.Battery.Rated_J / NominalVoltage.AmpereHour_J,
            Show = (charge, _) => $"{UnitStyle.Number(charge, 0)} Ah",
            Grid = _ => new(Least, Most, Step, v => v, v => v),
            Changes = Changes,
            TurnedOn = _ => First,
            WhyOff = _ => "not looked at",
        },
    ];

    private static IEnumerable<KeyChange> Changes(double charge, TryPlace place)
    {
        if (place.Scenario.Rig.Power is null)
            yield return new("battery.chemistry", "\"flooded\"");
        yield return new("battery.capacity", string.Create(CultureInfo.InvariantCulture, $"\"{charge:0.###} Ah\""));
    }
}
