using ColdSim.Physics.Geometry;
using ColdSim.Physics.HeatTransfer;
using CsCheck;
using MathNet.Numerics.Integration;
using Xunit;

namespace ColdSim.Tests.Physics.Geometry;

public class PressureVesselTests
{
    // Volume from a little above that of the heads (π D³/12) to a long tube, with and without a wall.
    private static readonly Gen<PressureVessel> Vessels = Gen.Select(Gen.Double[0.2, 0.6], Gen.Double[1.001, 12], Gen.Double[0, 0.02], Gen.Bool)
        .Select((d, times, wall, upright) =>
        {
            double volume = times * Math.PI * Math.Pow(d - (2 * wall), 3) / 12;
            return upright ? (PressureVessel)new UprightCylinder(volume, d, wall) : new HorizontalTank(volume, d, wall);
        });

    private static readonly Gen<(PressureVessel Vessel, double Fill)> Filled = Gen.Select(Vessels, Gen.Double[0, 1]);

    [Fact]
    public void Level_and_volume_undo_each_other()
        => Filled.Sample(c =>
        {
            double volume = c.Fill * c.Vessel.Volume_m3;
            double level = c.Vessel.LiquidLevel_m(volume);
            return Math.Abs(c.Vessel.VolumeAtLevel_m3(level) - volume) <= 1e-12 * c.Vessel.Volume_m3
                && Math.Abs(c.Vessel.LiquidLevel_m(c.Vessel.VolumeAtLevel_m3(level)) - level) <= 1e-12 * c.Vessel.FullLevel_m / Math.Min(1, Math.Sqrt(Math.Min(c.Fill, 1 - c.Fill) + 1e-30));
        }, iter: 2_000);

    [Fact]
    public void A_trace_of_liquid_keeps_its_relative_precision()
        => Gen.Select(Vessels, Gen.Double[-9, -1]).Sample((vessel, log) =>
        {
            double volume = Math.Pow(10, log) * vessel.Volume_m3;
            return Math.Abs((vessel.VolumeAtLevel_m3(vessel.LiquidLevel_m(volume)) / volume) - 1) < 1e-9;
        }, iter: 1_000);

    // A cap of a 2:1 head with radius r and relative height s holds π/6 r³ s² (3 - s); between the heads the section is π r².
    [Fact]
    public void Level_and_volume_of_an_upright_cylinder_are_those_of_its_head_its_body_and_its_other_head()
    {
        const double r = 0.15, straight = 0.4, depth = 0.075, head = Math.PI / 3 * r * r * r, section = Math.PI * r * r;
        UprightCylinder v = new(2 * head + section * straight, 2 * r);
        for (double s = 0.01; s < 1; s += 0.07)
        {
            double cap = Math.PI / 6 * r * r * r * s * s * (3 - s);
            (double Level, double Volume)[] pairs =
            [
                (s * depth, cap),
                (depth + s * straight, head + section * s * straight),
                (2 * depth + straight - s * depth, v.Volume_m3 - cap),
            ];
            foreach ((double level, double volume) in pairs)
            {
                Assert.Equal(volume, v.VolumeAtLevel_m3(level), 1e-14);
                Assert.Equal(level, v.LiquidLevel_m(volume), 1e-13);
            }
        }

        Assert.Equal((0.0, 0.0), (v.VolumeAtLevel_m3(-0.01), v.LiquidLevel_m(-1e-6)));
        Assert.Equal((v.Volume_m3, v.FullLevel_m), (v.VolumeAtLevel_m3(v.FullLevel_m + 0.01), v.LiquidLevel_m(v.Volume_m3 + 1e-6)));
    }

    // From tanks that are nearly all head to a long tube, from a trace to nearly full.
    [Fact]
    public void Level_of_a_lying_tank_keeps_its_digits_at_every_fill()
    {
        foreach (double times in (double[])[1.001, 1.03, 1.5, 12])
        {
            HorizontalTank v = new(times * Math.PI * 0.4 * 0.4 * 0.4 / 12, 0.4);
            for (double share = 1e-10; share < 0.5; share *= 1.7)
            {
                double volume = share * v.Volume_m3, level = v.LiquidLevel_m(volume);
                Assert.Equal(1, v.VolumeAtLevel_m3(level) / volume, 1e-11);
                Assert.Equal(v.FullLevel_m - level, v.LiquidLevel_m(v.Volume_m3 - volume), 1e-9);
            }
        }
    }

