using ColdSim.Files.Quantities;
using ColdSim.Model.Coach;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[coach.surface]]</c> and <c>[[coach.slide_out]]</c>: the envelope piece by piece.</summary>
internal sealed class CoachSurfaces
{
    private static readonly QuantityKey Area = new("area", Dimension.Area, "0.01 m²", "300 m²");
    private static readonly QuantityKey U = new("u", Dimension.HeatTransferCoefficient, "0.1 W/m²K", "12 W/m²K");
    private static readonly QuantityKey SolarGain = new("solar_gain", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey SealPerimeter = new("seal_perimeter", Dimension.Length, "0.5 m", "40 m");
    private static readonly QuantityKey SealBridge = new("seal_bridge", Dimension.Conductivity, "0 W/mK", "3 W/mK");

    // Per m² of envelope and per metre of seal: the middle of the working ranges 1 to 3 cm².
    private const double Leakage_cm2_m2 = 2;
    private const double SealLeakage_cm2_m = 2;
    private const double SealBridge_W_mK = 0.4;

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

    public double UsualLeakage_cm2 => (Leakage_cm2_m2 * _envelope_m2) + (SealLeakage_cm2_m * _seal_m);

    public static CoachSurfaces Read(SectionReader coach)
    {
        CoachSurfaces surfaces = new();
        foreach (SectionReader surface in coach.Sections("surface"))
            surfaces.AddSurface(surface);
        foreach (SectionReader slideOut in coach.Sections("slide_out"))
            surfaces.AddSlideOut(slideOut);
        return surfaces;
    }

    private void AddSurface(SectionReader section)
    {
        string? name = section.Text("name");
        SurfaceKind? kind = Pick(section, "kind", SurfaceKind.Kinds);
        SurfaceKind? glazing = Pick(section, "glazing", SurfaceKind.Glazings);
        int? panes = section.Whole("panes", 1, 2);
        double area_m2 = section.Require(Area);
        double? u = section.Get(U);
        double? solar = section.Get(SolarGain);
        section.Finish();
        if (!section.Has("kind"))
            section.Lacks("kind", "accepted: " + string.Join(", ", SurfaceKind.Kinds.Select(k => $"\"{k.Word}\"")));
        if (kind is null)
            return;
        if (kind.Word == "window")
            kind = Window(section, kind, glazing, panes, u);
        else if (section.Has("panes") || section.Has("glazing"))
            section.Report(section.Has("panes") ? "panes" : "glazing", $"a {kind.Word} has no panes to tell apart", "accepted: with kind = \"window\" only");
        double used = u ?? kind.U_W_m2K;
        if (!section.Has("u"))
            section.Reading.Assume($"coach: u of {name ?? kind.Group} not given, taken as {used} W/m²K");
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
        if (section.Has("panes") && section.Has("glazing"))
            section.Report("panes", "'glazing' already says the panes", "accepted: panes or glazing");
        if (!section.Has("panes") && !section.Has("glazing") && u is null)
            section.Reading.Assume($"coach: panes of {section.Text("name") ?? kind.Group} not given, taken as single glass");
        string word = glazing?.Word ?? (panes == 2 ? "double glass" : "single glass");
        return SurfaceKind.Glazings.First(g => g.Word == word);
    }

    private void AddSlideOut(SectionReader section)
    {
        string name = section.Text("name") ?? "slide-outs";
        double? area = section.Get(Area);
        double? u = section.Get(U);
        double seal_m = section.Require(SealPerimeter);
        double bridge = section.GetOrAssume(SealBridge, SealBridge_W_mK,
            $"coach: seal_bridge of {name} not given, taken as {SealBridge_W_mK} W/mK");
        section.Finish();
        SurfaceKind wall = SurfaceKind.Kinds[0];
        if (section.Has("area") && !section.Has("u"))
            section.Reading.Assume($"coach: u of {name} not given, taken as {wall.U_W_m2K} W/m²K");
        if (area is { } walls)
        {
            Add(name, walls * (u ?? wall.U_W_m2K));
            _envelope_m2 += walls;
        }
        Add(name + ", seal", seal_m * bridge);
        _seal_m += seal_m;
    }

    private void Add(string line, double conductance_W_K) => _lines[line] = _lines.GetValueOrDefault(line) + conductance_W_K;

    private static SurfaceKind? Pick(SectionReader section, string key, IReadOnlyList<SurfaceKind> kinds)
    {
        int? index = section.Choice(key, [.. kinds.Select((k, i) => (k.Word, i))]);
        return index is { } i ? kinds[i] : null;
    }
}
