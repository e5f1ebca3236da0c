using ColdSim.Model;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text;

/// <summary>The columns of a trip's nights that text and screen share: when and where, how cold, gas used and left.</summary>
internal static class TripNightCells
{
    /// <summary>The headings.</summary>
    /// <param name="rig">Whose cylinders.</param>
    /// <param name="units">To print.</param>
    /// <param name="name">A cylinder's name in the lines that there is room for.</param>
    public static IEnumerable<TextColumn> Columns(Rig rig, UnitStyle units, Func<int, IEnumerable<string>> name) =>
    [
        new(["Night"], Left: true),
        new(["At"]),
        new(["Out", "low", units.TemperatureUnit]),
        new(["In", "low", units.TemperatureUnit]),
        new(["Gas", "used", units.MassUnit]),
        .. Enumerable.Range(0, rig.Cylinders.Count).Select(i => new TextColumn([.. name(i), "left", units.MassUnit])),
    ];

    /// <summary>A night's cells.</summary>
    public static IEnumerable<string> Of(TripNight trip, UnitStyle units)
    {
        NightReport night = trip.Night;
        return
        [
            ClockText.NightShort(night),
            trip.Stop is { } stop ? UnitStyle.Number(stop + 1, 0) : "road",
            units.TemperatureNumber(night.OutsideLow.Kelvins),
            night.InsideLow is { } inside ? units.TemperatureNumber(inside.Kelvins) : "-",
            units.MassNumber(night.GasUsed.Kilograms),
            .. night.EachLeft.Select(left => units.MassNumber(left.Kilograms)),
        ];
    }
}
