using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Units;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The keys of <c>[cylinder]</c> that say what shell it has: a common size by name, or one by its plate.</summary>
internal sealed record CylinderShell(
    string Name, Orientation Orientation, double Volume_m3, double Diameter_m, double Wall_m, double Metal_kg, double Tare_kg, double LegalFill_kg)
{
    private const string UsualWall = "2 mm";

    private static readonly TextKey Size = new("size", KeyDefault.None, "a common size: upright ones by nominal charge in pounds or kilograms, frame tanks by gross gallons")
    {
        Words = [.. StandardSize.All.Select(s => s.Name)],
        Such = "20 lb",
        Comment = "or water_capacity and diameter from the plate",
    };

    private static readonly QuantityKey WaterCapacity = new(
        "water_capacity", [new(Dimension.Mass, "1 kg", "5,000 kg"), new(Dimension.Volume, "1 L", "5,000 L")], KeyDefault.Of("by size"), "as stamped (\"WC\")");

    private static readonly QuantityKey Diameter = new(
        "diameter", Dimension.Length, "10 cm", "3 m", KeyDefault.Of("by size"), "outside diameter; must leave room for the heads");

    private static readonly QuantityKey Wall = new(
        "wall", Dimension.Length, "0.5 mm", "30 mm", KeyDefault.Of("by size, else " + UsualWall), "thickness of the shell, at most a tenth of the diameter")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey MetalMass = new(
        "metal_mass", Dimension.Mass, "0.2 kg", "3,000 kg", KeyDefault.Of("by size, else from the shape"), "shell that moves with the liquid's temperature")
    {
        Assumed = ScenarioKey.NotGiven + ", a steel shell with 2:1 heads",
    };

    private static readonly QuantityKey Tare = new(
        "tare", Dimension.Mass, "0.5 kg", "3,500 kg", KeyDefault.Of($"by size, else shell and {NumberShown.Of(ShellGeometry.Fittings_kg)} kg"), "empty mass, as stamped (\"TW\")")
    {
        Assumed = "{who}: tare not given; assumed metal_mass and {value} for collar, foot ring and valve",
    };

    private static readonly QuantityKey LegalFill = new(
        "legal_fill", Dimension.Mass, "0.3 kg", "2,500 kg", KeyDefault.Of($"{NumberShown.Of(StandardSize.LegalFill_frac, Dimension.Ratio, "%")} of the water capacity"), "what counts as full");

    private static readonly ChoiceKey<Orientation> OrientationKey = new(
        "orientation", KeyDefault.Of("by size, else upright"), "upright or on its side", ("upright", Orientation.Upright), ("horizontal", Orientation.Horizontal));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<ScenarioKey> Keys { get; } = [Size, WaterCapacity, Diameter, Wall, MetalMass, Tare, LegalFill, OrientationKey];

    /// <summary>Ways of saying what shell it is.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Ways { get; } = [[Size.Name], [WaterCapacity.Name, Diameter.Name]];

    /// <summary>Whether a key that an option sets means another shell, of which nothing written for the scenario's own holds.</summary>
    public static bool IsAnother(string key) => key == Size.Name || key == WaterCapacity.Name;

    /// <summary>Reads the shell; null where it is faulty or not said.</summary>
    public static CylinderShell? Read(SectionReader section, string called)
    {
        CylinderShell? shell = ReadBody(section, called);
        Orientation? orientation = section.Get(OrientationKey);
        double? metal = section.Get(MetalMass);
        double? tare = section.Get(Tare);
        double? fill = section.Get(LegalFill);
        return shell is null ? null : shell with
        {
            Orientation = orientation ?? shell.Orientation,
            Metal_kg = metal ?? shell.Metal_kg,
            Tare_kg = tare ?? shell.Tare_kg,
            LegalFill_kg = fill ?? shell.LegalFill_kg,
        };
    }

    /// <summary>Reports a legal filling, where one is written, that is more than fits.</summary>
    /// <param name="section">The cylinder.</param>
    /// <param name="most_kg">The most that fits.</param>
    public void CheckLegalFill(SectionReader section, double most_kg)
    {
        if (section.Has(LegalFill) && LegalFill_kg > most_kg)
        {
            double water_kg = Volume_m3 * 1000;
            section.Report(LegalFill, FormattableString.Invariant($"a legal filling of {LegalFill_kg:0.##} kg does not fit a water capacity of {water_kg:0.##} kg"),
                FormattableString.Invariant($"accepted: 42 % of the water capacity is {0.42 * water_kg:0.##} kg"));
        }
    }

    private static CylinderShell? ReadBody(SectionReader section, string called)
    {
        string? size = section.Get(Size);
        double? volume = section.Get(WaterCapacity, out QuantityRange range) is { } water ? range.Dimension == Dimension.Volume ? water : water / 1000 : null;
        double? diameter = section.Get(Diameter);
        double? wall = section.Get(Wall);
        if (section.Has(Size) && section.Has(WaterCapacity))
        {
            section.Report(WaterCapacity, "'size' already says the water capacity", "accepted: size, or water_capacity with diameter");
            return null;
        }
        if (section.Has(Size))
            return size is null ? null : FromSize(section, size, diameter, wall);
        if (!section.Has(WaterCapacity) && !section.Has(Diameter))
        {
            if (section.Present)
                section.Lacks(Size, "accepted: size, or water_capacity with diameter");
            return null;
        }
        if (!section.Has(WaterCapacity))
            section.Lacks(WaterCapacity, WaterCapacity.Accepted);
        if (!section.Has(Diameter))
            section.Lacks(Diameter, Diameter.Accepted);
        return volume is null || diameter is null ? null : FromPlate(section, volume.Value, diameter.Value, wall, called, IsInPounds(section));
    }

    private static CylinderShell? FromSize(SectionReader section, string size, double? diameter, double? wall)
    {
        if (StandardSize.Find(size) is not { } standard)
        {
            if (CountedSize.Find(size) is { } counted)
            {
                section.Reading.Report(section.ValuePlace(Size), FormattableString.Invariant($"\"{Quote.Of(size)}\" is {counted.Count} cylinders in one table"),
                    $"write a table [[cylinder]] with size = \"{Quote.Of(counted.Size)}\" for each");
                return null;
            }

            section.Reading.Report(section.ValuePlace(Size), $"no common size is called \"{Quote.Of(size)}\"",
                "accepted: " + string.Join(", ", Size.Words) + ", or water_capacity with diameter");
            return null;
        }
        if (!Possible(section, standard.Volume_m3, diameter ?? standard.OutsideDiameter_m, wall ?? standard.WallThickness_m))
            return null;
        return new CylinderShell(standard.Name, standard.Orientation, standard.Volume_m3, diameter ?? standard.OutsideDiameter_m,
            wall ?? standard.WallThickness_m, standard.ShellMass_kg, standard.Tare_kg, standard.LegalFill_kg);
    }

    private static CylinderShell? FromPlate(SectionReader section, double volume_m3, double diameter_m, double? wall, string called, bool pounds)
    {
        double wall_m = wall ?? Wall.Ranges[0].Si(UsualWall);
        section.Assume(Wall, called, $"{UsualWall}");
        if (!Possible(section, volume_m3, diameter_m, wall_m))
            return null;
        double metal_kg = ShellGeometry.SteelMass_kg(volume_m3, diameter_m, wall_m);
        section.Assume(MetalMass, called, $"{metal_kg:0.#} kg");
        section.Assume(Tare, called, $"{ShellGeometry.Fittings_kg:0.#} kg");
        double fill_kg = StandardSize.LegalFill_frac * volume_m3 * 1000;
        string name = pounds ? FormattableString.Invariant($"{fill_kg / ConversionFactors.Pound_kg:0.#} lb") : FormattableString.Invariant($"{fill_kg:0.#} kg");
        return new CylinderShell(name, Orientation.Upright, volume_m3, diameter_m, wall_m, metal_kg, metal_kg + ShellGeometry.Fittings_kg, fill_kg);
    }

    // A cylinder without a name is called by its filling, in the units of its plate.
    private static bool IsInPounds(SectionReader section)
        => section.Value(WaterCapacity) is TomlText text && NumberText.TryRead(text.Value.Trim(), out _, out string unit, out _)
            && unit.Trim().ToUpperInvariant() is "LB" or "LBS" or "OZ" or "GAL" or "FT³" or "FT3" or "CUFT";

    private static bool Possible(SectionReader section, double volume_m3, double diameter_m, double wall_m)
    {
        if (wall_m > 0.1 * diameter_m)
        {
            section.Report(section.Has(Wall) ? Wall : Diameter,
                FormattableString.Invariant($"a wall of {wall_m * 1000:0.##} mm is more than a tenth of the diameter of {diameter_m * 1000:0} mm"),
                FormattableString.Invariant($"accepted: up to {diameter_m * 100:0.##} mm for this diameter"));
            return false;
        }
        double inside_m = diameter_m - (2 * wall_m);
        if (ShellGeometry.StraightLength_m(volume_m3, inside_m) is >= 0 and < 20)
            return true;
        section.Report(section.Has(Diameter) ? Diameter : Wall,
            FormattableString.Invariant($"{volume_m3 * 1000:0.##} L cannot be a cylinder of {diameter_m * 1000:0} mm diameter and {wall_m * 1000:0.##} mm wall"),
            FormattableString.Invariant($"accepted: for this volume up to about {Math.Cbrt(12 * volume_m3 / Math.PI) * 1000:0} mm, less and the heads alone hold more"));
        return false;
    }
}
