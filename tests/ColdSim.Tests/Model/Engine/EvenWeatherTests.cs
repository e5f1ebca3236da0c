using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

/// <summary>What the coach feels of the weather goes on evenly within a step; what the cylinder feels is held, over half a cell where there is little liquid.</summary>
public class EvenWeatherTests
{
    // C dT/dt = -U (T - T_out) with T_out = T_0 + s t: T - T_out goes to -s C/U along one exponential.
    [Fact]
    public void A_coach_follows_outside_air_that_warms_evenly_as_the_closed_form_says()
    {
        const double loss_W_K = 150, air_J_K = 0.6e6, slope_K_s = 8.0 / 3600;
        Trace run = Run(new Rig { Cylinders = [BigTank()], Coach = OneNode(loss_W_K, air_J_K, inside_C: 5) }, Changing(h => -20 + 8 * h, 12), 3);
        double start_C = -20, lag_s = air_J_K / loss_W_K;
        foreach (StepRecord step in run.Steps)
        {
            double t_s = step.To.Time_s, behind_K = slope_K_s * lag_s;
            double expected_C = start_C + slope_K_s * t_s - behind_K + (5 - start_C + behind_K) * Math.Exp(-t_s / lag_s);
            Assert.Equal(expected_C, step.To.Inside_K - Zero_K, 1e-6);
        }
    }

    [Fact]
    public void Wind_and_sun_that_change_evenly_leave_the_coach_where_steps_of_ten_seconds_do()
    {
        CoachSpecification coach = OneNode(100, 0.6e6, inside_C: 15) with { LeakageArea_cm2 = 200, SolarAperture_m2 = 2 };
        Rig rig = new() { Cylinders = [BigTank()], Coach = coach, Site = Place };
        WeatherSeries weather = new([.. Rows()], new WeatherDefaults(), Place);
        Trace coarse = Run(rig, weather, 3), fine = Run(rig, weather, 3, step_s: 10);
        StepRecord[] cells = [.. coarse.Steps.Where(s => s.To.Time_s % 600 == 0)];
        Assert.Equal(18, cells.Length);
        Assert.All(cells, step => Assert.Equal(fine.At(step.To.Time_s).Inside_K, step.To.Inside_K, 2e-5));

        static IEnumerable<WeatherRow> Rows()
        {
            for (int h = 0; h <= 6; h++) yield return new WeatherRow(Start.AddHours(h), 263.15, h % 2 == 0 ? 1 : 12, 255, h % 2 == 0 ? 0 : 500, 0.2);
        }
    }

    [Theory]
    [InlineData(0.8, 600)]
    [InlineData(0.08, 300)]
    [InlineData(0.015, 300)]
    public void Inputs_are_held_over_half_a_cell_where_the_furnace_could_take_a_tenth_of_the_liquid_in_a_whole_one(double left, double longest_s)
    {
        Rig rig = new() { Cylinders = [Bottle("20 lb", left)], Coach = TwoNodes() with { InitialTemperature_K = 293.15 }, Thermostat = Holding(5), Furnace = Plated() };
        Trace run = Run(rig, Steady(10), 1);
        Assert.DoesNotContain(run.Steps, s => s.BurnerLit);
        Assert.Equal(longest_s, run.Steps.Max(s => s.To.Time_s - s.From.Time_s), 1e-6);
    }

    private static SiteSpecification Place { get; } = new() { Elevation_m = 1500, Latitude_deg = 45, Longitude_deg = -112 };
}
