using ColdSim.Physics.Freezing;
using Xunit;

namespace ColdSim.Tests.Physics.Freezing;

public class FreezingTimeTests
{
    // Derived elsewhere from Plank's formula, so the formula is outside and the numbers are a second hand's arithmetic with it.
    [Theory]
    [Outside("Plank 1941", Field.HeatTransfer, FromMemory = true)]
    [InlineData(12.7, 10, -7, 4.3)]
    [InlineData(12.7, 10, -20, 1.5)]
    [InlineData(12.7, 25, -20, 0.6)]
    [InlineData(19, 10, -10, 4.5)]
    public void A_bare_pipe_freezes_through_in_Plank_s_time(double diameter_mm, double film_W_m2K, double air_C, double hours)
        => Assert.Equal(hours, FreezingTime.RoundThrough_s(diameter_mm / 1000, film_W_m2K, air_C + Water.Freezing_K) / 3600, 0.05);

    [Theory]
    [InlineData(8, 15)]
    [InlineData(2.5, 48)]
    public void A_tank_of_150_litres_cools_to_freezing_as_one_lump(double conductance_W_K, double hours)
        => Assert.Equal(hours, FreezingTime.ToFreezing_s(150 * Water.SpecificHeat_J_kgK, conductance_W_K, 283.15, 263.15) / 3600, 0.5);

    // By hand: 20 mm behind 10 W/m²K in -10 °C, ρL/ΔT (D/4h + D²/16k) = 33.4e6 · (5e-4 + 1.1261e-5) s; and (C/G) ln(15/10) with 10 kJ/K and 2 W/K.
    [Fact]
    public void Freezing_through_and_cooling_to_freezing_take_what_a_hand_calculation_gives()
    {
        Assert.Equal(33.4e6 * (5e-4 + 1.12613e-5), FreezingTime.RoundThrough_s(0.02, 10, 263.15), 0.1);
        Assert.Equal(33.4e6 * 2 * (5e-4 + 1.12613e-5), FreezingTime.SlabThrough_s(0.02, 10, 263.15), 0.2);
        Assert.Equal(2027.3255, FreezingTime.ToFreezing_s(10_000, 2, 278.15, 263.15), 1e-3);
    }

    [Fact]
    public void A_slab_takes_twice_a_round_body_of_the_same_thickness()
        => Assert.Equal(2, FreezingTime.SlabThrough_s(0.02, 10, 260) / FreezingTime.RoundThrough_s(0.02, 10, 260), 1e-12);

    [Fact]
    public void In_air_above_freezing_nothing_freezes()
    {
        Assert.Equal(double.PositiveInfinity, FreezingTime.ToFreezing_s(1000, 1, 283.15, Water.Freezing_K));
        Assert.Equal(double.PositiveInfinity, FreezingTime.ToFreezing_s(1000, 1, 283.15, 275));
        Assert.Equal(double.PositiveInfinity, FreezingTime.RoundThrough_s(0.02, 10, 274));
        Assert.Equal(double.PositiveInfinity, FreezingTime.SlabThrough_s(0.02, 10, 274));
    }

    [Fact]
    public void A_bare_pipe_loses_by_its_film_alone()
        => Assert.Equal(Math.PI * 0.0159 * 10, PipeConductance.PerLength_W_mK(0.0159, 0, 0.035, 10), 1e-12);

    [Fact]
    public void A_bare_pipe_needs_no_conductivity_of_an_insulation()
        => Assert.Equal(Math.PI * 0.0159 * 10, PipeConductance.PerLength_W_mK(0.0159, 0, 0, 10), 1e-12);

    // By hand, a pipe of 20 mm under 20 mm of 0.04 W/mK: 2π / (ln 3/0.04 + 1/(10 · 0.03)) = 6.28319 / (27.4653 + 3.3333).
    [Fact]
    public void The_film_of_an_insulated_pipe_is_round_its_insulation()
        => Assert.Equal(0.20401, PipeConductance.PerLength_W_mK(0.020, 0.020, 0.04, 10), 1e-5);

    [Fact]
    public void Insulation_slows_it_and_more_of_it_more()
    {
        double bare = PipeConductance.PerLength_W_mK(0.0159, 0, 0.035, 25), half = PipeConductance.PerLength_W_mK(0.0159, 0.0127, 0.035, 25);
        Assert.InRange(half / bare, 0.1, 0.3);
        Assert.True(PipeConductance.PerLength_W_mK(0.0159, 0.0254, 0.035, 25) < half);
    }
}
