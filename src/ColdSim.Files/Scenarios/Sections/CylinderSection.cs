using ColdSim.Files.Quantities;
using ColdSim.Files.Toml;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[cylinder]</c>: a common size by name, or one by its plate.</summary>
internal static class CylinderSection
{
    private static readonly QuantityKey WaterByMass = new("water_capacity", Dimension.Mass, "1 kg", "5,000 kg");
    private static readonly QuantityKey WaterByVolume = new("water_capacity", Dimension.Volume, "1 L", "5,000 L");
    private static readonly QuantityKey Diameter = new("diameter", Dimension.Length, "10 cm", "3 m");
    private static readonly QuantityKey Wall = new("wall", Dimension.Length, "0.5 mm", "30 mm");
    private static readonly QuantityKey WallConductivity = new("wall_conductivity", Dimension.Conductivity, "0.1 W/mK", "400 W/mK");
    private static readonly QuantityKey MetalMass = new("metal_mass", Dimension.Mass, "0.2 kg", "3,000 kg");
    private static readonly QuantityKey MetalHeat = new("metal_heat", Dimension.SpecificHeat, "300 J/kgK", "2,000 J/kgK");
    private static readonly QuantityKey Tare = new("tare", Dimension.Mass, "0.5 kg", "3,500 kg");
    private static readonly QuantityKey LegalFill = new("legal_fill", Dimension.Mass, "0.3 kg", "2,500 kg");
    private static readonly QuantityKey StartTemperature = new("temperature", Dimension.Temperature, "-60 °C", "50 °C");
    private static readonly QuantityKey Relief = new("relief", Dimension.Pressure, "1 MPa", "4 MPa");

    // Propane that fills a cylinder at -20 °C to the brim, per mass of water that does.
    private const double BrimfulFraction = 0.55;

    /// <summary>Reads one cylinder.</summary>
    /// <param name="section">Its table.</param>
    /// <param name="called">What it is called in warnings and assumptions.</param>
    public static CylinderSpecification? Read(SectionReader section, string called)
    {
        string? label = section.Text("name")?.Trim();
        Body? body = ReadBody(section, called);
        Orientation orientation = section.Choice("orientation", ("upright", Orientation.Upright), ("horizontal", Orientation.Horizontal))
            ?? body?.Orientation ?? Orientation.Upright;
        double? metal = section.Get(MetalMass);
        double? tare = section.Get(Tare);
        double? fill = section.Get(LegalFill);
        CylinderSpecification defaults = new()
        {
            Name = "",
            Volume_m3 = 0,
            OutsideDiameter_m = 0,
            MetalMass_kg = 0,
            Tare_kg = 0,
            LegalFill_kg = 0,
            Contents_kg = 0,
        };
        double conductivity = section.Get(WallConductivity, defaults.WallConductivity_W_mK);
        double metalHeat = section.Get(MetalHeat, defaults.MetalHeat_J_kgK);
        double relief = section.Get(Relief, defaults.ReliefPressure_Pa);
        double? temperature = section.Get(StartTemperature);
        double legalFill = fill ?? body?.LegalFill_kg ?? double.NaN;
        double contents = CylinderContents.Read(section, legalFill, called);
        DateOnly? requalifyBy = StampedDate.LastDay(section, called);
        CylinderSurroundings surroundings = SurroundingsSection.Read(section.Section("surroundings"), called);
        BlanketSpecification? blanket = BlanketSection.Read(section.Section("blanket"), called);
        section.Finish();
        if (body is null)
            return null;
        if (!section.Has("temperature"))
            section.Reading.Assume($"{called}: temperature at the start not given, taken as the outside air's");
        double water_kg = body.Volume_m3 * 1000;
        if (contents > BrimfulFraction * water_kg)
        {
            section.Report("left", FormattableString.Invariant($"{contents:0.##} kg of propane does not fit a water capacity of {water_kg:0.##} kg"),
                FormattableString.Invariant($"accepted: up to {BrimfulFraction * water_kg:0.##} kg, legally {legalFill:0.##} kg"));
        }
        else if (contents > legalFill * 1.0001)
        {
            section.Reading.Warn($"{called}: {contents:0.##} kg is more than the legal filling of {legalFill:0.##} kg");
        }
        if (fill > BrimfulFraction * water_kg)
        {
            section.Report("legal_fill", FormattableString.Invariant($"a legal filling of {fill:0.##} kg does not fit a water capacity of {water_kg:0.##} kg"),
                FormattableString.Invariant($"accepted: 42 % of the water capacity is {0.42 * water_kg:0.##} kg"));
        }
        return new CylinderSpecification
        {
            Name = body.Name,
            Label = label,
            Orientation = orientation,
            Volume_m3 = body.Volume_m3,
            OutsideDiameter_m = body.Diameter_m,
            WallThickness_m = body.Wall_m,
            WallConductivity_W_mK = conductivity,
            MetalMass_kg = metal ?? body.Metal_kg,
            MetalHeat_J_kgK = metalHeat,
            Tare_kg = tare ?? body.Tare_kg,
            LegalFill_kg = legalFill,
            Contents_kg = contents,
            InitialTemperature_K = temperature,
            ReliefPressure_Pa = relief,
            RequalifyBy = requalifyBy,
            Surroundings = surroundings,
            Blanket = blanket,
        };
    }

