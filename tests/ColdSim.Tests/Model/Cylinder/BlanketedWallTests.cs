using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>The wall under a blanket with every film fixed: 13 W/m²K outside, 120 to the liquid, 8 to the vapour.</summary>
public class BlanketedWallTests
{
    private const double Liquid_K = 250;
    private const double Outside_W_m2K = 13, Inside_W_m2K = 120, Vapour_W_m2K = 8;
    private static readonly WeatherSample Dry = Some.Weather(260);

    private static CylinderSpecification Under(string size, double fill, double coverage_frac, double insulation_m2K_W = 0.25, double inside_W_m2K = Inside_W_m2K)
    {
        CylinderSurroundings around = Some.Sheltered with { FixedConvection_W_m2K = 9, FixedRadiation_W_m2K = 4, InsideFilm_W_m2K = inside_W_m2K };
        CylinderSpecification cylinder = Some.Cylinder(size, around);
        return cylinder with
        {
            Contents_kg = fill * cylinder.LegalFill_kg,
            Blanket = new BlanketSpecification { Power_W = 100, Coverage_frac = coverage_frac, Insulation_m2K_W = insulation_m2K_W },
        };
    }

    private static HeatCoupling Coupling(CylinderSpecification cylinder, WeatherSample weather)
        => HeatCoupling.At(new CylinderBody(cylinder), weather, cylinder.Contents_kg, Liquid_K, default);

    private static (double Wetted_m2, double Dry_m2, double Line_m) Areas(CylinderSpecification cylinder)
    {
        CylinderBody body = new(cylinder);
        double level_m = body.Vessel.LiquidLevel_m(body.Contents(cylinder.Contents_kg, Liquid_K).LiquidVolume_m3), wetted_m2 = body.Vessel.WettedArea_m2(level_m);
        return (wetted_m2, body.Vessel.OutsideArea_m2 - wetted_m2, body.Vessel.FinRootLength_m(level_m));
    }

    [Theory]
    [InlineData("20 lb", 0.5, 0.25)]
    [InlineData("100 lb", 0.25, 0.1)]
    [InlineData("20 gal", 0.6, 1)]
    public void A_cylinder_wholly_under_a_blanket_has_closed_forms(string size, double fill, double insulation_m2K_W)
    {
        CylinderSpecification cylinder = Under(size, fill, 1, insulation_m2K_W);
        (double wetted_m2, double dry_m2, double line_m) = Areas(cylinder);
        double through_W_m2K = 1 / (1 / Outside_W_m2K + insulation_m2K_W), inward = Inside_W_m2K / (Inside_W_m2K + through_W_m2K), all_m2 = wetted_m2 + dry_m2;
        HeatCoupling c = Coupling(cylinder, Dry);
        Assert.Equal(inward * through_W_m2K * wetted_m2, c.Conductance_W_K, 1e-12);
        Assert.Equal(260, c.Environment_K, 1e-9);
        Assert.Equal(wetted_m2 / all_m2 * inward, c.WettedShare_frac, 1e-12);
        Assert.Equal(dry_m2 / all_m2, c.Wall.Power_frac, 1e-12);
        Assert.Equal(through_W_m2K * dry_m2, c.Wall.Outside_W_K, 1e-12);
        Assert.Equal(260, c.Wall.Environment_K, 1e-9);
        Assert.Equal(Vapour_W_m2K * dry_m2, c.Wall.ToVapour_W_K, 1e-12);
        Assert.Equal(cylinder.MetalMass_kg * 460 * dry_m2 / all_m2, c.Wall.Capacity_J_K, 1e-9);

        // All that goes down the wall is the heated fin's; the root's film lets the part w² of it into the liquid.
        HeatedFin fin = HeatedFin.Of(through_W_m2K, 48, cylinder.WallThickness_m, dry_m2 / line_m, Inside_W_m2K);
        Assert.Equal(fin.ToRoot_W_mK * line_m, c.Wall.ToLiquid_W_K + c.Wall.Beside_W_K, 1e-9);
        Assert.Equal(inward * inward * fin.ToRoot_W_mK * line_m, c.Wall.ToLiquid_W_K, 1e-9);
        Assert.Equal(fin.TipOverMean, c.Wall.Hottest_factor, 1e-12);
    }

