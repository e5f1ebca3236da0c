using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Engine;
using ColdSim.Physics.Flow;
using ColdSim.Physics.MoistAir;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Coach;

/// <summary>The coach through the real engine, where pencil and paper know the answer.</summary>
public class CoachClosedFormTests
{
    private static Rig Unheated(CoachSpecification coach) => new() { Cylinders = [Bottle()], Coach = coach };

    [Fact]
    public void A_lumped_coach_left_alone_cools_by_one_exponential()
    {
        Trace run = Run(Unheated(OneNode(150, 1.8e6, inside_C: 20)), Steady(-20, 24), 8);
        foreach (int hour in new[] { 1, 2, 4, 8 })
            Assert.Equal(-20 + 40 * Math.Exp(-hour * 3600 * 150 / 1.8e6), run.At(hour * 3600).Inside_K - Zero_K, 1e-7);
    }

    [Fact]
    public void Two_nodes_answer_a_step_with_two_exponentials()
    {
        const double air_J_K = 0.25e6, slow_J_K = 1.6e6, loss_W_K = 150, between_W_K = 400;
        Trace run = Run(Unheated(OneNode(loss_W_K, air_J_K, slow_J_K, between_W_K, 20)), Steady(-20, 24), 8, step_s: 10);

        // Eigenvalues of the two by two system, and the weights from both nodes starting at the same temperature.
        double a = -(loss_W_K + between_W_K) / air_J_K, b = between_W_K / air_J_K, c = between_W_K / slow_J_K, d = -c;
        double root = Math.Sqrt((a - d) * (a - d) + 4 * b * c);
        double fast = 0.5 * (a + d - root), slow = 0.5 * (a + d + root);
        Assert.Equal(6.98, -1 / fast / 60, 0.01);
        Assert.Equal(4.4207, -1 / slow / 3600, 0.0001);
        double ofFast = (a + b - slow) / (fast - slow);
        foreach (double minutes in new double[] { 1, 5, 10, 30, 60, 240, 480 })
        {
            double t_s = minutes * 60;
            double expected_C = -20 + 40 * (ofFast * Math.Exp(fast * t_s) + (1 - ofFast) * Math.Exp(slow * t_s));
            Assert.Equal(expected_C, run.At(t_s).Inside_K - Zero_K, 1e-6);
        }
    }

    [Fact]
    public void A_steady_coach_is_gains_over_conductance_above_outside()
    {
        CoachSpecification coach = OneNode(100, 0.3e6) with { InternalGains_W = 2000 };
        Assert.Equal(20, Run(Unheated(coach), Steady(-10, 30), 24).Last.Inside_K - Zero_K + 10, 1e-6);
    }

    [Fact]
    public void The_ground_under_a_skirt_pulls_by_its_own_conductance()
    {
        CoachSpecification coach = OneNode(100, 0.3e6) with { GroundConductance_W_K = 50, GroundTemperature_K = Zero_K + 6, InternalGains_W = 300 };
        double expected_C = (100 * -12 + 50 * 6 + 300) / 150.0;
        Assert.Equal(expected_C, Run(Unheated(coach), Steady(-12, 30), 24).Last.Inside_K - Zero_K, 1e-6);
    }

    [Fact]
    public void A_daily_wave_outside_comes_in_smaller_and_later()
    {
        const double tau_h = 1.8e6 / 150 / 3600, omega_h = 2 * Math.PI / 24;
        Trace run = Run(Unheated(OneNode(150, 1.8e6)), Changing(h => -10 + 8 * Math.Sin(omega_h * h), 121, 1.0 / 12), 120);
        double sine = 0, cosine = 0;
        int n = 0;
        foreach (StepRecord step in run.Steps.Where(s => s.From.Time_s >= 72 * 3600))
        {
            double phase = omega_h * step.To.Time_s / 3600;
            sine += (step.To.Inside_K - Zero_K) * Math.Sin(phase);
            cosine += (step.To.Inside_K - Zero_K) * Math.Cos(phase);
            n++;
        }

        double gain = Math.Sqrt(sine * sine + cosine * cosine) * 2 / n / 8, lag_h = Math.Atan2(-cosine, sine) / omega_h;
        Assert.Equal(1 / Math.Sqrt(1 + Math.Pow(omega_h * tau_h, 2)), gain, 2e-4);
        Assert.Equal(Math.Atan(omega_h * tau_h) / omega_h, lag_h, 0.003);
    }

    [Fact]
    public void Inside_freezes_when_the_closed_form_says_so()
    {
        double expected_s = 1.8e6 / 150 * Math.Log(2);
        Trace run = Run(Unheated(OneNode(150, 1.8e6, inside_C: 20)), Steady(-20, 24), 8);
        Assert.Equal(expected_s, run.First_s(EventKind.InsideFreezing), 0.01);
        Assert.Single(run.Times_s(EventKind.InsideFreezing));
    }

    [Fact]
    public void Inside_thaws_when_the_closed_form_says_so()
    {
        double expected_s = 1.8e6 / 150 * Math.Log(15 / 5.0);
        Assert.Equal(expected_s, Run(Unheated(OneNode(150, 1.8e6, inside_C: -10)), Steady(5, 24), 8).First_s(EventKind.InsideThawed), 0.01);
    }

