namespace ColdSim.Physics.SunAndSky;

/// <summary>Position of the sun from the date, the time and the place.</summary>
/// <remarks>Source: Spencer 1971, in the form NOAA publishes as its low-accuracy set: about 0.3° and 0.6 min, ample for heat.</remarks>
internal static class SunPosition
{
    /// <summary>The sun's altitude and azimuth.</summary>
    /// <param name="dayOfYear">Day of the year in UTC, 1 on the first of January.</param>
    /// <param name="daysInYear">365 or 366.</param>
    /// <param name="utcHour">Hour of that day in UTC, 0 to 24.</param>
    /// <param name="latitude_deg">Latitude, degrees north, -90 to 90.</param>
    /// <param name="longitude_deg">Longitude, degrees east, -180 to 180.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static SunAngles At(int dayOfYear, int daysInYear, double utcHour, double latitude_deg, double longitude_deg)
    {
        Require.InRange(latitude_deg, -90, 90, "°");
        Require.InRange(longitude_deg, -180, 180, "°");
        double year_rad = FractionalYear_rad(dayOfYear, daysInYear, utcHour);
        double solar_min = (60 * utcHour) + EquationOfTime_min(year_rad) + (4 * longitude_deg);
        (double sinHour, double cosHour) = Math.SinCos(double.DegreesToRadians((solar_min / 4) - 180));
        (double sinLatitude, double cosLatitude) = Math.SinCos(double.DegreesToRadians(latitude_deg));
        (double sinDeclination, double cosDeclination) = Math.SinCos(Declination_rad(year_rad));

        double sinAltitude = (sinLatitude * sinDeclination) + (cosLatitude * cosDeclination * cosHour);

        // Both arguments times cos(declination), so that no tangent can run away.
        double azimuth_rad = Math.PI + Math.Atan2(
            sinHour * cosDeclination, (cosHour * sinLatitude * cosDeclination) - (sinDeclination * cosLatitude));
        return new SunAngles(Math.Asin(Math.Clamp(sinAltitude, -1, 1)), azimuth_rad);
    }

    /// <summary>How far the year has gone round, rad: 0 at noon of the first of January.</summary>
    /// <param name="dayOfYear">Day of the year, 1 on the first of January.</param>
    /// <param name="daysInYear">365 or 366.</param>
    /// <param name="utcHour">Hour of that day, 0 to 24.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double FractionalYear_rad(int dayOfYear, int daysInYear, double utcHour)
    {
        Require.InRange(daysInYear, 365, 366, "days");
        Require.InRange(dayOfYear, 1, daysInYear, "(day of the year)");
        Require.InRange(utcHour, 0, 24, "h");
        return Math.Tau / daysInYear * (dayOfYear - 1 + ((utcHour - 12) / 24));
    }

    /// <summary>Sundial time less clock time on the meridian of the time zone, minutes.</summary>
    /// <param name="fractionalYear_rad">See <see cref="FractionalYear_rad"/>.</param>
    public static double EquationOfTime_min(double fractionalYear_rad)
    {
        (double sin, double cos) = Math.SinCos(fractionalYear_rad);
        (double sin2, double cos2) = Math.SinCos(2 * fractionalYear_rad);

        // NOAA and most books print 0.000075 for the first constant; a correspondent had 0.0000075 from Spencer. 0.015 min: left as printed.
        return 229.18 * (0.000075 + (0.001868 * cos) - (0.032077 * sin) - (0.014615 * cos2) - (0.040849 * sin2));
    }

    /// <summary>Declination of the sun, rad, positive north of the equator.</summary>
    /// <param name="fractionalYear_rad">See <see cref="FractionalYear_rad"/>.</param>
    public static double Declination_rad(double fractionalYear_rad)
    {
        (double sin, double cos) = Math.SinCos(fractionalYear_rad);
        (double sin2, double cos2) = Math.SinCos(2 * fractionalYear_rad);
        (double sin3, double cos3) = Math.SinCos(3 * fractionalYear_rad);
        return 0.006918 - (0.399912 * cos) + (0.070257 * sin) - (0.006758 * cos2) + (0.000907 * sin2) - (0.002697 * cos3) + (0.00148 * sin3);
    }
}

/// <summary>Position of the sun in the sky.</summary>
/// <param name="Altitude_rad">Angle above the horizon, rad; negative when the sun is down. Without refraction.</param>
/// <param name="Azimuth_rad">Direction from north, clockwise, 0 to 2π rad.</param>
public readonly record struct SunAngles(double Altitude_rad, double Azimuth_rad)
{
    /// <summary>Cosine of the zenith angle, which is the sine of the altitude.</summary>
    public double CosZenith => Math.Sin(Altitude_rad);
}