    // The sheet worked out in small rectangles, from the middle of the blanket round to the middle of the bare wall and down into the wetted wall.
    private static (double All_W_K, double ToLiquid_frac, double Hottest_factor) InSmallRectangles(CylinderSpecification cylinder)
    {
        const int Round = 40, Up = 40;
        (_, double dry_m2, double line_m) = Areas(cylinder);
        BlanketSpecification blanket = cylinder.Blanket!;
        double edges = cylinder.Orientation == Orientation.Upright ? 2 : 4, sheet_W_K = cylinder.WallConductivity_W_mK * cylinder.WallThickness_m;
        double height_m = dry_m2 / line_m, dx_m = line_m / edges / Round, dz_m = height_m / Up, under_W_m2K = 1 / (1 / Outside_W_m2K + blanket.Insulation_m2K_W);
        double inside_W_m2K = cylinder.Surroundings.InsideFilm_W_m2K;
        int below = (int)Math.Ceiling(8 * Math.Sqrt(sheet_W_K / inside_W_m2K) / dz_m), rows = below + Up, covered = (int)Math.Round(blanket.Coverage_frac * Round);
        double[,] excess_K = new double[Round, rows];
        double alongX = sheet_W_K / (dx_m * dx_m), alongZ = sheet_W_K / (dz_m * dz_m);
        for (int pass = 0; pass < 4000; pass++)
        {
            for (int i = 0; i < Round; i++)
            {
                for (int k = 0; k < rows; k++)
                {
                    double sum = i < covered && k >= below ? 1 : 0, by = (i < covered ? under_W_m2K : Outside_W_m2K) + (k < below ? inside_W_m2K : 0);
                    if (i > 0) (sum, by) = (sum + alongX * excess_K[i - 1, k], by + alongX);
                    if (i < Round - 1) (sum, by) = (sum + alongX * excess_K[i + 1, k], by + alongX);
                    if (k > 0) (sum, by) = (sum + alongZ * excess_K[i, k - 1], by + alongZ);
                    if (k < rows - 1) (sum, by) = (sum + alongZ * excess_K[i, k + 1], by + alongZ);
                    excess_K[i, k] += 1.85 * (sum / by - excess_K[i, k]);
                }
            }
        }

        double mean_K = 0, liquid_W = 0, made_W = covered * Up * dx_m * dz_m;
        for (int i = 0; i < Round; i++)
        {
            for (int k = 0; k < rows; k++)
            {
                if (k < below) liquid_W += inside_W_m2K * excess_K[i, k] * dx_m * dz_m;
                else if (i < covered) mean_K += excess_K[i, k] / (covered * Up);
            }
        }

        return (edges * made_W / mean_K, liquid_W / made_W, excess_K[0, rows - 1] / mean_K);
    }

    // The closed forms multiply a fin and a strip where the sheet spreads both ways at once; a few hundredths are what that costs.
    [Theory]
    [InlineData("20 lb", 0.5, 0.7, 0.25, Inside_W_m2K)]
    [InlineData("20 lb", 0.25, 0.5, 0.25, Inside_W_m2K)]
    [InlineData("20 lb", 0.75, 0.9, 0.05, Inside_W_m2K)]
    [InlineData("100 lb", 0.25, 0.7, 0.25, Inside_W_m2K)]
    [InlineData("20 gal", 0.5, 0.5, 0.25, Inside_W_m2K)]
    [InlineData("41 gal", 0.3, 0.7, 0.1, Inside_W_m2K)]
    [InlineData("20 lb", 0.5, 0.3, 0.5, 30)]
    public void The_dry_wall_takes_as_much_as_a_sheet_that_is_worked_out_in_small_rectangles(
        string size, double fill, double coverage_frac, double insulation_m2K_W, double inside_W_m2K)
    {
        CylinderSpecification cylinder = Under(size, fill, coverage_frac, insulation_m2K_W, inside_W_m2K);
        (double all_W_K, double toLiquid_frac, double hottest_factor) = InSmallRectangles(cylinder);
        DryWall wall = Coupling(cylinder, Dry).Wall;
        double sum_W_K = wall.ToLiquid_W_K + wall.Outside_W_K + wall.Beside_W_K;
        Assert.Equal(1, sum_W_K / all_W_K, 0.03);
        Assert.Equal(toLiquid_frac, wall.ToLiquid_frac(0), 0.04);
        Assert.Equal(1, wall.Hottest_factor / hottest_factor, 0.04);
    }

