using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.Propane;
using ColdSim.Tests.Model.Cylinder;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Supply;

public class SteadySupplyTests
{
    private const double Allowed_K = 243.15;
    private const double Sea_Pa = StandardAtmosphere.SeaLevel_Pa;
    private static readonly CylinderSurroundings Measured = Some.Sheltered with { FixedConductance_W_K = 2 };
    private static readonly TwoStageRegulator Regulator = new(new RegulatorSpecification(), 50.33e6);

    private static double Draw_kg_s(CylinderSpecification cylinder, in WeatherSample weather, double allowed_K = Allowed_K, double blanket_W = 0)
        => SteadySupply.Draw_kg_s(new CylinderBody(cylinder), weather, cylinder.Contents_kg, allowed_K, blanket_W, default);

    // By hand: 2 W/K times 10 K evaporate 20 W; propane at -30 °C takes 412 kJ/kg, of which the room of the liquid that goes takes 1 %.
    [Fact]
    public void The_steady_draw_boils_with_what_flows_in_at_the_allowed_temperature()
    {
        CylinderSpecification cylinder = Some.Cylinder("20 lb", Measured);
        Assert.Equal(20 / 412e3, Draw_kg_s(cylinder, Some.Weather(Allowed_K + 10)), 0.02 * 20 / 412e3);
        Assert.Equal(2, Draw_kg_s(cylinder, Some.Weather(Allowed_K + 20)) / Draw_kg_s(cylinder, Some.Weather(Allowed_K + 10)), 1e-9);
    }

    [Fact]
    public void In_air_no_warmer_than_the_allowed_liquid_or_without_liquid_nothing_is_drawn()
    {
        CylinderSpecification cylinder = Some.Cylinder("20 lb", Measured);
        Assert.Equal(0, Draw_kg_s(cylinder, Some.Weather(Allowed_K)));
        Assert.Equal(0, Draw_kg_s(cylinder, Some.Weather(Allowed_K - 5)));
        Assert.Equal(0, Draw_kg_s(cylinder with { Contents_kg = 0.02 }, Some.Weather(Allowed_K + 20)));
    }

    // The blanket lies behind a measured conductance, so that what it makes comes to the draw but for what goes outside, with the gas and beside.
    [Fact]
    public void A_blanket_adds_the_share_of_its_heat_that_reaches_the_liquid()
    {
        CylinderSpecification cylinder = Some.Cylinder("20 lb") with { Contents_kg = 3, Blanket = new BlanketSpecification { Power_W = 80, StuckOn = true } };
        WeatherSample weather = Some.Weather(Allowed_K + 10);
        CylinderBody body = new(cylinder);
        CylinderContents contents = body.Contents(3, Allowed_K);
        HeatCoupling coupling = HeatCoupling.At(body, weather, 3, Allowed_K, default);
        double draw_kg_s = Draw_kg_s(cylinder, weather, blanket_W: 80);
        Assert.Equal(1, draw_kg_s * contents.DrawHeat_J_kg / coupling.Heat_W(Allowed_K, 80, draw_kg_s), 2e-4);
        double heat_W = draw_kg_s * contents.DrawHeat_J_kg, without_W = Draw_kg_s(cylinder, weather) * contents.DrawHeat_J_kg;
        Assert.Equal(coupling.BlanketShare_frac(draw_kg_s) * 80, heat_W - without_W, 0.02 * 80);
        Assert.True(coupling.BlanketShare_frac(draw_kg_s) < coupling.BlanketShare_frac(0) - 1e-4);
    }

    [Fact]
    public void A_blanket_whose_thermostat_keeps_its_wall_draws_no_more_for_more_power()
    {
        CylinderSpecification Of(bool stuck) => Some.Cylinder("20 lb") with { Contents_kg = 3, Blanket = new BlanketSpecification { Power_W = 300, StuckOn = stuck } };
        WeatherSample weather = Some.Weather(Allowed_K + 10);
        double most_kg_s = Draw_kg_s(Of(stuck: false), weather, blanket_W: 600);
        Assert.Equal(most_kg_s, Draw_kg_s(Of(stuck: false), weather, blanket_W: 1200), 1e-12);
        Assert.True(Draw_kg_s(Of(stuck: true), weather, blanket_W: 1200) > 1.5 * most_kg_s);

        // Little power leaves the wall cooler than the thermostat, which then does not matter.
        Assert.Equal(Draw_kg_s(Of(stuck: true), weather, blanket_W: 20), Draw_kg_s(Of(stuck: false), weather, blanket_W: 20));
        Assert.Equal(Draw_kg_s(Of(stuck: true), weather), Draw_kg_s(Of(stuck: false), weather));
    }

    [Fact]
    public void Frost_and_its_heat_count_in_the_steady_draw()
    {
        CylinderSpecification cylinder = Some.Cylinder("20 lb");
        WeatherSample weather = Some.Weather(Allowed_K + 10);
        FrostLayer thick = new(2, 0.02);
        double bare_kg_s = Draw_kg_s(cylinder, weather);
        Assert.True(SteadySupply.Draw_kg_s(new CylinderBody(cylinder), weather, cylinder.Contents_kg, Allowed_K, 0, thick) < 0.8 * bare_kg_s);
    }

    [Fact]
    public void The_allowed_liquid_of_a_mixed_gas_boils_at_the_inlet()
        => Gen.Select(Gen.Double[0.1, 0.95], Gen.Double[0, 1], Gen.Double[110_000, 500_000], Gen.Double[0.5, 8]).Sample((propane, normal, inlet_Pa, mass_kg) =>
        {
            GasMasses gas = new GasMasses(propane, (1 - propane) * normal, (1 - propane) * (1 - normal)) * mass_kg;
            double t_K = SteadySupply.AllowedLiquid_K(inlet_Pa, gas, 0.0216);
            if (t_K > SaturationTable.Highest_K - 1) return;
            Assert.True(MixedContents.Of(gas, 0.0216, t_K).Pressure_Pa >= inlet_Pa);
            Assert.True(MixedContents.Of(gas, 0.0216, t_K - 2e-6).Pressure_Pa < inlet_Pa);
        }, iter: 300);

    [Fact]
    public void The_allowed_liquid_keeps_within_the_saturation_table_and_is_none_where_no_inlet_suffices()
    {
        GasMasses gas = new(4, 1, 0);
        Assert.True(double.IsNaN(SteadySupply.AllowedLiquid_K(double.PositiveInfinity, gas, 0.0216)));
        Assert.Equal(SaturationTable.Lowest_K, SteadySupply.AllowedLiquid_K(1, gas, 0.0216), 1e-5);
        Assert.Equal(SaturationTable.Highest_K, SteadySupply.AllowedLiquid_K(1e8, gas, 0.0216), 1e-5);

        // So thin an air that the least inlet is below the line's end.
        Assert.Equal(SaturationTable.Lowest_K, SteadySupply.AllowedLiquid_K(Regulator, 1e-7, 10, 1000), 1e-3);
        Assert.True(PropaneSaturation.Pressure_Pa(SaturationTable.Lowest_K) > 1500);
    }
}
