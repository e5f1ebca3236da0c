using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;

namespace ColdSim.Model.Cylinder;

/// <summary>Heat exchange of a cylinder with its surroundings: Q = G (T_environment − T). SI units.</summary>
/// <remarks>
/// Air, surroundings, sky, sun and frost's latent heat are folded into one environment temperature, as in a sol-air temperature. Convection, radiation, sun,
/// frost and the dry wall as a fin are in it; docs/model.md, "Outside of the cylinder", has every equation and source.
/// </remarks>
/// <param name="Conductance_W_K">G, liquid and shell to outside, without the dry wall under a blanket. [W/K]</param>
/// <param name="Environment_K">The temperature at which no heat flows. [K]</param>
/// <param name="FrostFlux_kg_m2s">Frost deposited, or sublimed and melted if negative. [kg/(m²·s)]</param>
/// <param name="FrostInward_kg_m2s">What of it, and of the surface, goes into the layer and makes it denser. [kg/(m²·s)]</param>
/// <param name="WettedShare_frac">Part of a blanket's heat that is made below the liquid's level and goes into the liquid at once.</param>
/// <param name="Wall">The dry wall under a blanket.</param>
public readonly record struct HeatCoupling(
    double Conductance_W_K, double Environment_K, double FrostFlux_kg_m2s = 0, double FrostInward_kg_m2s = 0,
    double WettedShare_frac = 0, DryWall Wall = default)
{
    // Vapour missing to saturation, as part of the legal filling, at which the whole shell counts; an assumption.
    private const double Unsaturated_frac = 0.005;

    // Shortest time constant with which a shell goes over to counting whole, and how a saturated vapour's density grows with temperature; for a time scale.
    private const double ShortestChange_s = 10;
    private const double Saturating_1_K = 0.03;

    // Liquid, as part of the inside volume, down to which the wall it wets shrinks; an assumption. By the level in the vessel's foot that wall shrinks with a
    // root of the liquid, in the end so fast that heat held over a step would boil each drop that condenses away within milliseconds.
    private const double Puddle_frac = 0.0003;

    // A thickness given by the scenario counts as settled frost.
    private const double FixedFrostDensity_kg_m3 = 150;

    /// <summary>Heat into liquid and shell at a temperature, without a blanket's, once the dry wall is steady. [W]</summary>
    public double Heat_W(double temperature_K) => Heat_W(temperature_K, 0, 0);

    /// <summary>Heat into liquid and shell at a temperature while a blanket makes some, once the dry wall is steady. [W]</summary>
    /// <param name="temperature_K">Liquid. [K]</param>
    /// <param name="blanket_W">Power of the blanket. [W]</param>
    /// <param name="draw_kg_s">Vapour that leaves. [kg/s]</param>
    public double Heat_W(double temperature_K, double blanket_W, double draw_kg_s)
        => DirectHeat_W(temperature_K, blanket_W) + Wall.ToLiquid_W_K * Wall.SteadyExcess_K(temperature_K, blanket_W, draw_kg_s);

    /// <summary>Heat into liquid and shell that does not come by the dry wall under a blanket. [W]</summary>
    /// <param name="temperature_K">Liquid. [K]</param>
    /// <param name="blanket_W">Power of the blanket. [W]</param>
    public double DirectHeat_W(double temperature_K, double blanket_W)
        => Conductance_W_K * (Environment_K - temperature_K) + WettedShare_frac * blanket_W;

    /// <summary>Part of a blanket's heat that reaches the liquid once the dry wall is steady.</summary>
    /// <param name="draw_kg_s">Vapour that leaves. [kg/s]</param>
    public double BlanketShare_frac(double draw_kg_s) => WettedShare_frac + Wall.Power_frac * Wall.ToLiquid_frac(draw_kg_s);

    /// <summary>The coupling between liquid and surroundings at a state.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="mass_kg">Propane. [kg]</param>
    /// <param name="t_K">Temperature of liquid and shell. [K]</param>
    /// <param name="frost">Frost on the wall.</param>
    public static HeatCoupling At(CylinderBody body, in WeatherSample weather, double mass_kg, double t_K, in FrostLayer frost)
    {
        ArgumentNullException.ThrowIfNull(body);
        return At(body, weather, body.Contents(mass_kg, t_K), t_K, frost);
    }

    /// <summary>The coupling between liquid and surroundings at a state.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="contents">What is in it.</param>
    /// <param name="t_K">Temperature of liquid and shell. [K]</param>
    /// <param name="frost">Frost on the wall.</param>
    public static HeatCoupling At(CylinderBody body, in WeatherSample weather, in CylinderContents contents, double t_K, in FrostLayer frost)
    {
        ArgumentNullException.ThrowIfNull(body);
        return At(body, weather, contents.LiquidVolume_m3, WholeShell_frac(body, contents), t_K, frost);
    }

    /// <summary>How far the whole shell counts: 0 with liquid, 1 once the vapour is clearly unsaturated.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="contents">What is in it.</param>
    internal static double WholeShell_frac(CylinderBody body, in CylinderContents contents)
        => WholeShell_frac(contents, Unsaturated_frac * body.Specification.LegalFill_kg);

    /// <summary>How far the whole shell counts, where it does by a known shortage.</summary>
    /// <param name="contents">What is in the cylinder.</param>
    /// <param name="unsaturated_kg">Vapour missing to saturation at which all of it counts. [kg]</param>
    internal static double WholeShell_frac(in CylinderContents contents, double unsaturated_kg) => Math.Clamp(-contents.LiquidMass_kg / unsaturated_kg, 0, 1);

    /// <summary>Vapour missing to saturation at which the whole shell counts: enough for the heat to change no faster than within seconds. [kg]</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="contents">What is in it, without liquid.</param>
    /// <param name="capacity_J_K">Heat capacity of contents and shell. [J/K]</param>
    /// <param name="apart_W">Heat by which the whole shell and what a last drop wets differ. [W]</param>
    internal static double Unsaturated_kg(CylinderBody body, in CylinderContents contents, double capacity_J_K, double apart_W)
    {
        double saturated_kg = body.Specification.Volume_m3 / contents.VapourVolume_m3_kg - contents.LiquidMass_kg;
        return Math.Max(Unsaturated_frac * body.Specification.LegalFill_kg, ShortestChange_s * Math.Abs(apart_W) / capacity_J_K * Saturating_1_K * saturated_kg);
    }

    /// <summary>The coupling for a volume of liquid, or of the shell without any.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="liquid_m3">Volume of the liquid. [m³]</param>
    /// <param name="wholeShell_frac">How far the whole shell counts, and not only what the liquid, or a last drop of it, would wet and its fin.</param>
    /// <param name="t_K">Temperature of contents and shell. [K]</param>
    /// <param name="frost">Frost on the wall.</param>
    internal static HeatCoupling At(
        CylinderBody body, in WeatherSample weather, double liquid_m3, double wholeShell_frac, double t_K, in FrostLayer frost)
    {
        ExternalConvection convection = body.Specification.Surroundings.FixedConductance_W_K is null ? new(body, weather, t_K) : default;
        HeatCoupling bare = BareWall(body, weather, convection, liquid_m3, wholeShell_frac, t_K, frost);
        HeatCoupling coupling = body.Specification.Blanket is { Coverage_frac: > 0 } blanket
            ? BlanketedWall.At(body, blanket, weather, convection, liquid_m3, wholeShell_frac, t_K, bare)
            : bare;
        double factor = body.Specification.Surroundings.HeatGain_factor;
        return factor == 1 ? coupling : coupling with
        {
            Conductance_W_K = factor * coupling.Conductance_W_K,
            Wall = coupling.Wall with { Outside_W_K = factor * coupling.Wall.Outside_W_K, Beside_W_K = factor * coupling.Wall.Beside_W_K },
        };
    }

    private static HeatCoupling BareWall(
        CylinderBody body, in WeatherSample weather, in ExternalConvection convection, double liquid_m3, double wholeShell_frac, double t_K,
        in FrostLayer frost)
    {
        CylinderSurroundings around = body.Specification.Surroundings;
        if (around.FixedConductance_W_K is double measured_W_K)
            return new HeatCoupling(measured_W_K, weather.Air_K);

        double layer_m2K_W = around.FixedFrost_m is double fixed_m ? FixedFrost_m2K_W(fixed_m) : frost.Resistance_m2K_W;
        ExternalHeatTransfer film = new(body, weather, convection, t_K, layer_m2K_W);
        FrostExchange exchange = around.FixedFrost_m is null
            ? FrostExchange.At(weather, film, t_K, 1 / (layer_m2K_W + 1 / around.InsideFilm_W_m2K), frost)
            : default;
        double environment_K = film.Environment_K(exchange.Heat_W_m2);
        double conductance_W_K = WallConductance_W_K(body, liquid_m3, wholeShell_frac, film.Total_W_m2K, layer_m2K_W);
        return new HeatCoupling(conductance_W_K, environment_K, exchange.Flux_kg_m2s, exchange.Inward_kg_m2s);
    }

    // Wetted wall behind inside film and frost, and the dry wall above it as a fin behind frost. Without liquid the whole shell comes
    // to one temperature with the vapour and all of it counts: not at once, but as the vapour leaves saturation. A jump at the last
    // liquid would let a heated cylinder boil dry and cool to liquid again without end.
    private static double WallConductance_W_K(CylinderBody body, double liquid_m3, double wholeShell_frac, double outside_W_m2K, double layer_m2K_W)
    {
        double dry_W_m2K = 1 / (1 / outside_W_m2K + layer_m2K_W);
        double wet_W_m2K = 1 / (1 / dry_W_m2K + 1 / body.Specification.Surroundings.InsideFilm_W_m2K);
        CylinderSurroundings around = body.Specification.Surroundings;
        double level_m = WettingLevel_m(body, liquid_m3);
        double dry_m = body.Vessel.DryFinLength_m(level_m);
        double fin_m = around.FixedFin_m is double fixed_m
            ? Math.Min(fixed_m, dry_m)
            : Fin.EffectiveLength_m(
                dry_W_m2K, around.InsideFilm_W_m2K, body.Specification.WallConductivity_W_mK, body.Specification.WallThickness_m, dry_m);
        double wetted_W_K = wet_W_m2K * (body.Vessel.WettedArea_m2(level_m) + fin_m * body.Vessel.FinRootLength_m(level_m));
        return wetted_W_K + wholeShell_frac * (body.Vessel.OutsideArea_m2 * dry_W_m2K - wetted_W_K);
    }

    /// <summary>Level up to which liquid wets the wall. [m]</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="liquid_m3">Volume of the liquid. [m³]</param>
    internal static double WettingLevel_m(CylinderBody body, double liquid_m3)
    {
        CylinderSurroundings around = body.Specification.Surroundings;
        double wetting_m3 = Math.Max(liquid_m3, Puddle_frac * body.Vessel.Volume_m3) * around.WettingLiquid_factor + around.WettingExtra_m3;
        return body.Vessel.LiquidLevel_m(Math.Min(wetting_m3, body.Vessel.Volume_m3));
    }

    private static double FixedFrost_m2K_W(double thickness_m)
        => thickness_m / Frost.Conductivity_W_mK(FixedFrostDensity_kg_m3);
}
