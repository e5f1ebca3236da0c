namespace ColdSim.Physics.Units;

/// <summary>The SI value of one unit of each other kind that is read, printed or found on a plate, and the standard reference values.</summary>
/// <remarks>
/// A name says the unit and, behind the underscore, the SI unit of its value: <c>16 * Pound_kg</c> is 16 lb in kilograms, <c>m / Pound_kg</c> is
/// m kilograms in pounds. The pound, the inch and what follows from them are exact by the international agreement of 1959; the BTU is that of the
/// International Table. For use inside the step loop and at borders that count in doubles; quantities are UnitsNet's.
/// </remarks>
internal static class ConversionFactors
{
    /// <summary>Pound (avoirdupois), kg; exact.</summary>
    public const double Pound_kg = 0.45359237;

    /// <summary>Ounce (avoirdupois), kg; exact.</summary>
    public const double Ounce_kg = Pound_kg / 16;

    /// <summary>Inch, m; exact.</summary>
    public const double Inch_m = 0.0254;

    /// <summary>Foot, m; exact.</summary>
    public const double Foot_m = 0.3048;

    /// <summary>US liquid gallon, 231 in³, m³; exact.</summary>
    public const double Gallon_m3 = 3.785411784e-3;

    /// <summary>Litre, m³; exact.</summary>
    public const double Litre_m3 = 1e-3;

    /// <summary>Statute mile per hour, m/s; exact.</summary>
    public const double MilePerHour_m_s = 0.44704;

    /// <summary>Kilometre per hour, m/s.</summary>
    public const double KilometrePerHour_m_s = 1 / 3.6;

    /// <summary>Nautical mile (1852 m) per hour, m/s.</summary>
    public const double Knot_m_s = 1852.0 / 3600;

    /// <summary>Pound-force per square inch, Pa.</summary>
    public const double Psi_Pa = 6894.757293168361;

    /// <summary>Inch of water column, Pa, rounded as UnitsNet has it. With water of 1000 kg/m³ it would be 249.08891, 7 parts in 10⁹ more.</summary>
    public const double InchOfWater_Pa = 249.08890833333;

    /// <summary>Inch of mercury of 13,595.1 kg/m³ under standard gravity, Pa. UnitsNet's own factor for the inch is rounded at its ninth digit.</summary>
    public const double InchOfMercury_Pa = 3386.388640341;

    /// <summary>Standard atmosphere, Pa; exact.</summary>
    public const double StandardAtmosphere_Pa = 101_325;

    /// <summary>British thermal unit (International Table), J; exact.</summary>
    public const double Btu_J = 1055.05585262;

    /// <summary>BTU per hour, W: exactly the BTU over an hour. UnitsNet's own factor is rounded at its eleventh digit.</summary>
    public const double BtuPerHour_W = Btu_J / Hour_s;

    /// <summary>Watt hour, J; exact.</summary>
    public const double WattHour_J = 3600;

    /// <summary>Kilowatt hour, J; exact.</summary>
    public const double KilowattHour_J = 3.6e6;

    /// <summary>Ampere hour, C; exact.</summary>
    public const double AmpereHour_C = 3600;

    /// <summary>Minute, s; exact.</summary>
    public const double Minute_s = 60;

    /// <summary>Hour, s; exact.</summary>
    public const double Hour_s = 3600;

    /// <summary>Day of 24 hours, s; exact.</summary>
    public const double Day_s = 86_400;

    /// <summary>Degree of arc, rad.</summary>
    public const double Degree_rad = Math.PI / 180;

    /// <summary>0 °C, K; exact. Water's freezing point at one atmosphere has the same value to 0.0001 K.</summary>
    public const double ZeroCelsius_K = 273.15;

    /// <summary>Difference of one degree Fahrenheit, K.</summary>
    public const double FahrenheitDegree_K = 1 / 1.8;

    /// <summary>0 °F above absolute zero, in degrees Fahrenheit, so that t °F are <c>(t + ZeroFahrenheit_R) / 1.8</c> K; exact.</summary>
    public const double ZeroFahrenheit_R = 459.67;

    /// <summary>Standard acceleration of free fall, m/s²; exact.</summary>
    public const double StandardGravity_m_s2 = 9.80665;
}
