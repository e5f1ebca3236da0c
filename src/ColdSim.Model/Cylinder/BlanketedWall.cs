using ColdSim.Model.Blanket;
using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;

namespace ColdSim.Model.Cylinder;

/// <summary>A wall that is partly under a blanket: bare wall, wetted wall and dry wall under the blanket.</summary>
/// <remarks>
/// The element lies between wall and insulation. Below the liquid's level its heat divides between the inside film and the insulation as their
/// conductances do; above it the wall is a heated fin with a temperature of its own.
/// </remarks>
internal static class BlanketedWall
{
    // A cylinder that is full of liquid still has this part of its wall above it, so that the dry wall keeps a time constant.
    private const double LeastDry_frac = 0.01;

    // At the very top and bottom of a vessel the liquid's line shrinks to a point.
    private const double LeastLine_m = 1e-3;

    /// <summary>The coupling of a cylinder under a blanket.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="blanket">The blanket.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="convection">Convection on the wall.</param>
    /// <param name="liquid_m3">Volume of the liquid. [m³]</param>
    /// <param name="wholeShell_frac">How far vapour and shell are at one temperature.</param>
    /// <param name="t_K">Temperature of contents and shell. [K]</param>
    /// <param name="bare">Coupling of the whole wall if it were bare.</param>
    public static HeatCoupling At(
        CylinderBody body, BlanketSpecification blanket, in WeatherSample weather, in ExternalConvection convection, double liquid_m3,
        double wholeShell_frac, double t_K, in HeatCoupling bare)
    {
        CylinderSurroundings around = body.Specification.Surroundings;
        double covered = blanket.Coverage_frac, insulation_m2K_W = blanket.Insulation_m2K_W, inside_W_m2K = around.InsideFilm_W_m2K;
        double environment_K, outward_W_m2K, bareOutward_W_m2K;
        if (around.FixedConductance_W_K is double measured_W_K)
        {
            bareOutward_W_m2K = measured_W_K / body.Vessel.OutsideArea_m2;
            outward_W_m2K = measured_W_K > 0 ? 1 / (1 / bareOutward_W_m2K + insulation_m2K_W) : 0;
            environment_K = weather.Air_K;
        }
        else
        {
            ExternalHeatTransfer film = new(body, weather, convection, t_K, insulation_m2K_W);
            bareOutward_W_m2K = convection.OfWall_W_m2K + film.Radiation_W_m2K;
            outward_W_m2K = 1 / (1 / film.Total_W_m2K + insulation_m2K_W);
            environment_K = film.Environment_K(0);
        }

        double level_m = HeatCoupling.WettingLevel_m(body, liquid_m3);
        double all_m2 = body.Vessel.OutsideArea_m2, wetted_m2 = Math.Min(body.Vessel.WettedArea_m2(level_m), (1 - LeastDry_frac) * all_m2);
        double share_frac = inside_W_m2K / (inside_W_m2K + outward_W_m2K);

        // A measured conductance holds the inside film already.
        double wet_W_m2K = around.FixedConductance_W_K is null ? share_frac * outward_W_m2K : outward_W_m2K;
        DryWall wall = Wall(
            body, covered, outward_W_m2K, bareOutward_W_m2K, environment_K, level_m, all_m2 - wetted_m2, wholeShell_frac);
        double bare_W_K = (1 - covered) * bare.Conductance_W_K, wet_W_K = covered * wetted_m2 * wet_W_m2K, sum_W_K = bare_W_K + wet_W_K;
        double mixed_K = sum_W_K > 0 ? (bare_W_K * bare.Environment_K + wet_W_K * environment_K) / sum_W_K : weather.Air_K;
        double wettedShare_frac = (1 - wall.Power_frac) * share_frac;
        return covered < 1
            ? new HeatCoupling(sum_W_K, mixed_K, bare.FrostFlux_kg_m2s, bare.FrostInward_kg_m2s, wettedShare_frac, wall)
            : new HeatCoupling(sum_W_K, mixed_K, WettedShare_frac: wettedShare_frac, Wall: wall);
    }

    // Of what comes down the dry wall the part w reaches the liquid, with w the film's part of all that takes heat from the wetted wall; the rest goes back
    // outside. Heat from outside also meets a root that is warmer than the liquid, by the part 1 − w of the difference, so that of it w² arrives, as with the
    // bare wall's fin. The same is taken of the blanket's own heat, of which it is a little too little.
    private static DryWall Wall(
        CylinderBody body, double covered, double outward_W_m2K, double bareOutward_W_m2K, double environment_K, double level_m, double dry_m2,
        double wholeShell_frac)
    {
        CylinderSpecification cylinder = body.Specification;
        double conductivity_W_mK = cylinder.WallConductivity_W_mK, thickness_m = cylinder.WallThickness_m, film_W_m2K = cylinder.Surroundings.InsideFilm_W_m2K;
        double line_m = Math.Max(LeastLine_m, body.Vessel.FinRootLength_m(level_m)), height_m = dry_m2 / line_m;
        HeatedFin under = HeatedFin.Of(outward_W_m2K, conductivity_W_mK, thickness_m, height_m, film_W_m2K);
        HeatedFin beside = HeatedFin.Of(bareOutward_W_m2K, conductivity_W_mK, thickness_m, height_m, film_W_m2K);
        double underDown_W_m2K = under.ToRoot_W_mK / height_m, besideDown_W_m2K = beside.ToRoot_W_mK / height_m;

        // Round the vessel the wall is a fin too; a lying vessel has a wall on either side above its liquid.
        double edges = cylinder.Orientation == Orientation.Upright ? 2 : 4, edge_m = line_m / edges, besideAll_W_m2K = bareOutward_W_m2K + besideDown_W_m2K;
        HeatedStrip strip = HeatedStrip.Of(
            outward_W_m2K + underDown_W_m2K, besideAll_W_m2K, conductivity_W_mK * thickness_m, covered * edge_m, (1 - covered) * edge_m);
        double round_W_K = edges * height_m * strip.Beside_W_mK, under_m2 = covered * dry_m2, beside_m2 = round_W_K > 0 ? round_W_K / besideAll_W_m2K : 0;
        double vapour_W_K = cylinder.Surroundings.VapourFilm_W_m2K * (under_m2 + beside_m2);
        double underDown_W_K = underDown_W_m2K * under_m2, besideDown_W_K = besideDown_W_m2K * beside_m2;

        // A measured conductance is that of all the wall with its films.
        bool isMeasured = cylinder.Surroundings.FixedConductance_W_K is not null;
        double underWet = isMeasured ? 1 : film_W_m2K / (film_W_m2K + outward_W_m2K), besideWet = isMeasured ? 1 : film_W_m2K / (film_W_m2K + bareOutward_W_m2K);
        double underIn = underWet * underWet, besideIn = besideWet * besideWet;
        return new DryWall(
            body.ShellHeat_J_K * (under_m2 + beside_m2) / body.Vessel.OutsideArea_m2,
            underIn * underDown_W_K + besideIn * besideDown_W_K + wholeShell_frac * vapour_W_K, (1 - wholeShell_frac) * vapour_W_K,
            outward_W_m2K * under_m2, bareOutward_W_m2K * beside_m2 + (1 - underIn) * underDown_W_K + (1 - besideIn) * besideDown_W_K, environment_K,
            dry_m2 / body.Vessel.OutsideArea_m2, strip.MiddleOverMean * under.TipOverMean);
    }
}
