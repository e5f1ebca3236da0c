using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Site;
using ColdSim.Model.Supply;
using ColdSim.Model.Thermostat;
using ColdSim.Planning;
using ColdSim.Planning.Explain;
using ColdSim.Tests.Model;

namespace ColdSim.Tests.Planning.Explain;

/// <summary>Six rigs that all run short in one night, each for another reason that is plain from how it was built.</summary>
internal static class SixRigs
{
    private static readonly RegulatorSpecification Ample = new() { RatedFlow_W = 400_000 * Rigs.Btu_h };

    public static IReadOnlyList<Limit> All { get; } = Enum.GetValues<Limit>();

    public static Scenario Of(Limit limit) => limit switch
    {
        Limit.HeatIntoLiquid => OneNight(-10, Drawing(40_000) with { Cylinders = [Rigs.Bottle().Fixed(3)] }),
        Limit.LittleLiquid => OneNight(-18, Drawing(25_000) with { Cylinders = [Rigs.Bottle("100 lb", 0.15)] }),
        Limit.Regulator => OneNight(0, new Rig
        {
            Cylinders = [Rigs.BigTank()],
            Regulator = new RegulatorSpecification { RatedFlow_W = 95_000 * Rigs.Btu_h },
            Appliances = [Rigs.Draw(60_000), Rigs.Draw(50_000)],
        }),

        // The furnace has nothing to do; the other appliance cools the steel of a nearly empty cylinder within the hour.
        Limit.Appliances => OneNight(-20, Rigs.Heated() with
        {
            Cylinders = [Rigs.Bottle("40 lb", 0.15).Fixed(1)],
            Coach = Rigs.OneNode(inside_C: 20, air_J_K: 5e6),
            Thermostat = Rigs.Holding(-15),
            Regulator = Ample,
            Appliances = [Rigs.Draw(60_000)],
        }),

        // So cold that the cylinder barely stands above the thin air.
        Limit.Altitude => OneNight(-46, Drawing(30_000) with
        {
            Cylinders = [Rigs.Bottle("40 lb", 0.3).Fixed(1.5)],
            Site = new SiteSpecification { Elevation_m = 4267 },
        }),
        Limit.LiquidGone => OneNight(5, Drawing(10_000) with { Cylinders = [Rigs.Bottle("5 lb", 0.8).Fixed(8)] }),
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, null),
    };

    private static Rig Drawing(double input_Btu_h) => new()
    {
        Cylinders = [],
        Regulator = Ample,
        Appliances = [Rigs.Draw(input_Btu_h)],
    };

    private static Scenario OneNight(double air_C, Rig rig)
        => Rigs.Scenario(rig, Rigs.Changing(_ => air_C, 72, 72, site: rig.Site), nights: 1);
}
