namespace ColdSim.Physics.SunAndSky;

/// <summary>Sunshine on the side of an upright cylinder.</summary>
/// <remarks>
/// Beam through the cylinder's outline, D H cos(altitude), spread over its whole side, π D H; half the sky and half the
/// ground are seen, both equally bright (Liu and Jordan 1963). No checks.
/// </remarks>
public static class VerticalCylinder
{
    /// <summary>Irradiance averaged over the side, W/m²: absorptance times this times π D H is the heat absorbed.</summary>
    /// <param name="beamNormal_W_m2">Direct irradiance square to the sun, W/m².</param>
    /// <param name="diffuseHorizontal_W_m2">Diffuse irradiance on a level surface, W/m².</param>
    /// <param name="globalHorizontal_W_m2">Global irradiance on a level surface, W/m².</param>
    /// <param name="altitude_rad">Altitude of the sun, rad; below 0 there is no beam.</param>
    /// <param name="albedo">Part of the sunshine the ground throws back.</param>
    public static double MeanIrradiance_W_m2(
        double beamNormal_W_m2, double diffuseHorizontal_W_m2, double globalHorizontal_W_m2, double altitude_rad, double albedo)
    {
        double beam = altitude_rad > 0 ? beamNormal_W_m2 * Math.Cos(altitude_rad) / Math.PI : 0;
        return beam + (0.5 * diffuseHorizontal_W_m2) + (0.5 * albedo * globalHorizontal_W_m2);
    }
}
