using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Engine;
using ColdSim.Model.Moisture;
using ColdSim.Physics.MoistAir;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Moisture;

public class DampAirTests
{
    private static readonly MoistureSpecification Damp = new() { Volume_m3 = 40, Sources_kg_s = 0.1 / 3600, InitialHumidity_frac = 0.3 };

    private static Rig Coach(double ventilation_m3_s, MoistureSpecification damp) => Heated() with
    {
        Coach = TwoNodes(80) with { Ventilation_m3_s = ventilation_m3_s, Moisture = damp },
    };

    [Fact]
    public void Sources_against_ventilation_settle_where_the_balance_says()
    {
        // Warm glass, so that nothing settles: m/V = ρ_out + S/V̇.
        const double vent_m3_s = 0.02;
        Simulation run = new(Coach(vent_m3_s, Damp with { ColdestU_W_m2K = 0.1 }), Steady(-10, 40), Settings(36));
        run.Run(new Trace());
        double outside_kg_m3 = Humidity.VapourDensity_kg_m3(Steady(-10).First().VapourPressure_Pa, Zero_K - 10);
        Assert.Equal(40 * (outside_kg_m3 + Damp.Sources_kg_s / vent_m3_s), run.State().Vapour_kg!.Value, 1e-4);
    }

    [Fact]
    public void Ventilation_carries_heat_away()
    {
        Rig shut = Coach(0, Damp), open = Coach(0.02, Damp);
        double extra_W_K = new CoachBody(open.Coach!).At(Steady(-10).First(), 0).Loss_W_K(30) - new CoachBody(shut.Coach!).At(Steady(-10).First(), 0).Loss_W_K(30);

        // 20 L/s of air of 1.34 kg/m³ and 1,006 J/(kg·K).
        Assert.Equal(27, extra_W_K, 0.3);
    }

    [Fact]
    public void Damp_settles_on_the_coldest_surface_when_the_dew_point_passes_it_and_only_then()
    {
        // Single glass at 20 °C inside and −10 °C outside: 5.8 × 0.13 × 30 = 22.6 K below the air, −2.6 °C.
        DampAir air = new(Damp);
        Assert.Equal(270.5, air.Surface_K(293.15, 263.15), 0.1);
        Assert.Equal(Damp.Volume_m3 * 0.3 * Humidity.VapourDensity_kg_m3(MagnusFormula.OverWater_Pa(293.15), 293.15), air.Initial_kg(293.15), 1e-9);

        // 30 % at 20 °C has a dew point of 1.9 °C: above that surface.
        Assert.True(air.Saturation_frac(air.Initial_kg(293.15), 293.15, 263.15) > 1);
        Assert.True(air.Saturation_frac(air.Initial_kg(293.15), 293.15, 278.15) < 1);
        Assert.True(Run(Coach(0.003, Damp with { InitialHumidity_frac = 0.1 }), Steady(-10), 24).Has(EventKind.DampSettles));
        Assert.False(Run(Coach(0.05, Damp with { InitialHumidity_frac = 0.1 }), Steady(-10), 24).Has(EventKind.DampSettles));
    }

    [Fact]
    public void A_flame_without_a_flue_makes_more_water_than_gas()
    {
        Rig rig = Coach(0.02, Damp with { Sources_kg_s = 0, ColdestU_W_m2K = 0.1 }) with
        {
            Furnace = null,
            Cylinders = [BigTank()],
            Appliances = [new CatalyticHeater { Name = "heater", Input_W = 1500 }],
        };
        Simulation run = new(rig, Steady(-10, 40), Settings(36));
        run.Run(new Trace());
        double outside_kg_m3 = Humidity.VapourDensity_kg_m3(Steady(-10).First().VapourPressure_Pa, Zero_K - 10);
        Assert.Equal(40 * (outside_kg_m3 + 1.634 * 1500 / 50.33e6 / 0.02), run.State().Vapour_kg!.Value, 2e-4);
    }
}
