using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Gas;

/// <summary>A gas as it is sold: its name and what it is made of.</summary>
/// <param name="Name">What the trade calls it.</param>
/// <param name="Composition">Parts by mass.</param>
/// <param name="Meaning">What it is assumed to be, in a few words.</param>
/// <remarks>Sources: docs/sources.md, "ASTM D1835" and "Seasonal mixtures, European LPG Association".</remarks>
public sealed record GasGrade(string Name, GasMasses Composition, string Meaning)
{
    // How the butane of a blend divides; common practice, no source.
    private const double Normal_frac = 0.7;

    /// <summary>Propane alone.</summary>
    public static GasGrade Propane => new(Names[0], GasMasses.PurePropane, "propane alone");

    /// <summary>Special-duty propane (HD-5) with as much butane as the grade allows, the worst that it may leave behind.</summary>
    public static GasGrade SpecialDuty => new(
        Names[1], GasBlend.FromLiquidVolumes(new GasMasses(97.5, 2.5, 0)),
        "97.5 % propane and 2.5 % n-butane by liquid volume, the most that the grade allows; its propylene as propane");

    /// <summary>A seasonal mixture for the winter.</summary>
    public static GasGrade Winter => Blend(Names[2], 60);

    /// <summary>A seasonal mixture for the summer.</summary>
    public static GasGrade Summer => Blend(Names[3], 40);

    /// <summary>Their names, known without working out what they are made of.</summary>
    public static IReadOnlyList<string> Names { get; } = ["propane", "special-duty propane", "winter blend", "summer blend"];

    /// <summary>One by its place among <see cref="Names"/>.</summary>
    public static GasGrade Of(int place) => place switch { 0 => Propane, 1 => SpecialDuty, 2 => Winter, _ => Summer };

    private static GasGrade Blend(string name, double propane_percent)
    {
        double butane_percent = 100 - propane_percent;
        return new GasGrade(
            name,
            GasBlend.FromLiquidVolumes(new GasMasses(propane_percent, Normal_frac * butane_percent, (1 - Normal_frac) * butane_percent)),
            FormattableString.Invariant(
                $"{propane_percent:0} % propane and {butane_percent:0} % butane by liquid volume, the butane seven parts n-butane to three isobutane"));
    }
}