    private sealed record Body(
        string Name, Orientation Orientation, double Volume_m3, double Diameter_m, double Wall_m, double Metal_kg, double Tare_kg, double LegalFill_kg);

    private static Body? ReadBody(SectionReader section, string called)
    {
        string? size = section.Text("size");
        double? volume = ReadVolume(section);
        double? diameter = section.Get(Diameter);
        double? wall = section.Get(Wall);
        if (section.Has("size") && section.Has("water_capacity"))
        {
            section.Report("water_capacity", "'size' already says the water capacity", "accepted: size, or water_capacity with diameter");
            return null;
        }
        if (section.Has("size"))
            return size is null ? null : FromSize(section, size, diameter, wall);
        if (!section.Has("water_capacity") && !section.Has("diameter"))
        {
            if (section.Present)
                section.Lacks("size", "accepted: size, or water_capacity with diameter");
            return null;
        }
        if (!section.Has("water_capacity"))
            section.Lacks("water_capacity", WaterByMass.Accepted);
        if (!section.Has("diameter"))
            section.Lacks("diameter", Diameter.Accepted);
        return volume is null || diameter is null ? null : FromPlate(section, volume.Value, diameter.Value, wall, called);
    }

    private static Body? FromSize(SectionReader section, string size, double? diameter, double? wall)
    {
        if (StandardSize.Find(size) is not { } standard)
        {
            section.Reading.Report(section.Value("size")!.Place, $"no common size is called \"{size}\"",
                "accepted: " + string.Join(", ", StandardSize.All.Select(s => s.Name)) + ", or water_capacity with diameter");
            return null;
        }
        if (!Possible(section, standard.Volume_m3, diameter ?? standard.OutsideDiameter_m, wall ?? standard.WallThickness_m))
            return null;
        return new Body(standard.Name, standard.Orientation, standard.Volume_m3, diameter ?? standard.OutsideDiameter_m,
            wall ?? standard.WallThickness_m, standard.ShellMass_kg, standard.Tare_kg, standard.LegalFill_kg);
    }

    private static Body? FromPlate(SectionReader section, double volume_m3, double diameter_m, double? wall, string called)
    {
        double wall_m = wall ?? 0.002;
        if (!section.Has("wall"))
            section.Reading.Assume($"{called}: wall not given, taken as 2 mm");
        if (!Possible(section, volume_m3, diameter_m, wall_m))
            return null;
        double metal_kg = ShellGeometry.SteelMass_kg(volume_m3, diameter_m, wall_m);
        if (!section.Has("metal_mass"))
            section.Reading.Assume($"{called}: metal_mass not given, taken as {metal_kg:0.#} kg, a steel shell with 2:1 heads");
        if (!section.Has("tare"))
            section.Reading.Assume($"{called}: tare not given, taken as metal_mass and {ShellGeometry.Fittings_kg:0.#} kg for collar, foot ring and valve");
        double fill_kg = StandardSize.LegalFill_frac * volume_m3 * 1000;
        string name = FormattableString.Invariant($"{fill_kg / 0.45359237:0.#} lb");
        return new Body(name, Orientation.Upright, volume_m3, diameter_m, wall_m, metal_kg, metal_kg + ShellGeometry.Fittings_kg, fill_kg);
    }

    private static double? ReadVolume(SectionReader section)
    {
        bool byVolume = section.Value("water_capacity") is TomlText text && SiText.Read(text.Value, Dimension.Volume, out _) is null;
        return byVolume ? section.Get(WaterByVolume) : section.Get(WaterByMass) / 1000;
    }

    private static bool Possible(SectionReader section, double volume_m3, double diameter_m, double wall_m)
    {
        if (wall_m > 0.1 * diameter_m)
        {
            section.Report(section.Has("wall") ? "wall" : "diameter",
                FormattableString.Invariant($"a wall of {wall_m * 1000:0.##} mm is more than a tenth of the diameter of {diameter_m * 1000:0} mm"),
                FormattableString.Invariant($"accepted: up to {diameter_m * 100:0.##} mm for this diameter"));
            return false;
        }
        double inside_m = diameter_m - (2 * wall_m);
        if (ShellGeometry.StraightLength_m(volume_m3, inside_m) is >= 0 and < 20)
            return true;
        section.Report(section.Has("diameter") ? "diameter" : "wall",
            FormattableString.Invariant($"{volume_m3 * 1000:0.##} L cannot be a cylinder of {diameter_m * 1000:0} mm diameter and {wall_m * 1000:0.##} mm wall"),
            FormattableString.Invariant($"accepted: for this volume up to about {Math.Cbrt(12 * volume_m3 / Math.PI) * 1000:0} mm, less and the heads alone hold more"));
        return false;
    }
}