    [Theory]
    [InlineData(120, 0, 30)]
    [InlineData(120, 6, 0)]
    [InlineData(90, 4, 25)]
    public void Leaking_air_carries_its_flow_times_its_heat(double area_cm2, double wind_m_s, double dT_K)
    {
        CoachBody body = new(OneNode() with { LeakageArea_cm2 = area_cm2, Shelter = ShelterClass.Isolated });
        ColdSim.Model.Weather.WeatherSample weather = new(260, wind_m_s, 100, 250, 90_000, 0, 0);
        double flow_m3_s = area_cm2 / 1000 * Math.Sqrt(0.000145 * dT_K + 0.000246 * wind_m_s * wind_m_s);
        double density_kg_m3 = (90_000 - 0.378 * 100) / (287.05 * 260);
        Assert.Equal(flow_m3_s * density_kg_m3 * 1006, body.Infiltration_W_K(weather, 260 + dT_K), 0.003 * flow_m3_s * 1300);
        Assert.Equal(150 + body.Infiltration_W_K(weather, 260 + dT_K), body.At(weather, 0).Loss_W_K(dT_K), 1e-9);
    }

    [Fact]
    public void A_coach_without_a_leakage_area_leaks_nothing()
        => Assert.Equal(0, new CoachBody(OneNode()).Infiltration_W_K(new(260, 10, 100, 250, 90_000, 0, 0), 295));

    [Fact]
    public void The_envelope_is_the_sum_of_its_lines()
    {
        CoachBody body = new(OneNode() with { HeatLoss = [new("walls", 31.5), new("roof", 11), new("bridges", 4.25)] });
        Assert.Equal(46.75, body.Envelope_W_K, 1e-12);
    }

    [Fact]
    public void Sun_through_windows_and_people_are_the_gains()
    {
        CoachBody body = new(OneNode() with { SolarAperture_m2 = 1.5, InternalGains_W = 120 });
        Assert.Equal(1.5 * 200 + 120, body.At(new(260, 2, 100, 250, 90_000, 200, 77), 0).Gains_W, 1e-12);
    }

    [Fact]
    public void An_air_node_without_capacity_is_refused()
        => Assert.Throws<ArgumentOutOfRangeException>(() => new CoachBody(OneNode(air_J_K: 0)));

    // Two published degree-day sums, run through thermostat, furnace and gas: conductance, degree-days of the season and the
    // answer in kWh are theirs; the run is a part of that season at an even temperature.
    [Theory]
    [InlineData(180, 2200, 9504)]
    [Outside("Degree-day calculator page", Field.Coach)]
    public void Heat_of_a_season_is_conductance_times_degree_days(double loss_W_K, double degreeDays_K, double expected_kWh)
        => Assert.Equal(expected_kWh, SeasonalHeat_kWh(loss_W_K, degreeDays_K, 0.92) * 0.92, 0.003 * expected_kWh);

    [Fact]
    [Outside("Degree-day calculator page", Field.Coach)]
    public void Gas_of_a_season_is_that_heat_over_efficiency()
        => Assert.Equal(10_330, SeasonalHeat_kWh(180, 2200, 0.92), 0.003 * 10_330);

    // 52,000 Btu/h at 73 °F, 6,232 °F·day: 17,096 Btu per degree-day and about 106 million Btu in the year.
    [Fact]
    [Outside("Moaveni, degree-day example", Field.Coach)]
    public void A_textbook_house_in_Detroit_needs_the_textbook_s_heat()
    {
        double heat_kWh = SeasonalHeat_kWh(52_000 * Btu_h / 73 * 1.8, 6232 / 1.8, 0.92) * 0.92;
        Assert.InRange(heat_kWh * 3.6e6 / 1055.056, 106e6, 107e6);
        Assert.Equal(17_096, heat_kWh * 3.6e6 / 1055.056 / 6232, 0.003 * 17_096);
    }

    // Gross heat of the gas for a season, from ten days 22 K below the set point.
    private static double SeasonalHeat_kWh(double loss_W_K, double degreeDays_K, double efficiency)
    {
        Rig rig = new()
        {
            Cylinders = [BigTank()],
            Coach = OneNode(loss_W_K, 3e6),
            Thermostat = BareSwitch(18, 0.5),
            Furnace = Prompt(12_000) with { Efficiency_frac = efficiency },
        };
        return Run(rig, Steady(-4, 250), 240).Given_J / 3.6e6 * degreeDays_K / 220;
    }

    [Fact]
    public void Heat_over_a_changing_week_is_conductance_times_degree_hours()
    {
        Rig rig = new() { Cylinders = [BigTank()], Coach = OneNode(150), Thermostat = BareSwitch(20, 0.4), Furnace = Prompt(8000) };
        Trace run = Run(rig, Changing(h => -8 + 9 * Math.Sin(h / 5) + 3 * Math.Sin(h / 31), 170), 168);
        double degree_Ks = run.Steps.Sum(s => (20 + Zero_K - 0.5 * (s.From.Outside_K + s.To.Outside_K)) * (s.To.Time_s - s.From.Time_s));

        // Within the heat of a cycle and the band's own mean, which is not quite the set point.
        Assert.Equal(150 * degree_Ks, 0.77 * run.Given_J, 0.6e6 * 0.4 + 150 * 0.01 * 168 * 3600);
    }
}