    // A wall that hardly conducts keeps all heat under the blanket: nothing goes down or round.
    [Fact]
    public void A_wall_that_does_not_conduct_loses_through_insulation_and_vapour_alone()
    {
        CylinderSpecification cylinder = Under("20 lb", 0.5, 0.6) with { WallConductivity_W_mK = 1e-9 };
        (_, double dry_m2, _) = Areas(cylinder);
        DryWall wall = Coupling(cylinder, Dry).Wall;
        double through_W_m2K = 1 / (1 / Outside_W_m2K + 0.25);
        Assert.Equal(0, wall.ToLiquid_W_K, 1e-4);
        Assert.Equal(0, wall.Beside_W_K, 1e-3);
        Assert.Equal(through_W_m2K * 0.6 * dry_m2, wall.Outside_W_K, 1e-9);
        Assert.Equal(Vapour_W_m2K * 0.6 * dry_m2, wall.ToVapour_W_K, 1e-3);
    }

    // One that conducts round without limit is one wall: the bare part of it loses through its own film, and all of it has one heat capacity and vapour film.
    [Fact]
    public void A_short_wall_that_conducts_well_has_the_whole_dry_wall_at_one_temperature()
    {
        CylinderSpecification cylinder = Under("20 lb", 0.5, 0.6) with { WallConductivity_W_mK = 1e7 };
        (double wetted_m2, double dry_m2, _) = Areas(cylinder);
        DryWall wall = Coupling(cylinder, Dry).Wall;
        Assert.Equal(Vapour_W_m2K * dry_m2, wall.ToVapour_W_K, 0.01 * Vapour_W_m2K * dry_m2);
        Assert.Equal(cylinder.MetalMass_kg * 460 * dry_m2 / (wetted_m2 + dry_m2), wall.Capacity_J_K, 0.01 * wall.Capacity_J_K);
        Assert.Equal(dry_m2 / (wetted_m2 + dry_m2), wall.Power_frac, 1e-12);
    }

    [Fact]
    public void Bare_and_covered_wall_take_heat_by_their_parts_and_frost_lies_on_the_bare_one()
    {
        WeatherSample humid = Some.Weather(260, 0, 0.95);
        HeatCoupling bare = Coupling(Under("20 lb", 0.5, 0.3) with { Blanket = null }, humid), whole = Coupling(Under("20 lb", 0.5, 1), humid);
        HeatCoupling part = Coupling(Under("20 lb", 0.5, 0.3), humid);
        double bare_W_K = 0.7 * bare.Conductance_W_K, under_W_K = 0.3 * whole.Conductance_W_K;
        Assert.Equal(bare_W_K + under_W_K, part.Conductance_W_K, 1e-12);
        Assert.True(bare.Environment_K > whole.Environment_K + 1);
        Assert.Equal((bare_W_K * bare.Environment_K + under_W_K * whole.Environment_K) / (bare_W_K + under_W_K), part.Environment_K, 1e-9);
        Assert.True(bare.FrostFlux_kg_m2s > 0 && bare.FrostInward_kg_m2s > 0);
        Assert.Equal((bare.FrostFlux_kg_m2s, bare.FrostInward_kg_m2s), (part.FrostFlux_kg_m2s, part.FrostInward_kg_m2s));
        Assert.Equal((0.0, 0.0), (whole.FrostFlux_kg_m2s, whole.FrostInward_kg_m2s));
        Assert.Equal(whole.WettedShare_frac, part.WettedShare_frac, 1e-12);
    }

