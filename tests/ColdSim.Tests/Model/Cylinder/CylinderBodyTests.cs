using ColdSim.Model.Cylinder;
using ColdSim.Physics.Geometry;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

public class CylinderBodyTests
{
    // Worked out elsewhere from the outside diameter, the wall and 2:1 heads; printed to three decimals, in m².
    [Theory]
    [InlineData("5 lb", 0.159)]
    [InlineData("10 lb", 0.256)]
    [InlineData("20 lb", 0.396)]
    [InlineData("30 lb", 0.539)]
    [InlineData("40 lb", 0.682)]
    [InlineData("100 lb", 1.353)]
    public void Outside_area_is_that_of_a_shell_with_its_wall(string size, double area_m2)
        // 0.3 %: the printed areas took walls of 2.0 to 2.4 mm, rounded otherwise.
        => Assert.Equal(1, new CylinderBody(Some.Cylinder(size)).Vessel.OutsideArea_m2 / area_m2, 3e-3);

    [Fact]
    public void Wetted_area_matches_the_one_worked_out_elsewhere()
    {
        // 20 lb and 100 lb size at 80, 50, 25 and 10 % of liquid, m²; printed to three decimals.
        (string Size, double[] Areas)[] printed = [("20 lb", [0.284, 0.198, 0.126, 0.081]), ("100 lb", [1.036, 0.677, 0.377, 0.198])];
        double[] full = [0.80, 0.50, 0.25, 0.10];
        foreach ((string size, double[] areas) in printed)
        {
            PressureVessel v = new CylinderBody(Some.Cylinder(size)).Vessel;
            for (int i = 0; i < full.Length; i++)
                Assert.Equal(areas[i], v.WettedArea_m2(v.LiquidLevel_m(full[i] * v.Volume_m3)), 0.004 * areas[i] + 0.0005);
        }
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Every_shell_that_a_scenario_accepts_can_be_built()
        => Gen.Select(Gen.Double[0.001, 0.5], Gen.Double[0.1, 1], Gen.Double[0.0005, 0.03]).Sample((volume_m3, diameter_m, wall_m) =>
        {
            bool accepted = wall_m <= 0.1 * diameter_m && ColdSim.Files.Scenarios.Sections.ShellGeometry.StraightLength_m(volume_m3, diameter_m - 2 * wall_m) is >= 0 and < 20;
            if (!accepted) return;
            CylinderBody body = new(Some.Cylinder("20 lb") with { Volume_m3 = volume_m3, OutsideDiameter_m = diameter_m, WallThickness_m = wall_m });
            Assert.Equal(volume_m3, body.Vessel.VolumeAtLevel_m3(body.Vessel.FullLevel_m), 1e-9);
        }, iter: 3000);

    [Fact]
    public void A_squat_shell_whose_heads_alone_fit_its_inside_can_be_built()
    {
        // 310 mm outside, 4 mm wall: heads hold 7.21 L inside, but 7.80 L if the wall were forgotten.
        CylinderBody body = new(Some.Cylinder("20 lb") with { Volume_m3 = 0.0074, OutsideDiameter_m = 0.31, WallThickness_m = 0.004 });
        Assert.InRange(body.Vessel.StraightLength_m, 0, 0.01);
    }

    [Fact]
    public void Stored_energy_is_propane_and_shell()
        => Gen.Select(Some.AnyCylinder, Some.Fill, Gen.Double[200, 330]).Sample((s, fill, t_K) =>
        {
            CylinderBody body = new(s);
            double mass_kg = fill * s.LegalFill_kg;
            double expected = body.Contents(mass_kg, t_K).InternalEnergy_J + s.MetalMass_kg * s.MetalHeat_J_kgK * t_K;
            return Math.Abs(body.StoredEnergy_J(mass_kg, t_K) / expected - 1) < 1e-12;
        });

    [Fact]
    [Trait("Category", "Slow")]
    public void Warming_is_heat_over_heat_capacity_and_a_draw_cools_by_its_own_heat()
        => Gen.Select(Some.AnyCylinder, Some.Fill, Gen.Double[200, 330], Gen.Double[-200, 200], Gen.Double[0, 1e-3]).Sample((s, fill, t_K, heat_W, draw_kg_s) =>
        {
            CylinderBody body = new(s);
            CylinderContents c = body.Contents(fill * s.LegalFill_kg, t_K);
            double stored_W = body.Warming_K_s(c, heat_W, draw_kg_s) * (c.HeatCapacity_J_K + s.MetalMass_kg * s.MetalHeat_J_kgK);
            return Math.Abs(stored_W - (heat_W - draw_kg_s * c.DrawHeat_J_kg)) < 1e-9 * (1 + Math.Abs(heat_W) + draw_kg_s * c.DrawHeat_J_kg);
        });
}
