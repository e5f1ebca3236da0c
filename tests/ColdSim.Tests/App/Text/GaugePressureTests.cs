using ColdSim.App.Text;
using Xunit;

namespace ColdSim.Tests.App.Text;

public class GaugePressureTests
{
    [Fact]
    public void A_gauge_pressure_below_that_of_the_air_is_words()
    {
        Assert.Equal("below air", UnitStyle.Us.GaugePressureNumber(-49_600));
        Assert.Equal("below air", UnitStyle.Si.GaugePressureNumber(-49_600));
        Assert.Equal("pressure below air", UnitStyle.Si.GaugePressure(-49_600));
    }

    [Fact]
    public void A_gauge_pressure_from_zero_on_is_a_number_and_so_is_one_that_rounds_to_zero()
    {
        Assert.Equal("7.3", UnitStyle.Us.GaugePressureNumber(50_332));
        Assert.Equal("0.0", UnitStyle.Us.GaugePressureNumber(0));
        Assert.Equal("0.0", UnitStyle.Us.GaugePressureNumber(-100));
        Assert.Equal("503 mbar", UnitStyle.Si.GaugePressure(50_332));
    }
}
