using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.Flow;
using Xunit;

namespace ColdSim.Tests.Model.Weather;

public class PlaceShiftTests
{
    private static readonly SiteSpecification Site = new() { Elevation_m = 2500, Latitude_deg = 40, Longitude_deg = -105 };

    private static WeatherRow[] Night(double wind_m_s) =>
    [
        .. Enumerable.Range(0, 24).Select(h => new WeatherRow(
            new DateTimeOffset(2025, 1, 14, 12, 0, 0, TimeSpan.FromHours(-7)).AddHours(h), 263.15, wind_m_s, 262.15, Pressure_Pa: 85_000)),
    ];

    [Fact]
    public void A_kilometre_up_it_is_six_and_a_half_kelvins_colder_and_the_dew_point_is_not_above_the_air()
    {
        IReadOnlyList<WeatherRow> rows = new PlaceShift { StationElevation_m = 1500 }.Apply(Night(3), Site, 2, out IReadOnlyList<string> notes);
        Assert.All(rows, r => Assert.Equal((256.65, 256.65), (Math.Round(r.Air_K, 9), Math.Round(r.DewPoint_K!.Value, 9))));
        Assert.InRange(rows[0].Pressure_Pa!.Value, 74_500, 75_500);
        Assert.StartsWith("weather: temperature shifted by -6.5 K from 1500 m to 2500 m, 6.5 K per km", Assert.Single(notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Wind_low_down_is_brought_to_the_mast_and_no_further()
    {
        IReadOnlyList<WeatherRow> rows = new PlaceShift { WindHeight_m = 2 }.Apply(Night(3), Site, 2, out _);
        Assert.Equal(3, (rows[0].Wind_m_s!.Value * WindProfile.Factor(2, Terrain.Open)), 9);
        Assert.Equal(3, new PlaceShift { WindHeight_m = 10 }.Apply(Night(3), Site, 2, out _)[0].Wind_m_s!.Value, 9);
    }

    [Theory]
    [InlineData(1.5, 259.15)]
    [InlineData(2.5, 263.15)]
    public void A_hollow_is_colder_from_sunset_to_sunrise_of_calm_nights_only(double wind_m_s, double dark_K)
    {
        IReadOnlyList<WeatherRow> rows = new PlaceShift { HollowDrop_K = 4 }.Apply(Night(wind_m_s), Site, 2, out IReadOnlyList<string> notes);
        Assert.Equal(263.15, rows[3].Air_K, 9);
        Assert.Equal(dark_K, rows[7].Air_K, 9);
        Assert.Equal(dark_K, rows[18].Air_K, 9);
        Assert.Equal(263.15, rows[20].Air_K, 9);
        Assert.Contains(wind_m_s < 2 ? "in 1 of 1 nights" : "in 0 of 1 nights", Assert.Single(notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Shift_without_options_changes_nothing()
    {
        WeatherRow[] rows = Night(3);
        Assert.Same(rows, new PlaceShift().Apply(rows, Site, 2, out IReadOnlyList<string> notes));
        Assert.Empty(notes);
    }
}
