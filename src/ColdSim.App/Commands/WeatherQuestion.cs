using ColdSim.Files.Weather;
using ColdSim.Model.Weather;

namespace ColdSim.App.Commands;

/// <summary>What <c>weather</c> is asked.</summary>
/// <param name="Path">The file.</param>
/// <param name="Request">How it is to be read.</param>
/// <param name="Below_K">The threshold. [K]</param>
/// <param name="Spell">Which nights are looked for; null for none.</param>
/// <param name="Shift">From the station to the place, but for the station's elevation, which the file may state.</param>
/// <param name="Elevation_m">The place's elevation; null shifts no temperature. [m]</param>
/// <param name="Latitude_deg">The place's latitude; null takes the file's. [°]</param>
/// <param name="Longitude_deg">Likewise. [°]</param>
internal sealed record WeatherQuestion(
    string Path, WeatherRequest Request, double Below_K, SpellQuestion? Spell, PlaceShift Shift, double? Elevation_m, double? Latitude_deg, double? Longitude_deg);