    [Fact]
    public void Level_never_falls_as_volume_rises()
        => Gen.Select(Vessels, Gen.Double[0, 1], Gen.Double[1e-9, 0.01]).Sample((vessel, fill, more) =>
            vessel.LiquidLevel_m(Math.Min(1, fill + more) * vessel.Volume_m3) >= vessel.LiquidLevel_m(fill * vessel.Volume_m3), iter: 2_000);

    [Fact]
    public void Empty_half_and_full_are_where_symmetry_puts_them()
        => Vessels.Sample(v =>
        {
            Assert.Equal(0, v.LiquidLevel_m(0), 1e-12);
            Assert.Equal(0.5 * v.FullLevel_m, v.LiquidLevel_m(0.5 * v.Volume_m3), 1e-9);
            Assert.Equal(v.FullLevel_m, v.LiquidLevel_m(v.Volume_m3), 1e-9);
            Assert.Equal(0, v.WettedArea_m2(0), 1e-12);
            Assert.Equal(0.5 * v.OutsideArea_m2, v.WettedArea_m2(0.5 * v.FullLevel_m), 1e-9);
            Assert.Equal(v.OutsideArea_m2, v.WettedArea_m2(v.FullLevel_m), 1e-9);
            Assert.Equal(0, v.DryFinLength_m(v.FullLevel_m), 1e-6);
        });

    [Fact]
    public void Wetted_and_projected_area_grow_with_level()
        => Gen.Select(Vessels, Gen.Double[0, 0.99], Gen.Double[1e-3, 0.01]).Sample((v, s, more) =>
            v.WettedArea_m2((s + more) * v.FullLevel_m) > v.WettedArea_m2(s * v.FullLevel_m)
            && v.ProjectedWettedArea_m2((s + more) * v.FullLevel_m) > v.ProjectedWettedArea_m2(s * v.FullLevel_m));

    [Fact]
    public void Upright_wetted_area_is_the_line_integral_of_the_liquid_line_along_the_wall()
    {
        // Trapezoids over the meridian of the heads, x = r cos a, z = (r/2) sin a; 1e-6 from 20 000 of them.
        UprightCylinder v = new(0.0216, 0.31);
        foreach (double fill in (double[])[0.03, 0.1, 0.5, 0.9, 0.97])
        {
            double level = fill * v.FullLevel_m, r = 0.155, area = 0;
            const int n = 20_000;
            for (int i = 0; i < n; i++)
            {
                double a = (i + 0.5) * Math.PI / 2 / n;
                double strip = Math.Tau * r * Math.Cos(a) * r * Math.Sqrt(Math.Pow(Math.Sin(a), 2) + (0.25 * Math.Pow(Math.Cos(a), 2))) * Math.PI / 2 / n;
                area += (0.5 * r) - (0.5 * r * Math.Sin(a)) < level ? strip : 0;
                area += (0.5 * r) + v.StraightLength_m + (0.5 * r * Math.Sin(a)) < level ? strip : 0;
            }

            area += Math.Tau * r * Math.Clamp(level - (0.5 * r), 0, v.StraightLength_m);
            Assert.Equal(area, v.WettedArea_m2(level), 5e-5);
        }
    }

    [Fact]
    public void Lying_heads_are_wetted_as_counted_over_a_fine_grid()
    {
        // All head and no straight part: an oblate ellipsoid, its points weighted with their area, x = r cos a across, z up.
        const double d = 0.3;
        HorizontalTank v = new(Math.PI * d * d * d / 12 * (1 + 1e-12), d);
        foreach (double s in (double[])[0.1, 0.3, 0.7, 0.9])
        {
            double area = 0;
            const int n = 20_000;
            for (int i = 0; i < n; i++)
            {
                // a: latitude from the rim; b: round the axis.
                double a = ((i + 0.5) / n * Math.PI) - (Math.PI / 2);
                double ring = 0.5 * d * Math.Cos(a);
                double width = 0.5 * d * Math.Sqrt(Math.Pow(Math.Sin(a), 2) + (0.25 * Math.Pow(Math.Cos(a), 2))) * Math.PI / n;
                double cosine = Math.Clamp(((0.5 * d) - (s * d)) / ring, -1, 1);
                area += 2 * Math.Acos(cosine) * ring * width;
            }

            Assert.Equal(area, v.WettedArea_m2(s * d), 1e-6);
        }
    }

