namespace ColdSim.Physics.SunAndSky;

/// <summary>Where the sun stands.</summary>
/// <param name="Altitude_rad">Angle above the horizon, rad; negative when the sun is down. Without refraction.</param>
/// <param name="Azimuth_rad">Direction from north, clockwise, 0 to 2π rad.</param>
public readonly record struct SunAngles(double Altitude_rad, double Azimuth_rad)
{
    /// <summary>Cosine of the zenith angle, which is the sine of the altitude.</summary>
    public double CosZenith => Math.Sin(Altitude_rad);
}
