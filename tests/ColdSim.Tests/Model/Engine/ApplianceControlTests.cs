using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Engine;
using ColdSim.Model.Supply;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

public class ApplianceControlTests
{
    private const double Good_Pa = 11 * WaterColumn_Pa, Low_Pa = 6 * WaterColumn_Pa;

    private static ApplianceControl InHours(params ClockWindow[] hours)
    {
        ApplianceControl control = new(Draw(900, 0, hours), hookup: false);
        control.SetClock(12 * 3600);
        return control;
    }

    [Fact]
    public void A_draw_without_hours_always_runs() => Assert.True(InHours().ValveOpen);

    [Fact]
    public void Draw_outside_its_hours_neither_runs_nor_demands_gas()
    {
        ApplianceControl control = InHours(new ClockWindow(13 * 3600, 14 * 3600));
        Assert.False(control.ValveOpen || control.WantsGas);
        Assert.False(control.Update(Low_Pa, 0));
    }

    [Fact]
    public void A_flame_that_is_lost_is_tried_every_minute()
    {
        ApplianceControl control = InHours();
        Assert.False(control.Update(Good_Pa, 0));
        Assert.True(control.Update(Low_Pa, 10));
        Assert.True(control is { ValveOpen: false, WantsGas: true, RetryAt_s: 70 });
        Assert.False(control.Update(Low_Pa, 69.9));
        Assert.True(control.Update(Low_Pa, 70));
        Assert.True(control.ValveOpen);
        Assert.True(control.Update(Low_Pa, 70));
        Assert.Equal(130, control.RetryAt_s);
        Assert.True(control.Update(Good_Pa, 130));
        Assert.False(control.Update(Good_Pa, 130));
        Assert.Equal(double.PositiveInfinity, control.RetryAt_s);
    }

    [Fact]
    public void A_retry_that_cannot_light_leaves_the_valve_shut_and_the_minutes_go_on_from_the_flames_loss()
    {
        ApplianceControl control = InHours();
        Assert.True(control.Update(Low_Pa, 10));
        Assert.False(control.Update(double.PositiveInfinity, 70, feed_Pa: Low_Pa));
        Assert.True(control is { ValveOpen: false, WantsGas: true, RetryAt_s: 130 });
        Assert.False(control.Update(double.PositiveInfinity, 300, feed_Pa: Low_Pa));
        Assert.Equal(310, control.RetryAt_s);
        Assert.False(control.Update(double.PositiveInfinity, 309.9, feed_Pa: Good_Pa));
        Assert.True(control.Update(double.PositiveInfinity, 310, feed_Pa: Good_Pa));
        Assert.True(control.ValveOpen);
    }

    [Fact]
    public void The_end_of_its_hours_ends_its_demand()
    {
        ApplianceControl control = InHours(new ClockWindow(11 * 3600, 13 * 3600));
        control.Update(Low_Pa, 0);
        Assert.True(control.WantsGas);
        control.SetClock(13 * 3600);
        Assert.True(control is { WantsGas: false, ValveOpen: false, RetryAt_s: double.PositiveInfinity });
        control.SetClock(11.5 * 3600);
        Assert.True(control.ValveOpen);
    }

    [Fact]
    public void Burner_never_burns_below_its_least_pressure_and_never_both_runs_and_waits()
        => Gen.Select(Gen.Double[0, 14 * WaterColumn_Pa], Gen.Double[0, 40], Gen.Int[0, 23]).Array[1, 60].Sample(moves =>
        {
            ConstantDraw draw = Draw(900, 0, new ClockWindow(6 * 3600, 20 * 3600));
            ApplianceControl control = new(draw, hookup: false);
            double now_s = 0;
            foreach ((double delivery_Pa, double wait_s, int hour) in moves)
            {
                control.SetClock(hour * 3600);
                now_s += wait_s;
                for (int n = 0; control.Update(delivery_Pa, now_s); n++) Assert.True(n < 5);
                Assert.False(control.ValveOpen && control.WantsGas);
                Assert.Equal(hour is >= 6 and < 20, control.ValveOpen || control.WantsGas);
                if (control.ValveOpen) Assert.True(delivery_Pa >= draw.MinimumPressure_Pa);
                if (control.WantsGas) Assert.InRange(control.RetryAt_s - now_s, 1e-9, 60 + 1e-9);
            }
        });
}
