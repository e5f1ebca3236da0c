using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[enclosure]</c>: where the cylinders are, and the cover or locker round them.</summary>
internal static class EnclosureSection
{
    /// <summary>Where cylinders are.</summary>
    internal enum Kind
    {
        Open,
        ByTheWall,
        TongueCover,
        Locker,
    }

    // Room left round the cylinders, and above them for collar and valve; by hand.
    private const double Clearance_m = 0.05, Collar_m = 0.12;

    // A tongue cover: open below but for the frame and a tray, a hand hole and gaps above; by hand. A locker: what 24 CFR 3280.704 asks at the least, half below and half above.
    private const double CoverLow_frac = 0.10, CoverHigh_frac = 0.03, LockerEach_frac = 0.01;
    private const double BetweenOpenings_frac = 0.8;

    /// <summary>The least openings that the rule for manufactured homes has, of the floor.</summary>
    public const double LeastOpenings_frac = 0.02;

    private static readonly ChoiceKey<Kind> KindKey = new(
        "kind", KeyDefault.Needed, "where the cylinders are: in the open on the tongue, on the ground by the coach's wall, under a cover, or in a locker",
        ("open", Kind.Open), ("by the wall", Kind.ByTheWall), ("tongue cover", Kind.TongueCover), ("ventilated locker", Kind.Locker))
    {
        OtherWords = [("cover", Kind.TongueCover), ("locker", Kind.Locker), ("ground by the wall", Kind.ByTheWall), ("in the open", Kind.Open)],
    };

    private static readonly QuantityKey Area = new(
        "area", Dimension.Area, "0.05 m²", "20 m²", KeyDefault.Of("walls and top round the cylinders; of a locker without its back, with its floor"), "of its walls against the outside air")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Insulation = new(
        "insulation", Dimension.ThermalInsulance, "0 m²K/W", "5 m²K/W", KeyDefault.Of(0.01, "m²K/W", "3 mm of plastic"), "of its walls alone");

    private static readonly QuantityKey HeatLoss = new(
        "heat_loss", Dimension.Conductance, "0 W/K", "200 W/K", KeyDefault.Of("computed"), "through its walls, if measured; openings come on top");

    private static readonly QuantityKey LowOpening = new(
        "low_opening", Dimension.Area, "5 cm²", "5 m²", KeyDefault.Of("10 % of the floor, of a locker 1 %"), "free area of the openings near its floor, which stay open")
    {
        Assumed = "enclosure: openings not given; assumed {value}",
    };

    private static readonly QuantityKey HighOpening = new(
        "high_opening", Dimension.Area, "5 cm²", "5 m²", KeyDefault.Of("3 % of the floor, of a locker 1 %"), "free area of the openings near its top, which stay open");

    private static readonly QuantityKey OpeningHeight = new(
        "opening_height", Dimension.Length, "5 cm", "3 m", KeyDefault.Of("0.8 of its height"), "from the low openings to the high ones");

    private static readonly QuantityKey Wind = new(
        "wind_exposure", Dimension.Ratio, "0", "1", KeyDefault.Of(0.3, ""), "part of the weather's wind at its walls and openings");

    private static readonly QuantityKey SkyView = new("sky_view", Dimension.Ratio, "0", "1", KeyDefault.Of(0.5, ""), "part of the open sky that its walls see");

    private static readonly QuantityKey SunExposure = new("sun_exposure", Dimension.Ratio, "0", "1", KeyDefault.Of(0, ""), "part of the sun that reaches it");

    private static readonly ChoiceKey<double> Colour = new(
        "colour", 0.25, "what it takes in of the sun: 0.25, 0.65 or 0.9 of it", ("white", 0.25), ("grey", 0.65), ("black", 0.9));

    private static readonly QuantityKey ToCoach = new(
        "to_coach", Dimension.Conductance, "0 W/K", "20 W/K", KeyDefault.Of(0, "W/K"), "through the coach's wall behind it; that heat is part of the coach's loss already");

    public static readonly ScenarioSection Declared = new(
        "enclosure", TableForm.One, "where the cylinders are, and the cover or locker round them",
        [KindKey, Area, Insulation, HeatLoss, LowOpening, HighOpening, OpeningHeight, Wind, SkyView, SunExposure, Colour, ToCoach]);

    // The keys that a cover or a locker has and the open has not.
    private static readonly ScenarioKey[] OfBox =
        [Area, Insulation, HeatLoss, LowOpening, HighOpening, OpeningHeight, Wind, SkyView, SunExposure, Colour, ToCoach];

    /// <summary>Where the cylinders are; null where nothing is said.</summary>
    /// <remarks>A word that is none of them is reported where the section is read.</remarks>
    public static Kind? KindOf(SectionReader root)
    {
        if (root.Value(Declared) is not TomlTable table || table.Entries.GetValueOrDefault(KindKey.Name)?.Value is not TomlText text)
            return null;
        return KindKey.ValueOf(text.Value.Trim());
    }

