using ColdSim.Model;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>Blankets of a kilowatt and more within an enclosure: its air gets hot, and still carries away what it is given.</summary>
public class HeatedEnclosureTests
{
    private static readonly CylinderSurroundings Within = new() { WindExposure_frac = 0, SkyView_frac = 0 };

    private static EnclosureSpecification Locker(double? loss_W_K = null, double opening_m2 = 0.0006) => new()
    {
        Name = "locker",
        Area_m2 = 0.5,
        FixedLoss_W_K = loss_W_K,
        LowOpening_m2 = opening_m2,
        HighOpening_m2 = opening_m2,
        OpeningHeight_m = 0.4,
    };

    // A warming blanket, one that boils its cylinder dry, and one with a thermostat: energy that goes into the air must come out of it again.
    [Theory]
    [InlineData("5 lb", 1.0, 2000, 0.25, true, null)]
    [InlineData("11 kg", 0.14, 1922, 9.7, true, 0.056)]
    [InlineData("5 lb", 0.55, 2000, 0.25, false, null)]
    public void A_blanket_of_two_kilowatts_in_a_locker_gets_an_answer(string size, double left_frac, double power_W, double insulation_m2K_W, bool stuck, double? loss_W_K)
    {
        CylinderSpecification cylinder = Bottle(size, left_frac) with
        {
            Surroundings = Within,
            Blanket = new BlanketSpecification { Power_W = power_W, Insulation_m2K_W = insulation_m2K_W, StuckOn = stuck },
        };
        Trace run = Run(new Rig { Cylinders = [cylinder], Enclosure = Locker(loss_W_K), Appliances = [Draw(7000)] }, Steady(-15), 24);
        Assert.InRange(run.Result.Ledger.WorstEnergy_frac, 0, 1e-8);
    }

    // Without liquid all of the blanket's heat comes out into the air; an upright shell takes nothing at the air's temperature.
    [Theory]
    [InlineData(500)]
    [InlineData(2000)]
    public void The_air_is_as_hot_as_its_openings_can_carry_off(double power_W)
    {
        CylinderBody body = new(Some.Cylinder("20 lb", Within) with { Blanket = new BlanketSpecification { Power_W = power_W } });
        WeatherSample weather = Some.Weather(253, 0, 0.8);
        EnclosureSpecification locker = Locker(0.05, 0.003);
        EnclosedCylinder empty = new(body, 0, 400, default, power_W, WholeShell_frac: 1);
        double fromOutside_K = new EnclosureBody(locker).Air_K(weather, [empty], double.NaN, 253);
        double fromAbove_K = new EnclosureBody(locker).Air_K(weather, [empty], double.NaN, 900);
        Assert.InRange(fromOutside_K, 300, 900);
        Assert.Equal(fromOutside_K, fromAbove_K, 1e-3);
    }
}
