using Xunit;

namespace ColdSim.Validation.DegreeDays;

public class WinterWeekTests
{
    /// <summary>Thermostat's lag, air that is stored, gas of the fan's purges: part of a week's gas.</summary>
    internal const double Slack_frac = 0.02;

    [Fact]
    public void A_week_takes_the_gas_of_its_degree_days()
        => Assert.All(WinterWeek.All(), w => Assert.InRange(w.Ours_kg / w.ByDegreeDays_kg, 1 - Slack_frac, 1 + Slack_frac));
}