    /// <summary>What reaches a cylinder that is there, unless it says so itself; common practice and by hand, in docs/model.md.</summary>
    /// <param name="kind">Where it is.</param>
    public static CylinderSurroundings Around(Kind? kind) => kind switch
    {
        Kind.Open => new() { WindExposure_frac = 0.4 },
        Kind.ByTheWall => new() { WindExposure_frac = 0.2, SkyView_frac = 0.25 },
        Kind.TongueCover => new() { WindExposure_frac = 0.1, SkyView_frac = 0 },
        Kind.Locker => new() { WindExposure_frac = 0, SkyView_frac = 0 },
        _ => new(),
    };

    /// <summary>The cover or locker; null where there is none.</summary>
    public static EnclosureSpecification? Read(SectionReader section, IReadOnlyList<CylinderSpecification> cylinders, CoachSpecification? coach)
    {
        Kind? kind = section.Get(KindKey);
        CylinderSpecification[] within = [.. cylinders.Where(c => c.IsEnclosed)];
        (double area_m2, double floor_m2, double height_m) = Box(within, kind == Kind.Locker);
        (double low, double high) = kind == Kind.Locker ? (LockerEach_frac, LockerEach_frac) : (CoverLow_frac, CoverHigh_frac);
        EnclosureSpecification enclosure = new()
        {
            Name = KindKey.WordOf(kind ?? Kind.TongueCover),
            Area_m2 = section.Get(Area, area_m2),
            Wall_m2K_W = section.GetOrDefault(Insulation),
            FixedLoss_W_K = section.Get(HeatLoss),
            LowOpening_m2 = section.Get(LowOpening, low * floor_m2),
            HighOpening_m2 = section.Get(HighOpening, high * floor_m2),
            OpeningHeight_m = section.Get(OpeningHeight, BetweenOpenings_frac * height_m),
            WindExposure_frac = section.GetOrDefault(Wind),
            SkyView_frac = section.GetOrDefault(SkyView),
            SunExposure_frac = section.GetOrDefault(SunExposure),
            SolarAbsorptance_frac = section.GetOrDefault(Colour),
            Coach_W_K = section.GetOrDefault(ToCoach),
        };
        section.Finish();
        if (!section.Present)
            return null;
        if (!section.Has(KindKey))
            section.Lacks(KindKey, "accepted: " + KindKey.Accepted);
        if (kind is null)
            return null;
        if (kind is Kind.Open or Kind.ByTheWall)
        {
            foreach (ScenarioKey key in OfBox)
            {
                if (section.Has(key))
                    section.Report(key, $"'{key.Name}' goes with a cover or a locker", $"accepted: kind = \"tongue cover\" or \"ventilated locker\", or without '{key.Name}'");
            }

            return null;
        }

        if (within.Length == 0)
        {
            if (cylinders.Count > 0)
                section.Report(KindKey, "no cylinder is in it: every cylinder has enclosed = false", "accepted: one of them at least in it, or no [enclosure]");
            return null;
        }

        if (enclosure.Coach_W_K > 0 && coach is null)
            section.Report(ToCoach, "'to_coach' without a [coach]", "accepted: a [coach], or without 'to_coach'");
        if (!section.Has(HeatLoss))
            section.Assume(Area, "enclosure", $"{enclosure.Area_m2:0.0#} m²");
        if (!section.Has(HighOpening))
            section.Assume(LowOpening, "enclosure", $"{enclosure.LowOpening_m2 * 1e4:0} cm² low and {enclosure.HighOpening_m2 * 1e4:0} cm² high");
        return enclosure;
    }

    /// <summary>The floor that the enclosed cylinders need. [m²]</summary>
    public static double Floor_m2(IReadOnlyList<CylinderSpecification> cylinders) => Box([.. cylinders.Where(c => c.IsEnclosed)], locker: false).Floor_m2;

    // A box round cylinders side by side.
    private static (double Area_m2, double Floor_m2, double Height_m) Box(CylinderSpecification[] cylinders, bool locker)
    {
        double length_m = 2 * Clearance_m, width_m = 0, height_m = 0;
        foreach (CylinderSpecification cylinder in cylinders)
        {
            bool upright = cylinder.Orientation == Orientation.Upright;
            double tall_m = cylinder.Volume_m3 / (Math.PI / 4 * cylinder.OutsideDiameter_m * cylinder.OutsideDiameter_m);
            length_m += cylinder.OutsideDiameter_m;
            width_m = Math.Max(width_m, (upright ? cylinder.OutsideDiameter_m : tall_m) + 2 * Clearance_m);
            height_m = Math.Max(height_m, (upright ? tall_m : cylinder.OutsideDiameter_m) + Collar_m + Clearance_m);
        }

        double floor_m2 = length_m * width_m;
        return (locker ? (length_m + 2 * width_m) * height_m + 2 * floor_m2 : 2 * (length_m + width_m) * height_m + floor_m2, floor_m2, height_m);
    }
}
