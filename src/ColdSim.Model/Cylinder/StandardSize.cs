using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Cylinder;

/// <summary>A size of cylinder or tank that is sold everywhere, in steel. SI units.</summary>
/// <param name="Name">What people call it: the nominal charge in lb or kg, or the gross gallons of a frame tank.</param>
/// <param name="Orientation">Orientation of its axis.</param>
/// <param name="Volume_m3">Water capacity. [m³]</param>
/// <param name="OutsideDiameter_m">Outside diameter. [m]</param>
/// <param name="WallThickness_m">Shell thickness. [m]</param>
/// <param name="ShellMass_kg">Shell without collar, foot ring, feet and valve. [kg]</param>
/// <param name="Tare_kg">Empty mass, a typical value; the stamp on the collar decides. [kg]</param>
/// <remarks>
/// <para>
/// Uprights: water capacities as stamped, 47.6 lb on the 20 lb size and in proportion; outside diameters and tares are those
/// usual in the trade and vary by an inch and a tenth between makers. Shell masses follow from 2:1 ellipsoidal heads, the wall
/// given and 7,850 kg/m³, and leave 1 to 6 kg of the tare to collar, foot ring and valve.
/// </para>
/// <para>
/// Bottles by the kilogram: water capacities of 1 L for each 0.42 kg, diameters and tares usual in Europe (common practice, no source); shell masses
/// follow as with the uprights.
/// </para>
/// <para>
/// Horizontal frame tanks: usual pairs of gross gallons and diameter; walls from the ASME VIII formula for 312 psig, 20,000 psi
/// and a joint efficiency of 0.85, rounded up to a tenth of a millimetre. Their tares are estimates: shell and 3 kg.
/// </para>
/// </remarks>
public sealed record StandardSize(
    string Name,
    Orientation Orientation,
    double Volume_m3,
    double OutsideDiameter_m,
    double WallThickness_m,
    double ShellMass_kg,
    double Tare_kg)
{
    /// <summary>Propane per water capacity, by mass, that a cylinder may hold under the United States' filling rule, and in Europe.</summary>
    public const double LegalFill_frac = 0.42;

    private const double Water_kg_m3 = 1000;

    /// <summary>Propane that may legally be filled. [kg]</summary>
    public double LegalFill_kg => LegalFill_frac * Volume_m3 * Water_kg_m3;

    /// <summary>A cylinder of this size, legally full.</summary>
    public CylinderSpecification Full() => new()
    {
        Name = Name,
        Orientation = Orientation,
        Volume_m3 = Volume_m3,
        OutsideDiameter_m = OutsideDiameter_m,
        WallThickness_m = WallThickness_m,
        MetalMass_kg = ShellMass_kg,
        Tare_kg = Tare_kg,
        LegalFill_kg = LegalFill_kg,
        Contents_kg = LegalFill_kg,
    };

    /// <summary>Whether it is one of the sizes that are sold by the kilogram.</summary>
    public bool IsMetric => Name.EndsWith(" kg", StringComparison.Ordinal);

    /// <summary>The upright sizes of its series, small to large: whoever buys by the pound is offered no bottle of 11 kg.</summary>
    /// <param name="metric">Whether by the kilogram.</param>
    public static IReadOnlyList<StandardSize> Uprights(bool metric) => metric ? MetricUprights : UsUprights;

    /// <summary>Every size, uprights first, by series, small to large.</summary>
    public static IReadOnlyList<StandardSize> All { get; } =
    [
        Upright("5 lb", water_lb: 12.0, diameter_in: 8.0, wall_mm: 2.1, shell_kg: 2.6, tare_lb: 6.5),
        Upright("10 lb", water_lb: 23.8, diameter_in: 9.0, wall_mm: 2.1, shell_kg: 4.2, tare_lb: 12),
        Upright("20 lb", water_lb: 47.6, diameter_in: 12.2, wall_mm: 2.1, shell_kg: 6.5, tare_lb: 17.5),
        Upright("30 lb", water_lb: 71.4, diameter_in: 12.2, wall_mm: 2.1, shell_kg: 8.9, tare_lb: 25),
        Upright("40 lb", water_lb: 95.2, diameter_in: 12.2, wall_mm: 2.1, shell_kg: 11.3, tare_lb: 30),
        Upright("100 lb", water_lb: 238.1, diameter_in: 14.6, wall_mm: 2.4, shell_kg: 25.6, tare_lb: 68),
        Bottle("5 kg", litres: 11.9, diameter_mm: 230, wall_mm: 2.0, shell_kg: 4.3, tare_kg: 6),
        Bottle("6 kg", litres: 14.3, diameter_mm: 256, wall_mm: 2.0, shell_kg: 4.7, tare_kg: 7),
        Bottle("10 kg", litres: 23.8, diameter_mm: 300, wall_mm: 2.2, shell_kg: 7.4, tare_kg: 10.5),
        Bottle("11 kg", litres: 26.2, diameter_mm: 300, wall_mm: 2.2, shell_kg: 8.0, tare_kg: 11.5),
        Bottle("33 kg", litres: 78.6, diameter_mm: 318, wall_mm: 2.9, shell_kg: 26, tare_kg: 33),
        Horizontal("5.9 gal", gross_gal: 5.9, diameter_in: 10, wall_mm: 2.4, shell_kg: 8.3),
        Horizontal("10 gal", gross_gal: 10, diameter_in: 12, wall_mm: 2.9, shell_kg: 14.2),
        Horizontal("15 gal", gross_gal: 15, diameter_in: 14, wall_mm: 3.3, shell_kg: 20.9),
        Horizontal("20 gal", gross_gal: 20, diameter_in: 14, wall_mm: 3.3, shell_kg: 26.6),
        Horizontal("25 gal", gross_gal: 25, diameter_in: 16, wall_mm: 3.8, shell_kg: 34.5),
        Horizontal("30 gal", gross_gal: 30, diameter_in: 16, wall_mm: 3.8, shell_kg: 40.2),
        Horizontal("41 gal", gross_gal: 41, diameter_in: 18, wall_mm: 4.3, shell_kg: 55.7),
    ];

    private static StandardSize[] UsUprights { get; } = [.. All.Where(s => s.Orientation == Orientation.Upright && !s.IsMetric)];

    private static StandardSize[] MetricUprights { get; } = [.. All.Where(s => s.Orientation == Orientation.Upright && s.IsMetric)];

    /// <summary>The size of that name, spaces and capitals aside; null where there is none.</summary>
    /// <param name="name">Such as "20 lb".</param>
    public static StandardSize? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string plain = Plain(name);
        return All.FirstOrDefault(s => string.Equals(Plain(s.Name), plain, StringComparison.OrdinalIgnoreCase));
    }

    private static string Plain(string name) => name.Replace(" ", "", StringComparison.Ordinal);

    private static StandardSize Upright(string name, double water_lb, double diameter_in, double wall_mm, double shell_kg, double tare_lb)
        => new(name, Orientation.Upright, water_lb * Pound_kg / 1000, diameter_in * Inch_m, wall_mm / 1000, shell_kg, tare_lb * Pound_kg);

    private static StandardSize Bottle(string name, double litres, double diameter_mm, double wall_mm, double shell_kg, double tare_kg)
        => new(name, Orientation.Upright, litres / 1000, diameter_mm / 1000, wall_mm / 1000, shell_kg, tare_kg);

    private static StandardSize Horizontal(string name, double gross_gal, double diameter_in, double wall_mm, double shell_kg)
        => new(name, Orientation.Horizontal, gross_gal * Gallon_m3, diameter_in * Inch_m, wall_mm / 1000, shell_kg, shell_kg + 3);
}
