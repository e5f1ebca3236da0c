using ColdSim.Model.Weather;
using ColdSim.Planning.Verification;
using Xunit;

namespace ColdSim.Tests.Planning.Verification;

public class ForecastVerificationTests
{
    private static readonly DateTimeOffset First = new(2031, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static WeatherRow[] Observed(int hours) => [.. Enumerable.Range(0, hours + 1).Select(h => new WeatherRow(First.AddHours(h), 260 + (h % 24 * 0.1), 4))];

    // A forecast of 72 hours whose error is what is said of each hour after issue.
    private static IssuedForecast Issued(int day, Func<int, double> error_K, double wind_m_s = 4) => new(
        $"day {day}", First.AddDays(day), [.. Enumerable.Range(0, 72).Select(h => new WeatherRow(First.AddDays(day).AddHours(h), 260 + (((24 * day) + h) % 24 * 0.1) + error_K(h), wind_m_s))]);

    [Fact]
    public void Bias_and_spread_are_those_that_were_put_in()
    {
        IssuedForecast[] forecasts = [.. Enumerable.Range(0, 30).Select(day => Issued(day, h => 1 + (day % 2 == 0 ? 2 : -2)))];
        ForecastVerification verified = ForecastVerification.Of(forecasts, Observed(24 * 40));
        Assert.Equal([1, 2, 3], verified.Leads.Select(l => l.Day));
        foreach (LeadErrors lead in verified.Leads)
        {
            Assert.Equal((30, 720), (lead.Forecasts, lead.Hours));
            Assert.Equal(1, lead.Bias_K, 9);
            Assert.Equal(2, lead.Spread_K, 2);
            Assert.Equal(Math.Sqrt(5), lead.Rms_K, 9);
            if (lead.Day < 3)
                Assert.Equal(1, lead.SixHours!.Value, 2);
        }

        Assert.Equal(Math.Sqrt(5), verified.Fitted!.Temperature_K, 9);
        Assert.Equal(0, verified.Fitted.TemperatureGrowth_K, 9);
        Assert.Equal(240, verified.Fitted.CorrelationTime_h, 6);
    }

    [Fact]
    public void Errors_that_grow_with_the_lead_give_their_growth()
    {
        // 1.5 K on the first day, 2 on the second, 2.5 on the third: 1.75 a day ahead, half a kelvin more for every day.
        IssuedForecast[] forecasts = [.. Enumerable.Range(0, 20).Select(day => Issued(day, h => (1.5 + (0.5 * (h / 24))) * (day % 2 == 0 ? 1 : -1)))];
        FittedErrors fitted = ForecastVerification.Of(forecasts, Observed(24 * 30)).Fitted!;
        Assert.Equal(1.75, fitted.Temperature_K, 9);
        Assert.Equal(0.5, fitted.TemperatureGrowth_K, 9);
    }

    [Fact]
    public void The_correlation_time_of_a_known_process_is_found()
    {
        // First-order errors that are forgotten to 1/e in 12 h.
        Random random = new(7);
        double keep = Math.Exp(-1 / 12.0), fresh = Math.Sqrt(1 - (keep * keep));
        IssuedForecast[] forecasts = [.. Enumerable.Range(0, 400).Select(day =>
        {
            double error = Normal();
            return Issued(day, _ => error = (keep * error) + (fresh * Normal()));
        })];
        Assert.InRange(ForecastVerification.Of(forecasts, Observed(24 * 410)).Fitted!.CorrelationTime_h, 10.5, 13.5);

        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }

    [Fact]
    public void The_winds_error_is_of_its_logarithm()
    {
        IssuedForecast[] forecasts = [.. Enumerable.Range(0, 20).Select(day => Issued(day, _ => 0, day % 2 == 0 ? 8 : 2))];
        Assert.Equal(Math.Log(2), ForecastVerification.Of(forecasts, Observed(24 * 30)).Fitted!.WindLog!.Value, 9);
        Assert.Null(ForecastVerification.Of([.. forecasts.Select(f => f with { Rows = [.. f.Rows.Select(r => r with { Wind_m_s = 0.2 })] })], Observed(24 * 30)).Fitted!.WindLog);
    }

    [Fact]
    public void Nineteen_issue_times_give_differences_and_no_sizes()
    {
        ForecastVerification verified = ForecastVerification.Of([.. Enumerable.Range(0, 19).Select(day => Issued(day, h => h == 30 ? -7 : 1))], Observed(24 * 30));
        Assert.Null(verified.Fitted);
        Assert.Equal(19, verified.Forecasts.Count);
        Assert.Equal((72, -7.0, First.AddHours(30)), (verified.Forecasts[0].Hours, Math.Round(verified.Forecasts[0].Largest_K, 9), verified.Forecasts[0].LargestAt));
        Assert.NotNull(ForecastVerification.Of([.. Enumerable.Range(0, 20).Select(day => Issued(day, _ => 1))], Observed(24 * 30)).Fitted);
    }

    [Fact]
    public void Hours_that_nobody_observed_do_not_count_and_those_between_rows_are_on_a_line()
    {
        WeatherRow[] observed = [new(First, 260), new(First.AddHours(2), 264)];
        ForecastVerification verified = ForecastVerification.Of([new("a", First.AddHours(-1), [new(First.AddHours(-1), 260), new(First.AddHours(1), 263), new(First.AddHours(2), 264), new(First.AddHours(3), 264)])], observed);
        Assert.Equal((2, 0.5), (verified.Forecasts[0].Hours, verified.Forecasts[0].Bias_K));
        Assert.Empty(ForecastVerification.Of([new("a", First.AddDays(9), [new(First.AddDays(9), 260)])], observed).Forecasts);
    }
}
