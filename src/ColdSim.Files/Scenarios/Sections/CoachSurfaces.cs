using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Coach;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[coach.surface]]</c> and <c>[[coach.slide_out]]</c>: the envelope piece by piece.</summary>
internal sealed class CoachSurfaces
{
    // Per m² of envelope and per metre of seal: the middle of the working ranges 1 to 3 cm².
    private const double Leakage_cm2_m2 = 2;
    private const double SealLeakage_cm2_m = 2;

    private static readonly ChoiceKey<int> Kind = new("kind", KeyDefault.Needed, "what it is", ChoiceKey.Numbered(SurfaceKind.Kinds.Select(k => k.Word)));

    private static readonly TextKey Name = new("name", KeyDefault.Of("the kind"), "its line in the breakdown; the same name adds up") { Such = "front wall" };

    private static readonly QuantityKey Area = new("area", Dimension.Area, "0.01 m²", "300 m²", KeyDefault.Needed, "inside")
    {
        Usual = new(null, "60 m²", UnusualValue.CommonPractice) { Hint = " (650 ft²); square feet are written ft²" },
    };

    private static readonly QuantityKey U = new(
        "u", Dimension.HeatTransferCoefficient, "0.1 W/m²K", "12 W/m²K", KeyDefault.Of("by kind, below"), "heat lost per area")
    {
        Assumed = "coach: u of {who} not given; assumed {value}",
    };

    private static readonly WholeKey Panes = new("panes", 1, 2, KeyDefault.Of(1), "of a window")
    {
        Assumed = "coach: panes of {who} not given; assumed single glass",
    };

    private static readonly ChoiceKey<int> Glazing = new(
        "glazing", KeyDefault.Of("by `panes`"), "of a window, instead of `panes`", ChoiceKey.Numbered(SurfaceKind.Glazings.Select(k => k.Word)));

    private static readonly QuantityKey SolarGain = new(
        "solar_gain", Dimension.Ratio, "0", "1", KeyDefault.Of("by kind, below"), "solar heat gain coefficient");

    private static readonly TextKey SlideOutName = new("name", KeyDefault.Of("\"slide-outs\""), "its line in the breakdown") { Such = "bedroom slide-out" };

    private static readonly QuantityKey SlideOutArea = new(
        "area", Dimension.Area, "0.01 m²", "300 m²", KeyDefault.None, "its own walls, roof and floor, if they are not among the surfaces");

    private static readonly QuantityKey SlideOutU = new(
        "u", Dimension.HeatTransferCoefficient, "0.1 W/m²K", "12 W/m²K", KeyDefault.Of(SurfaceKind.Kinds[0].U_W_m2K, "W/m²K"), "of that area")
    {
        Assumed = U.Assumed,
    };

    private static readonly QuantityKey SealPerimeter = new(
        "seal_perimeter", Dimension.Length, "0.5 m", "40 m", KeyDefault.Needed, "length of its seal");

    private static readonly QuantityKey SealBridge = new(
        "seal_bridge", Dimension.Conductivity, "0 W/mK", "3 W/mK", KeyDefault.Quantity("0.4 W/mK"), "heat lost per length of seal")
    {
        Assumed = "coach: seal_bridge of {who} not given; assumed {value}",
    };

    public static readonly ScenarioSection Surface = new(
        "surface", TableForm.Many, "a piece of the coach's envelope, or several that are the same", [Kind, Name, Area, U, Panes, Glazing, SolarGain])
    {
        Ways = [[Panes.Name], [Glazing.Name]],
    };

    public static readonly ScenarioSection SlideOut = new(
        "slide_out", TableForm.Many, "a slide-out and its seal", [SlideOutName, SlideOutArea, SlideOutU, SealPerimeter, SealBridge]);

    private readonly Dictionary<string, double> _lines = [];
    private readonly HashSet<string> _floorLines = [];
    private double _envelope_m2;
    private double _seal_m;

    /// <summary>The breakdown.</summary>
    public IReadOnlyList<HeatLossItem> Items => [.. _lines.Select(l => new HeatLossItem(l.Key, l.Value))];

    /// <summary>Whether a line of <see cref="Items"/> is a floor.</summary>
    public bool IsFloor(HeatLossItem item) => _floorLines.Contains(item.Name);

    public double Floor_m2 { get; private set; }

    public double SolarAperture_m2 { get; private set; }

    /// <summary>What an envelope is assumed to leak, in words.</summary>
    public static string LeakageWords => $"{NumberShown.Of(Leakage_cm2_m2)} cm² per m² and {NumberShown.Of(SealLeakage_cm2_m)} cm² per m of seal";

    public double UsualLeakage_cm2 => (Leakage_cm2_m2 * _envelope_m2) + (SealLeakage_cm2_m * _seal_m);

