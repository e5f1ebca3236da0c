using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Supply;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Arrangement;

public class ChangeoverTests
{
    private const double Psi_Pa = ColdSim.Physics.Units.ConversionFactors.Psi_Pa;
    private const double Sea_Pa = 101_325;
    private const double HeatingValue_J_kg = 50.33e6;

    private static Rig OnChangeover(CylinderSpecification service, CylinderSpecification reserve, double draw_Btu_h = 25_000)
        => new() { Cylinders = [service, reserve], Arrangement = new AutomaticChangeover(), Appliances = [Draw(draw_Btu_h)] };

    private static GasSupply Supply(double asked_Btu_h)
    {
        GasSupply supply = new(
            new TwoStageRegulator(
                new RegulatorSpecification(), HeatingValue_J_kg, (new AutomaticChangeover().ReserveSetting_Pa, new AutomaticChangeover().ReserveDroop_Pa)),
            [new GasLoad(asked_Btu_h * Btu_h / HeatingValue_J_kg, 2600)]);
        supply.Set(0, open: true);
        return supply;
    }

    [Fact]
    public void A_service_side_with_pressure_to_spare_feeds_alone()
    {
        SupplyPoint point = Supply(25_000).At(new FeedPressures(Sea_Pa + 40 * Psi_Pa, Sea_Pa + 60 * Psi_Pa, 270), Sea_Pa);
        Assert.True(point.IsFull);
        Assert.Equal(0, point.Reserve_kg_s);
    }

    // UL 144 as read: the reserve opens when the service side cannot hold the pressure between the stages.
    [Fact]
    public void Below_the_setting_the_reserve_makes_up_what_the_service_side_lacks()
    {
        GasSupply supply = Supply(25_000);
        SupplyPoint half = supply.At(new FeedPressures(Sea_Pa + 6.4 * Psi_Pa, Sea_Pa + 60 * Psi_Pa, 245), Sea_Pa);
        Assert.True(half.IsFull);
        Assert.InRange(half.Reserve_kg_s / half.Flow_kg_s, 0.05, 0.95);
        SupplyPoint gone = supply.At(new FeedPressures(Sea_Pa - 5000, Sea_Pa + 60 * Psi_Pa, 230), Sea_Pa);
        Assert.True(gone.IsFull);
        Assert.Equal(1, gone.Reserve_kg_s / gone.Flow_kg_s, 1e-6);
    }

    // Set higher than the service side, even than the inlet at which the plate states the flow, the reserve feeds first, through an orifice of the same size.
    [Fact]
    public void A_reserve_set_above_the_rated_inlet_feeds_first()
    {
        RegulatorSpecification plate = new() { RatedInlet_Pa = 15 * Psi_Pa, PigtailLoss_Pa = 700 };
        GasSupply supply = new(new TwoStageRegulator(plate, HeatingValue_J_kg, (19 * Psi_Pa, 1.5 * Psi_Pa)), [new GasLoad(60_000 * Btu_h / HeatingValue_J_kg, 2600)]);
        supply.Set(0, open: true);
        SupplyPoint sagging = supply.At(new FeedPressures(Sea_Pa + 7 * Psi_Pa, Sea_Pa + 8.6 * Psi_Pa, 240), Sea_Pa);
        Assert.Equal(1, sagging.Reserve_kg_s / sagging.Flow_kg_s, 1e-9);
        Assert.InRange(sagging.Flow_kg_s / supply.Demand_kg_s, 0.1, 1);
    }

    [Fact]
    public void The_reserve_never_gives_less_as_the_service_side_sags()
        => Gen.Select(Gen.Double[2000, 120_000], Gen.Double[-0.5, 30], Gen.Double[0, 5], Gen.Double[3, 80], Gen.Double[70_000, 101_325]).Sample(
            (asked_Btu_h, service_psi, fall_psi, reserve_psi, air_Pa) =>
            {
                GasSupply supply = Supply(asked_Btu_h);
                SupplyPoint At(double psi) => supply.At(new FeedPressures(air_Pa + psi * Psi_Pa, air_Pa + reserve_psi * Psi_Pa, 250), air_Pa);
                SupplyPoint high = At(service_psi), low = At(service_psi - fall_psi);
                Assert.InRange(high.Reserve_kg_s, 0, high.Flow_kg_s * (1 + 1e-9));
                Assert.True(low.Flow_kg_s <= high.Flow_kg_s * (1 + 1e-6));
                Assert.True(low.Reserve_kg_s >= high.Reserve_kg_s * (1 - 1e-5) - 1e-9, $"{low} after {high}");
            }, iter: 3000);

    [Fact]
    public void A_cold_service_cylinder_switches_with_liquid_still_in_it_and_comes_back_as_it_warms()
    {
        Rig rig = OnChangeover(Bottle("20 lb", 0.6), Bottle("20 lb", 0.9)) with
        {
            Appliances = [Draw(20_000, 0, new ClockWindow(17 * 3600, 3 * 3600)), Draw(3000, 0, new ClockWindow(9 * 3600, 15 * 3600))],
        };
        Trace run = Run(rig, Changing(h => h < 14 ? -26 : -4), 22);
        Assert.True(run.Has(EventKind.ReserveFeeds));
        SimulationEvent feeds = run.Events.First(e => e.Kind == EventKind.ReserveFeeds);
        Assert.True(feeds.Value > 1, $"{feeds.Value} kg left on the service side");
        Assert.False(run.Has(EventKind.LiquidGone));
        Assert.True(run.First_s(EventKind.ServiceAlone) > feeds.Time_s);
        Assert.False(run.Has(EventKind.ShortBegins));
        Assert.True(run.Result.Ledger.Closes);
    }

    [Fact]
    public void Gas_never_goes_from_one_side_to_the_other()
    {
        Rig rig = OnChangeover(Bottle("20 lb", 0.4), Bottle("20 lb", 0.8), 30_000);
        Trace run = Run(rig, Steady(-25), 10);
        for (int i = 0; i < 2; i++)
            Assert.All(run.Steps, s => Assert.True(s.To.Cylinders[i].Propane_kg <= s.From.Cylinders[i].Propane_kg + 1e-12));
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Books_close_on_a_changeover()
        => Gen.Select(Gen.Double[0.03, 0.9], Gen.Double[0.03, 0.9], Gen.Double[-40, 10], Gen.Double[2000, 60_000]).Sample((a, b, air_C, draw_Btu_h) =>
        {
            Trace run = Run(OnChangeover(Bottle("20 lb", a), Bottle("30 lb", b), draw_Btu_h), Steady(air_C), 10);
            Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        }, iter: 300);

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void A_changeover_needs_two(int count)
        => Assert.Throws<ArgumentException>(() => new Simulation(
            new Rig { Cylinders = [.. Enumerable.Repeat(Bottle(), count)], Arrangement = new AutomaticChangeover() }, Steady(-5), Settings(1)));
}
