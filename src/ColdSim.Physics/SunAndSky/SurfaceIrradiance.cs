namespace ColdSim.Physics.SunAndSky;

/// <summary>Irradiance on a plane of any tilt and on the side of a vertical cylinder.</summary>
/// <remarks>Source: Liu and Jordan 1963: the sky and the ground are equally bright in every direction. No checks.</remarks>
internal static class SurfaceIrradiance
{
    /// <summary>Irradiance of a plane, W/m², from the sun's disc, the sky and the ground.</summary>
    /// <param name="beamNormal_W_m2">Direct irradiance square to the sun, W/m².</param>
    /// <param name="diffuseHorizontal_W_m2">Diffuse irradiance on a level surface, W/m².</param>
    /// <param name="globalHorizontal_W_m2">Global irradiance on a level surface, W/m².</param>
    /// <param name="sun">Position of the sun.</param>
    /// <param name="tilt_rad">Tilt of the surface: 0 level and facing up, π/2 upright.</param>
    /// <param name="surfaceAzimuth_rad">Direction the surface faces, from north, clockwise, rad.</param>
    /// <param name="albedo">Part of the sunshine the ground throws back: grass 0.2, old snow 0.5 to 0.6, fresh snow 0.75 to 0.9.</param>
    public static double Plane_W_m2(
        double beamNormal_W_m2,
        double diffuseHorizontal_W_m2,
        double globalHorizontal_W_m2,
        SunAngles sun,
        double tilt_rad,
        double surfaceAzimuth_rad,
        double albedo)
    {
        (double sinTilt, double cosTilt) = Math.SinCos(tilt_rad);
        (double sinAltitude, double cosAltitude) = Math.SinCos(sun.Altitude_rad);
        double cosIncidence = (sinAltitude * cosTilt) + (cosAltitude * sinTilt * Math.Cos(sun.Azimuth_rad - surfaceAzimuth_rad));

        // A surface can face a sun that is below the horizon; the ground is then in the way.
        double beam = sinAltitude > 0 ? beamNormal_W_m2 * Math.Max(0, cosIncidence) : 0;
        return beam + (diffuseHorizontal_W_m2 * 0.5 * (1 + cosTilt)) + (globalHorizontal_W_m2 * albedo * 0.5 * (1 - cosTilt));
    }

    /// <summary>Irradiance of a vertical cylinder averaged over its side, W/m²: absorptance times this times π D H is the heat absorbed.</summary>
    /// <remarks>
    /// Beam through the cylinder's outline, D H cos(altitude), spread over its whole side, π D H; half the sky and half the ground are seen.
    /// </remarks>
    /// <param name="beamNormal_W_m2">Direct irradiance square to the sun, W/m².</param>
    /// <param name="diffuseHorizontal_W_m2">Diffuse irradiance on a level surface, W/m².</param>
    /// <param name="globalHorizontal_W_m2">Global irradiance on a level surface, W/m².</param>
    /// <param name="altitude_rad">Altitude of the sun, rad; below 0 there is no beam.</param>
    /// <param name="albedo">Part of the sunshine the ground throws back.</param>
    public static double VerticalCylinder_W_m2(
        double beamNormal_W_m2, double diffuseHorizontal_W_m2, double globalHorizontal_W_m2, double altitude_rad, double albedo)
    {
        double beam = altitude_rad > 0 ? beamNormal_W_m2 * Math.Cos(altitude_rad) / Math.PI : 0;
        return beam + (0.5 * diffuseHorizontal_W_m2) + (0.5 * albedo * globalHorizontal_W_m2);
    }
}