    public static CoachSurfaces Read(SectionReader coach)
    {
        CoachSurfaces surfaces = new();
        foreach (SectionReader surface in coach.Sections(Surface))
            surfaces.AddSurface(surface);
        foreach (SectionReader slideOut in coach.Sections(SlideOut))
            surfaces.AddSlideOut(slideOut);
        return surfaces;
    }

    /// <summary>The kind that a surface is; null where it is faulty.</summary>
    public static string? KindOf(SectionReader surface) => surface.Get(Kind) is { } kind ? SurfaceKind.Kinds[kind].Word : null;

    /// <summary>The area of a surface; 0 where it is faulty. [m²]</summary>
    public static double AreaOf_m2(SectionReader surface) => surface.Get(Area) ?? 0;

    private void AddSurface(SectionReader section)
    {
        string? name = section.Get(Name);
        SurfaceKind? kind = section.Get(Kind) is { } k ? SurfaceKind.Kinds[k] : null;
        SurfaceKind? glazing = section.Get(Glazing) is { } g ? SurfaceKind.Glazings[g] : null;
        int? panes = section.Get(Panes);
        double area_m2 = section.Require(Area);
        double? u = section.Get(U);
        double? solar = section.Get(SolarGain);
        section.Finish();
        if (!section.Has(Kind))
            section.Lacks(Kind, "accepted: " + Kind.Accepted);
        if (kind is null)
            return;
        if (kind.Word == "window")
            kind = Window(section, kind, glazing, panes, u);
        else if (section.Has(Panes) || section.Has(Glazing))
            section.Report(section.Has(Panes) ? Panes : Glazing, $"a {kind.Word} has no panes to tell apart", "accepted: with kind = \"window\" only");
        double used = u ?? kind.U_W_m2K;
        section.Assume(U, name ?? kind.Group, $"{used} W/m²K");
        string line = name ?? kind.Group;
        Add(line, area_m2 * used);
        _envelope_m2 += area_m2;
        SolarAperture_m2 += area_m2 * (solar ?? kind.SolarGain_frac);
        if (kind.Word == "floor")
        {
            Floor_m2 += area_m2;
            _floorLines.Add(line);
        }
    }

    private static SurfaceKind Window(SectionReader section, SurfaceKind kind, SurfaceKind? glazing, int? panes, double? u)
    {
        if (section.Has(Panes) && section.Has(Glazing))
            section.Report(Panes, "'glazing' already says the panes", "accepted: panes or glazing");
        if (!section.Has(Glazing) && u is null)
            section.Assume(Panes, section.Get(Name) ?? kind.Group);
        string word = glazing?.Word ?? (panes == 2 ? "double glass" : "single glass");
        return SurfaceKind.Glazings.First(g => g.Word == word);
    }

    private void AddSlideOut(SectionReader section)
    {
        string name = section.Get(SlideOutName) ?? "slide-outs";
        double? area = section.Get(SlideOutArea);
        double u = section.GetOrDefault(SlideOutU);
        double seal_m = section.Require(SealPerimeter);
        double bridge = section.GetOrDefault(SealBridge);
        section.Assume(SealBridge, name);
        section.Finish();
        if (section.Has(SlideOutArea))
            section.Assume(SlideOutU, name);
        if (area is { } walls)
        {
            Add(name, walls * u);
            _envelope_m2 += walls;
        }
        Add(name + ", seal", seal_m * bridge);
        _seal_m += seal_m;
    }

    private void Add(string line, double conductance_W_K) => _lines[line] = _lines.GetValueOrDefault(line) + conductance_W_K;
}

/// <summary>A kind of surface with what is usual for it. Whole assembly, films and frames included.</summary>
/// <param name="Word">As written under <c>kind</c> or <c>glazing</c>.</param>
/// <param name="Group">The line of the breakdown it counts in.</param>
/// <param name="U_W_m2K">Usual U.</param>
/// <param name="SolarGain_frac">Usual solar heat gain coefficient; 0 for what is opaque.</param>
internal sealed record SurfaceKind(string Word, string Group, double U_W_m2K, double SolarGain_frac = 0)
{
    /// <summary>Opaque kinds and fixed glass.</summary>
    public static IReadOnlyList<SurfaceKind> Kinds { get; } =
    [
        new("wall", "walls", 1.3),
        new("roof", "roof", 0.8),
        new("floor", "floor", 0.9),
        new("door", "doors", 3.0),
        new("window", "windows", 6.4, 0.78),
        new("windscreen", "windscreen", 6.2, 0.65),
        new("roof vent", "roof vents", 7.0, 0.8),
    ];

    /// <summary>Kinds of pane, for windows.</summary>
    public static IReadOnlyList<SurfaceKind> Glazings { get; } =
    [
        new("single glass", "windows, single glass", 6.4, 0.78),
        new("double glass", "windows, double glass", 4.2, 0.65),
        new("double acrylic", "windows, double acrylic", 2.9, 0.70),
        new("single and film", "windows, single with film", 3.5, 0.70),
        new("single and shade", "windows, single with insulated shade", 2.5, 0.20),
    ];
}
