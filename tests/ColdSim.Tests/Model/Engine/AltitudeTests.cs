using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.MoistAir;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

public class AltitudeTests
{
    private const double High_m = 2500;
    private static readonly double HighAir_Pa = StandardAtmosphere.Pressure_Pa(High_m);

    private static Rig At(double elevation_m) => Heated() with { Site = new SiteSpecification { Elevation_m = elevation_m }, Furnace = null };

    private static WeatherSeries Cold(double elevation_m) => Changing(_ => -10, site: new SiteSpecification { Elevation_m = elevation_m });

    [Fact]
    public void The_same_liquid_reads_more_on_the_gauge_by_the_air_that_is_missing()
    {
        RunSnapshot low = Run(At(0), Cold(0), 1).Steps[0].From, high = Run(At(High_m), Cold(High_m), 1).Steps[0].From;
        Assert.Equal(low.Liquid_K, high.Liquid_K, 1e-9);
        Assert.Equal(StandardAtmosphere.SeaLevel_Pa - HighAir_Pa, high.CylinderPressure_Pa - low.CylinderPressure_Pa, 1e-6);
    }

    [Fact]
    public void Every_burner_with_a_plate_takes_less_and_a_draw_takes_what_it_draws()
    {
        double share = Math.Sqrt(HighAir_Pa / StandardAtmosphere.SeaLevel_Pa);
        GasAppliance[] plated =
        [
            new AbsorptionRefrigerator { Name = "box", Input_W = 450 },
            new Cooker { Name = "stove", Input_W = 2000 },
            new CatalyticHeater { Name = "heater", Input_W = 900 },
            new StorageWaterHeater { Name = "tank", Input_W = 3000, Water_kg = 23 },
        ];
        foreach (GasAppliance burner in plated) Assert.Equal(share * burner.Input_W, burner.InputAt_W(High_m), 1e-6);
        Assert.Equal(300, new ConstantDraw { Name = "draw", Input_W = 300 }.InputAt_W(High_m), 1e-12);
    }

    [Fact]
    public void Air_that_leaks_carries_heat_by_its_density()
    {
        CoachBody body = new(TwoNodes() with { LeakageArea_cm2 = 100 });
        WeatherSample low = Cold(0).First(), high = Cold(High_m).First();
        Assert.Equal(HighAir_Pa / StandardAtmosphere.SeaLevel_Pa, body.Infiltration_W_K(high, 293) / body.Infiltration_W_K(low, 293), 5e-3);
    }

    [Fact]
    public void Thin_air_gives_a_cylinder_less_heat()
    {
        CylinderBody body = new(Bottle());
        double G_W_K(double elevation_m) => HeatCoupling.At(body, Cold(elevation_m).First(), 10, 250, default).Conductance_W_K;
        Assert.InRange(G_W_K(High_m) / G_W_K(0), 0.75, 0.97);
    }
}
