using ColdSim.Model.Cylinder;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Quick;

/// <summary>What is known at dusk, without any file. SI units; what is not known has a stated default.</summary>
public sealed record QuickQuestion
{
    /// <summary>Noon of the day whose evening begins the night; its offset is the clock of the run.</summary>
    public required DateTimeOffset Noon { get; init; }

    /// <summary>Clock time at which the run starts; before noon it is the next day's.</summary>
    public TimeOnly Start { get; init; } = new(18, 0);

    /// <summary>The morning's low. [K]</summary>
    public required double Low_K { get; init; }

    /// <summary>The afternoon's high; null takes <see cref="Swing_K"/> above the low. [K]</summary>
    public double? High_K { get; init; }

    /// <summary>The cylinder with what is in it.</summary>
    public required CylinderSpecification Cylinder { get; init; }

    /// <summary>Furnace input at sea level, as on the plate. [W]</summary>
    public required double Furnace_W { get; init; }

    /// <summary>Length of the coach; null takes <see cref="Length_m"/>. [m]</summary>
    public double? CoachLength_m { get; init; }

    /// <summary>How well it keeps its heat; null takes ordinary.</summary>
    public CoachGrade? Grade { get; init; }

    /// <summary>Set point all night; null takes <see cref="Inside_K"/>. [K]</summary>
    public double? SetPoint_K { get; init; }

    /// <summary>Wind at mast height; null takes <see cref="Wind_m_s"/>. [m/s]</summary>
    public double? MastWind_m_s { get; init; }

    /// <summary>Wind at the cylinder per wind at mast height; null takes the usual.</summary>
    public double? WindShelter_frac { get; init; }

    /// <summary>Height above sea level; null takes sea level. [m]</summary>
    public double? Elevation_m { get; init; }

    /// <summary>Afternoon high above the morning low, unless stated. [K]</summary>
    public const double Swing_K = 10;

    /// <summary>Length of the coach unless stated: 24 ft. [m]</summary>
    public const double Length_m = 24 * ConversionFactors.Foot_m;

    /// <summary>Set point unless stated: 62 °F. [K]</summary>
    public const double Inside_K = (62 + ConversionFactors.ZeroFahrenheit_R) / 1.8;

    /// <summary>Wind unless stated. [m/s]</summary>
    public const double Wind_m_s = 2;
}
