using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;
using Xunit;

namespace ColdSim.Tests.Planning.Climate;

public class NightLowsTests
{
    private static readonly DateTimeOffset Dusk = new(2031, 1, 14, 16, 0, 0, TimeSpan.FromHours(-6));

    private static WeatherRow[] Hours(int count, Func<int, double> air_K, Func<int, double?>? wind = null)
        => [.. Enumerable.Range(0, count).Select(h => new WeatherRow(Dusk.AddHours(h), air_K(h), wind?.Invoke(h)))];

    [Fact]
    public void Each_night_from_noon_to_noon_has_its_low_when_it_is_and_its_mean_wind()
    {
        IReadOnlyList<NightLow> nights = NightLows.Of(Hours(44, h => h is 15 or 38 ? 240 - h : 260, h => h < 20 ? 2 : 6));
        Assert.Equal(
            [
                new(new DateOnly(2031, 1, 14), 225, Dusk.AddHours(15), 2),
                new(new DateOnly(2031, 1, 15), 202, Dusk.AddHours(38), 6),
            ],
            nights);
    }

    [Theory]
    [InlineData(16, 0)]
    [InlineData(17, 1)]
    [InlineData(40, 1)]
    [InlineData(41, 2)]
    public void A_night_whose_morning_is_not_reached_is_left_out(int hours, int nights) => Assert.Equal(nights, NightLows.Of(Hours(hours, _ => 260)).Count);

    [Fact]
    public void Without_wind_there_is_no_mean_of_it() => Assert.Null(Assert.Single(NightLows.Of(Hours(20, _ => 260))).Wind_m_s);

    [Fact]
    public void A_forecast_that_begins_after_the_morning_has_no_night_before() => Assert.Empty(NightLows.Of([.. Hours(44, _ => 260).Skip(17).Take(3)]));
}
