using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Limits;

/// <summary>How a column of the chart differs from the scenario's cylinders.</summary>
[Flags]
public enum RigVariantKind
{
    /// <summary>The cylinders of the rig, bare.</summary>
    Bare = 0,

    /// <summary>A blanket around every cylinder.</summary>
    Blanket = 1,

    /// <summary>One cylinder more, like the first, all open together.</summary>
    SecondCylinder = 2,

    /// <summary>A blanket around every cylinder, and one cylinder more.</summary>
    Both = 3,
}

/// <summary>The variant of a rig for one column of the chart.</summary>
/// <param name="Kind">The column of the chart.</param>
/// <param name="Rig">The rig; what is in its cylinders is the row's.</param>
/// <param name="AsItIs">Whether it is the scenario's own.</param>
public sealed record RigVariant(RigVariantKind Kind, Rig Rig, bool AsItIs)
{
    /// <summary>Temperature of the liquid while a mixed gas was drawn down, an assumption: that of a cold night, -15 °C. [K]</summary>
    public const double DrawnAt_K = ConversionFactors.ZeroCelsius_K - 15;

    /// <summary>The blanket of the set-up; null where it is bare.</summary>
    public BlanketSpecification? Blanket => Rig.Cylinders[0].Blanket;

    /// <summary>Whether its blanket has power.</summary>
    public bool Powered => Blanket is { Power_W: > 0, Supply: var supply } && (supply == BlanketSupply.Battery || Rig.Site.Hookup);

    /// <summary>The blanket assumed where the scenario has none: 100 W, on shore power where there is a hookup, else on 12 V.</summary>
    /// <param name="hookup">Whether there is one.</param>
    public static BlanketSpecification UsualBlanket(bool hookup)
        => new() { Power_W = 100, Supply = hookup ? BlanketSupply.ShorePower : BlanketSupply.Battery };

    /// <summary>The set-ups of a rig; those with one cylinder more, open together, are left out where it has as many as can be or a mixed gas.</summary>
    /// <param name="rig">The scenario's.</param>
    public static IReadOnlyList<RigVariant> Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        BlanketSpecification blanket = rig.Cylinders.Select(c => c.Blanket).FirstOrDefault(b => b is not null) ?? UsualBlanket(rig.Site.Hookup);
        bool all = rig.Cylinders.All(c => c.Blanket is not null), none = rig.Cylinders.All(c => c.Blanket is null);
        List<RigVariant> setUps =
        [
            new(RigVariantKind.Bare, With(rig, null), none),
            new(RigVariantKind.Blanket, With(rig, blanket), all),
        ];
        if (rig.Cylinders.Count < Rig.MostCylinders && !rig.Gas.IsMixed)
        {
            setUps.Add(new(RigVariantKind.SecondCylinder, With(OneMore(rig), null), false));
            setUps.Add(new(RigVariantKind.Both, With(OneMore(rig), blanket), false));
        }

        return setUps;
    }

    /// <summary>The rig with every cylinder drawn down from its legal filling to the same part of it.</summary>
    /// <remarks>
    /// A mixed gas boils its propane off first, so a cylinder that was drawn down to a fill holds more butane than one filled to it. It is taken as
    /// drawn with its liquid at <see cref="DrawnAt_K"/>.
    /// </remarks>
    /// <param name="fill_frac">Part of the legal filling.</param>
    public Rig DrawnDown(double fill_frac) => Rig with
    {
        Cylinders = [.. Rig.Cylinders.Select(c => c with
        {
            Contents_kg = fill_frac * c.LegalFill_kg,
            InitialTemperature_K = null,
            InitialComposition = Rig.Gas.IsMixed && fill_frac < 1 ? Drawn(c, fill_frac) : null,
        })],
    };

    /// <summary>The rig with what the scenario has in its cylinders, as cold as the air.</summary>
    public Rig AsItIsNow() => Rig with { Cylinders = [.. Rig.Cylinders.Select(c => c with { InitialTemperature_K = null })] };

    private GasMasses Drawn(CylinderSpecification c, double fill_frac)
        => MixedContents.Drawn(Rig.Gas.Composition * c.LegalFill_kg, c.Volume_m3, DrawnAt_K, fill_frac * c.LegalFill_kg).Parts();

    // A blanket of a cylinder's own is kept.
    private static Rig With(Rig rig, BlanketSpecification? blanket)
        => rig with { Cylinders = [.. rig.Cylinders.Select(c => c with { Blanket = blanket is null ? null : c.Blanket ?? blanket })] };

    private static Rig OneMore(Rig rig) => rig with
    {
        Cylinders = [.. rig.Cylinders, rig.Cylinders[0] with { Label = null }],
        Arrangement = rig.Arrangement as OpenTogether ?? new OpenTogether(),
    };
}