    [Fact]
    public void Areas_are_those_of_solid_geometry()
    {
        // Two 2:1 heads make an oblate spheroid of half axes r, r/2: area 2π r² (1 + (1 - e²)/e · artanh e), e² = 3/4; volume (2/3) π r³.
        const double d = 0.4, r = 0.2;
        double e = Math.Sqrt(0.75);
        UprightCylinder v = new(2 * Math.PI * r * r * r / 3 + (Math.PI * r * r * 0.5), d);
        Assert.Equal(0.5, v.StraightLength_m, 1e-12);
        Assert.Equal((Math.Tau * r * 0.5) + (Math.Tau * r * r * (1 + (0.25 / e * Math.Atanh(e)))), v.OutsideArea_m2, 1e-12);
        Assert.Equal(0.5 + r, v.Height_m, 1e-12);
        Assert.Equal(0.5 + r, new HorizontalTank(v.Volume_m3, d).Length_m, 1e-12);
        Assert.Equal((0.5 * d) + (Math.PI * r * r / 2), v.ProjectedWettedArea_m2(v.FullLevel_m), 1e-12);
        Assert.Equal(v.ProjectedWettedArea_m2(v.FullLevel_m), new HorizontalTank(v.Volume_m3, d).ProjectedWettedArea_m2(d), 1e-12);
    }

    [Fact]
    public void Liquid_line_of_an_upright_cylinder_is_its_girth_and_of_a_lying_one_both_sides_and_the_heads()
    {
        UprightCylinder up = new(0.0216, 0.31);
        HorizontalTank lying = new(0.05, 0.31);
        Assert.Equal(Math.PI * 0.31, up.FinRootLength_m(0.5 * up.FullLevel_m), 1e-12);
        Assert.Equal(0, up.FinRootLength_m(0), 1e-9);

        // Half full, the two ends together are one ellipse of half axes r and r/2; Ramanujan's formula for its length is good to 1e-5 here.
        const double a = 0.155, b = 0.0775;
        double ellipse = Math.PI * ((3 * (a + b)) - Math.Sqrt(((3 * a) + b) * (a + (3 * b))));
        Assert.Equal((2 * lying.StraightLength_m) + ellipse, lying.FinRootLength_m(0.155), 1e-4);
    }

    [Fact]
    public void Side_of_lying_heads_is_its_integral_to_a_thousand_millionth()
    {
        // All head: zones of the spheroid across its long axis, each an ellipse's girth (trapezoids over a period, exact to rounding), by Gauss's rule over the zones.
        const double d = 0.3, r = 0.15;
        HorizontalTank v = new(Math.PI * d * d * d / 12 * (1 + 1e-12), d);
        foreach (double x in (double[])[-0.999, -0.9, -0.501, -0.1234, 0.003, 0.37, 0.8011])
        {
            double area = r * r * GaussLegendreRule.Integrate(Girth, -1, x, 128);
            Assert.Equal(area, v.WettedArea_m2(r * (1 + x)), 1e-9 * v.OutsideArea_m2);
        }

        static double Girth(double x)
        {
            const int n = 200;
            double sum = 0;
            for (int i = 0; i < n; i++) sum += Math.Sqrt(1 + 3 * (1 - x * x) * Math.Pow(Math.Sin(Math.PI * i / n), 2));
            return sum * Math.PI / n;
        }
    }

    [Fact]
    public void Low_liquid_in_a_lying_tank_fills_circular_segments_and_caps()
        => Gen.Select(Gen.Double[0.25, 0.7], Gen.Double[1.001, 12]).Sample((angle, times) =>
        {
            // Where the difference of angle and sine still has twelve digits.
            const double d = 0.4, r = 0.2;
            HorizontalTank v = new(times * Math.PI * d * d * d / 12, d);
            double segment = angle - Math.Sin(angle) * Math.Cos(angle), rise = 1 - Math.Cos(angle);
            double volume = v.StraightLength_m * r * r * segment + Math.PI / 6 * r * r * r * rise * rise * (2 + Math.Cos(angle));
            Assert.Equal(1, v.VolumeAtLevel_m3(r * rise) / volume, 2e-12);
        }, iter: 500);

    [Fact]
    public void Liquid_line_of_a_lying_tank_shortens_at_its_ends_away_from_the_middle_and_its_outline_is_that_of_the_outside()
    {
        const double d = 0.31, wall = 0.006;
        HorizontalTank v = new(0.05, d, wall);
        double ends = v.FinRootLength_m(0.5 * v.FullLevel_m) - 2 * v.StraightLength_m;
        Assert.Equal(2 * v.StraightLength_m + ends * Math.Sqrt(0.75), v.FinRootLength_m(0.25 * v.FullLevel_m), 1e-12);
        Assert.Equal(2 * v.StraightLength_m + ends * Math.Sqrt(0.75), v.FinRootLength_m(0.75 * v.FullLevel_m), 1e-12);
        Assert.Equal(v.StraightLength_m * d + Math.PI * d * d / 8, v.ProjectedWettedArea_m2(v.FullLevel_m), 1e-12);
        Assert.Equal(0.5 * v.ProjectedWettedArea_m2(v.FullLevel_m), v.ProjectedWettedArea_m2(0.5 * v.FullLevel_m), 1e-12);
    }