    // A measured conductance holds both films: what passes the insulation has no further film to pass, and all that comes down the wall arrives.
    [Fact]
    public void A_measured_conductance_holds_the_films_already()
    {
        CylinderSpecification cylinder = Under("20 lb", 0.5, 1);
        cylinder = cylinder with { Surroundings = cylinder.Surroundings with { FixedConductance_W_K = 3 } };
        (double wetted_m2, double dry_m2, double line_m) = Areas(cylinder);
        double all_m2 = wetted_m2 + dry_m2, through_W_m2K = 1 / (all_m2 / 3 + 0.25);
        HeatCoupling c = Coupling(cylinder, Dry);
        Assert.Equal(through_W_m2K * wetted_m2, c.Conductance_W_K, 1e-12);
        Assert.Equal(through_W_m2K * dry_m2, c.Wall.Outside_W_K, 1e-12);
        Assert.Equal(HeatedFin.Of(through_W_m2K, 48, cylinder.WallThickness_m, dry_m2 / line_m, Inside_W_m2K).ToRoot_W_mK * line_m, c.Wall.ToLiquid_W_K, 1e-9);
        Assert.Equal(0, c.Wall.Beside_W_K, 1e-12);

        HeatCoupling half = Coupling(cylinder with { Blanket = cylinder.Blanket! with { Coverage_frac = 0.5 } }, Dry);
        Assert.Equal(0.5 * 3 + 0.5 * through_W_m2K * wetted_m2, half.Conductance_W_K, 1e-12);
        Assert.True(half.Wall.Beside_W_K > 0);
    }

    [Fact]
    public void Nothing_passes_where_the_measured_conductance_is_nothing()
    {
        CylinderSpecification cylinder = Under("20 lb", 0.5, 1);
        HeatCoupling c = Coupling(cylinder with { Surroundings = cylinder.Surroundings with { FixedConductance_W_K = 0 } }, Dry);
        Assert.Equal((0.0, 260.0, 0.0), (c.Conductance_W_K, c.Environment_K, c.Wall.Outside_W_K));
        Assert.Equal(1, c.BlanketShare_frac(0), 1e-9);
    }

    [Fact]
    public void A_cylinder_full_of_liquid_keeps_a_hundredth_of_its_wall_dry()
    {
        CylinderSpecification cylinder = Under("20 lb", 1, 1);
        HeatCoupling c = HeatCoupling.At(new CylinderBody(cylinder), Dry, cylinder.Volume_m3, 0, Liquid_K, default);
        Assert.Equal(0.01, c.Wall.Power_frac, 1e-9);
        Assert.True(c.Wall.TimeConstant_s > 1 && double.IsFinite(c.Wall.ToLiquid_W_K));
        Assert.InRange(c.Wall.Hottest_factor, 1, 2);
    }

    // Without liquid the vapour and the whole shell come to one temperature, so that its film brings the wall's heat to them.
    [Fact]
    public void As_the_whole_shell_comes_to_count_the_vapour_takes_heat_for_it()
    {
        CylinderSpecification cylinder = Under("20 lb", 0.5, 1);
        CylinderBody body = new(cylinder);
        DryWall wet = HeatCoupling.At(body, Dry, 0, 0, Liquid_K, default).Wall, between = HeatCoupling.At(body, Dry, 0, 0.3, Liquid_K, default).Wall;
        Assert.True(wet.ToVapour_W_K > 1);
        Assert.Equal(0.7 * wet.ToVapour_W_K, between.ToVapour_W_K, 1e-9);
        Assert.Equal(wet.ToLiquid_W_K + 0.3 * wet.ToVapour_W_K, between.ToLiquid_W_K, 1e-9);
    }
}
