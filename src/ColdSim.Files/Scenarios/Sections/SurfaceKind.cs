namespace ColdSim.Files.Scenarios.Sections;

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