    [Fact]
    public void The_dry_wall_is_a_fin_as_long_as_its_area_over_its_root()
    {
        foreach (PressureVessel v in (PressureVessel[])[new UprightCylinder(0.0216, 0.31), new HorizontalTank(0.05, 0.31)])
        {
            double level = 0.4 * v.FullLevel_m;
            Assert.Equal((v.OutsideArea_m2 - v.WettedArea_m2(level)) / v.FinRootLength_m(level), v.DryFinLength_m(level), 1e-12);
        }

        // Empty there is no line, and the length stays finite.
        UprightCylinder empty = new(0.0216, 0.31);
        Assert.Equal(1, empty.DryFinLength_m(0) / (empty.OutsideArea_m2 / 0.31e-6), 1e-9);
    }

    [Fact]
    public void Wetted_wall_and_fin_together_never_shrink_as_an_upright_cylinder_fills()
        => Gen.Select(Gen.Double[0.2, 0.6], Gen.Double[1.001, 12], Gen.Double[-3, 3], Gen.Double[0, 1], Gen.Double[0, 0.01]).Sample((d, times, log, s, more) =>
        {
            UprightCylinder v = new(times * Math.PI * d * d * d / 12, d);
            double h = Math.Pow(10, log);
            return Cooling(Math.Min(1, s + more)) >= Cooling(s) - (1e-9 * v.OutsideArea_m2) && Cooling(s) <= v.OutsideArea_m2 * (1 + 1e-9);

            double Cooling(double share)
            {
                double level = share * v.FullLevel_m;
                return v.WettedArea_m2(level) + (v.FinRootLength_m(level) * Fin.EffectiveLength_m(h, 50, 0.002, v.DryFinLength_m(level)));
            }
        }, iter: 5_000);

    [Fact]
    public void Thick_walls_hold_less_inside_the_same_outline()
    {
        UprightCylinder thin = new(0.0216, 0.31);
        UprightCylinder thick = new(0.0216, 0.31, 0.003);
        Assert.True(thick.Height_m > thin.Height_m);
        Assert.Equal(thick.FullLevel_m + (2 * 0.003) / 2, thick.Height_m, 1e-12);
    }

    [Theory]
    [InlineData(0.001, 0.4, 0, "heads alone")]
    [InlineData(0, 0.3, 0, "0.0001 to 100 m³")]
    [InlineData(0.02, 0.01, 0, "0.02 to 5 m")]
    [InlineData(0.02, 0.3, 0.05, "0 to 0.03 m")]
    [InlineData(double.NaN, 0.3, 0, "0.0001 to 100 m³")]
    public void Impossible_vessels_are_refused_with_the_reason(double volume_m3, double diameter_m, double wall_m, string reason)
    {
        ArgumentOutOfRangeException upright = Assert.Throws<ArgumentOutOfRangeException>(() => new UprightCylinder(volume_m3, diameter_m, wall_m));
        Assert.Contains(reason, upright.Message, StringComparison.Ordinal);
        Assert.NotNull(upright.ActualValue);
        Assert.Contains(reason, Assert.Throws<ArgumentOutOfRangeException>(() => new HorizontalTank(volume_m3, diameter_m, wall_m)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Asking_for_level_and_areas_allocates_nothing()
    {
        PressureVessel[] vessels = [new UprightCylinder(0.0216, 0.31), new HorizontalTank(0.1, 0.36)];
        double sum = Ask(vessels);
        long before = GC.GetAllocatedBytesForCurrentThread();
        sum += Ask(vessels);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);

        static double Ask(PressureVessel[] vessels)
        {
            double sum = 0;
            foreach (PressureVessel v in vessels)
            {
                double level = v.LiquidLevel_m(0.4 * v.Volume_m3);
                sum += v.VolumeAtLevel_m3(level) + v.WettedArea_m2(level) + v.DryFinLength_m(level) + v.FinRootLength_m(level) + v.ProjectedWettedArea_m2(level);
            }

            return sum;
        }
    }
}
