using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Model;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Gas;
using ColdSim.Model.Weather;
using ColdSim.Physics.Units;
using ColdSim.Planning.Trips;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[cylinder]</c> for one, <c>[[cylinder]]</c> for several: its shell, what is in it, until when it may be filled.</summary>
internal static class CylinderSection
{
    // Propane that fills a cylinder at -20 °C to the brim, per mass of water that does.
    private const double BrimfulFraction = 0.55;

    private static readonly CylinderSpecification Usual = new()
    {
        Name = "",
        Volume_m3 = 0,
        OutsideDiameter_m = 0,
        MetalMass_kg = 0,
        Tare_kg = 0,
        LegalFill_kg = 0,
        Contents_kg = 0,
    };

    private static readonly TextKey Name = new("name", KeyDefault.Of("its size"), "what you call it, such as \"left\"") { Accepts = "each another", Such = "left" };

    private static readonly QuantityKey WallConductivity = new(
        "wall_conductivity", Dimension.Conductivity, "0.1 W/mK", "400 W/mK", KeyDefault.Of(Usual.WallConductivity_W_mK, "W/mK", "steel"), "of the shell");

    private static readonly QuantityKey MetalHeat = new(
        "metal_heat", Dimension.SpecificHeat, "300 J/kgK", "2,000 J/kgK", KeyDefault.Of(Usual.MetalHeat_J_kgK, "J/kgK", "steel"), "of the shell");

    private static readonly QuantityKey Left = new(
        "left", [new(Dimension.Ratio, "0 %", "130 %"), new(Dimension.Mass, "0 kg", "2,500 kg")], KeyDefault.Of("full"),
        "what is in it at the start, liquid and vapour; a ratio is one of `legal_fill`")
    {
        Words = ["full"],
        Assumed = "{who}: left not given; assumed full, {value}",
        Comment = "of the legal filling; or a mass, such as \"12 lb\"",
    };

    /// <summary>What is said of a filling of 1.</summary>
    public static readonly UnusualValue LeftIsOne = new(
        "cylinder.left", "the number 1 without a unit, which is all of the legal filling", "\"full\", or a mass with its unit, such as \"1 lb\"", UnusualValue.OurChoice);

    /// <summary>Whether a key that an option sets means another cylinder or other contents.</summary>
    public static bool IsSizeOrContents(string key) => key == Left.Name || CylinderShell.IsAnother(key);

    private static readonly QuantityKey Temperature = new(
        "temperature", Dimension.Temperature, "-60 °C", "50 °C", KeyDefault.Of("the outside air's"), "at the start")
    {
        Assumed = "{who}: temperature at the start not given; assumed {value}",
    };

    private static readonly QuantityKey Relief = new(
        "relief", Dimension.Pressure, "1 MPa", "4 MPa", KeyDefault.Of(Usual.ReliefPressure_Pa, "psi"), "where the relief valve starts to open");

    private static readonly DateKey RequalifyBy = new("requalify_by", KeyDefault.None, "last day on which a station may fill it");

    private static readonly DateKey Stamped = new(
        "stamped", KeyDefault.None,
        "instead: day of manufacture or of the last requalification. Collars show month and year; take the last day of that month");

    private static readonly WholeKey RequalifyYears = new(
        "requalify_years", 1, 20, KeyDefault.Of(Requalification.Usual_years),
        "for how long `stamped` holds: [49 CFR 180.209](sources.md#49-cfr-180209) has 12, 7 or 5 by the kind of test")
    {
        GoesWith = [Stamped.Name],
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly FlagKey Enclosed = new("enclosed", true, "whether it is in the `[enclosure]`, where that is a cover or a locker");

    public static readonly ScenarioSection Declared = new(
        "cylinder", TableForm.OneOrMany, "a propane cylinder",
        [Name, .. CylinderShell.Keys, WallConductivity, MetalHeat, Left, Temperature, Relief, RequalifyBy, Stamped, RequalifyYears, Enclosed],
        SurroundingsSection.Declared, BlanketSection.Declared)
    {
        IsNeeded = true,
        Most = Rig.MostCylinders,
        Ways = CylinderShell.Ways,
    };

    /// <summary>Keys that a second cylinder of the same kind has too.</summary>
    public static IReadOnlyList<ScenarioKey> OfItsKind { get; } = [.. CylinderShell.Keys, WallConductivity, MetalHeat, Relief, Enclosed];

    /// <summary>The cylinders in the order written; empty where one of them is faulty.</summary>
    public static IReadOnlyList<CylinderSpecification> ReadAll(SectionReader root)
    {
        EnclosureSection.Kind? place = EnclosureSection.KindOf(root);
        if (!root.IsList(Declared))
        {
            SectionReader one = root.Section(Declared);
            if (!one.Present)
                root.Reading.Missing(one.Place, "the scenario has no [cylinder]");
            return Read(one, "cylinder", place) is { } cylinder ? [cylinder] : [];
        }

        IReadOnlyList<SectionReader> sections = root.Sections(Declared);
        if (sections.Count > Rig.MostCylinders)
            root.Reading.Report(sections[Rig.MostCylinders].Place, FormattableString.Invariant($"{sections.Count} cylinders"), FormattableString.Invariant($"accepted: up to {Rig.MostCylinders}"));
        CheckNames(root.Reading, sections);
        List<CylinderSpecification> cylinders = [];
        for (int i = 0; i < sections.Count; i++)
        {
            string called = sections.Count == 1 ? "cylinder" : FormattableString.Invariant($"cylinder {i + 1}");
            if (Read(sections[i], called, place) is { } cylinder)
                cylinders.Add(cylinder);
        }
        return cylinders.Count == sections.Count ? cylinders : [];
    }

    private static void CheckNames(Reading reading, IReadOnlyList<SectionReader> sections)
    {
        Dictionary<string, TextPlace> names = new(StringComparer.OrdinalIgnoreCase);
        foreach (SectionReader section in sections)
        {
            if (section.Value(Name) is not TomlText name)
                continue;
            if (!names.TryAdd(name.Value.Trim(), name.Place))
                reading.Report(name.Place, $"two cylinders are called \"{Quote.Of(name.Value.Trim())}\"", FormattableString.Invariant($"the first is in line {names[name.Value.Trim()].Line}"));
        }
    }

    /// <summary>Reads one cylinder.</summary>
    /// <param name="section">Its table.</param>
    /// <param name="called">What it is called in warnings and assumptions.</param>
    /// <param name="place">Where the rig's cylinders are; null where nothing is said.</param>
    private static CylinderSpecification? Read(SectionReader section, string called, EnclosureSection.Kind? place)
    {
        bool enclosed = section.GetOrDefault(Enclosed);
        string? label = section.Get(Name)?.Trim();
        CylinderShell? shell = CylinderShell.Read(section, called);
        double conductivity = section.GetOrDefault(WallConductivity);
        double metalHeat = section.GetOrDefault(MetalHeat);
        double relief = section.GetOrDefault(Relief);
        double? temperature = section.Get(Temperature);
        double contents = ReadContents(section, shell?.LegalFill_kg ?? double.NaN, called);
        DateOnly? requalifyBy = ReadLastDay(section, called);
        CylinderSurroundings surroundings = SurroundingsSection.Read(section.Section(SurroundingsSection.Declared), called, enclosed ? place : null);
        BlanketSpecification? blanket = BlanketSection.Read(section.Section(BlanketSection.Declared), called);
        section.Finish();
        if (shell is null)
            return null;
        section.Assume(Temperature, called);
        CheckContents(section, shell, contents, called);
        return new CylinderSpecification
        {
            Name = shell.Name,
            Label = label,
            Orientation = shell.Orientation,
            Volume_m3 = shell.Volume_m3,
            OutsideDiameter_m = shell.Diameter_m,
            WallThickness_m = shell.Wall_m,
            WallConductivity_W_mK = conductivity,
            MetalMass_kg = shell.Metal_kg,
            MetalHeat_J_kgK = metalHeat,
            Tare_kg = shell.Tare_kg,
            LegalFill_kg = shell.LegalFill_kg,
            Contents_kg = contents,
            InitialTemperature_K = temperature,
            ReliefPressure_Pa = relief,
            RequalifyBy = requalifyBy,
            IsEnclosed = enclosed,
            Surroundings = surroundings,
            Blanket = blanket,
        };
    }

    /// <summary>Reports cylinders that could not even begin: full of liquid, or at their relief pressure, at their first temperature.</summary>
    /// <param name="root">The scenario.</param>
    /// <param name="written">Its cylinders in the order written.</param>
    /// <param name="gas">What is in them.</param>
    /// <param name="air">The weather at the start.</param>
    public static void CheckStart(SectionReader root, IReadOnlyList<CylinderSpecification> written, GasSpecification gas, in WeatherSample air)
    {
        IReadOnlyList<SectionReader> sections = root.IsList(Declared) ? root.Sections(Declared) : [root.Section(Declared)];
        for (int i = 0; i < written.Count; i++)
        {
            CylinderSpecification cylinder = written[i];
            CylinderBody body = new(cylinder);
            double t_K = cylinder.InitialTemperature_K ?? air.Air_K;
            string shown = FormattableString.Invariant($"{t_K - ConversionFactors.ZeroCelsius_K:0.#} °C, its temperature at the start");
            double Liquid_m3(double propane_kg) => At(propane_kg).LiquidVolume_m3;
            CylinderContents At(double propane_kg) => gas.IsMixed && propane_kg > 0 ? body.Contents(gas.Composition * propane_kg, t_K) : body.Contents(propane_kg, t_K);
            if (Liquid_m3(cylinder.Contents_kg) >= cylinder.Volume_m3)
            {
                // The most that leaves a hundredth of it to vapour.
                double low_kg = 0, high_kg = cylinder.Contents_kg;
                while (high_kg - low_kg > 1e-3)
                {
                    double middle_kg = 0.5 * (low_kg + high_kg);
                    if (Liquid_m3(middle_kg) < 0.99 * cylinder.Volume_m3)
                        low_kg = middle_kg;
                    else
                        high_kg = middle_kg;
                }
                sections[i].Report(Left, FormattableString.Invariant($"{cylinder.Contents_kg:0.##} kg fill the cylinder with liquid to the brim at {shown}"),
                    FormattableString.Invariant($"accepted: up to {low_kg:0.##} kg at that temperature, legally {cylinder.LegalFill_kg:0.##} kg"));
            }
            else if (At(cylinder.Contents_kg).Pressure_Pa - air.Pressure_Pa is var pressure_Pa && pressure_Pa >= cylinder.ReliefPressure_Pa)
            {
                sections[i].Report(sections[i].Has(Temperature) ? Temperature : Relief,
                    FormattableString.Invariant($"the relief valve would be open at {shown}: the cylinder's pressure there is {pressure_Pa / ConversionFactors.Psi_Pa:0} psi"),
                    FormattableString.Invariant($"accepted: less than its {cylinder.ReliefPressure_Pa / ConversionFactors.Psi_Pa:0} psi, so a lower 'temperature' or a higher 'relief'"));
            }
        }
    }

    // What is in the cylinder, as a part of its legal filling or as a mass; NaN where it cannot be known.
    private static double ReadContents(SectionReader section, double legalFill_kg, string called)
    {
        if (section.Present)
            section.Assume(Left, called, $"{legalFill_kg:0.##} kg");
        if (!section.Has(Left) || section.IsWord(Left))
            return legalFill_kg;
        if (section.Value(Left) is { } one and (TomlNumber { Value: 1 } or TomlText { Value: "1" }))
            section.Reading.WarnUnusual(one.Place, FormattableString.Invariant($"'left' is 1 without a unit, read as all of the legal filling, {legalFill_kg:0.##} kg"), LeftIsOne.Usual);
        double? left = section.Get(Left, out QuantityRange range);
        return left * (range.Dimension == Dimension.Mass ? 1 : legalFill_kg) ?? double.NaN;
    }

    private static void CheckContents(SectionReader section, CylinderShell shell, double contents_kg, string called)
    {
        double water_kg = shell.Volume_m3 * 1000;
        if (contents_kg > BrimfulFraction * water_kg)
        {
            section.Report(Left, FormattableString.Invariant($"{contents_kg:0.##} kg of propane does not fit a water capacity of {water_kg:0.##} kg"),
                FormattableString.Invariant($"accepted: up to {BrimfulFraction * water_kg:0.##} kg, legally {shell.LegalFill_kg:0.##} kg"));
        }
        else if (contents_kg > shell.LegalFill_kg * 1.0001)
        {
            section.Reading.Warn($"{called}: {contents_kg:0.##} kg is more than the legal filling of {shell.LegalFill_kg:0.##} kg");
        }
        shell.CheckLegalFill(section, BrimfulFraction * water_kg);
    }

    // The last day on which it may be filled; null where nothing is said.
    private static DateOnly? ReadLastDay(SectionReader section, string called)
    {
        DateOnly? by = section.Get(RequalifyBy);
        DateOnly? stamped = section.Get(Stamped);
        int years = section.GetOrDefault(RequalifyYears);
        if (section.Has(RequalifyBy) && section.Has(Stamped))
        {
            section.Report(Stamped, "'requalify_by' already says until when it may be filled", "accepted: requalify_by, or stamped with requalify_years");
            return null;
        }
        if (section.Has(RequalifyYears) && !section.Has(Stamped))
            section.Report(RequalifyYears, "'requalify_years' without 'stamped'", "accepted: stamped, the day from which they count");
        if (stamped is not { } from)
            return by;
        string until = Requalification.LastDay(from, Requalification.Usual_years).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        section.Assume(RequalifyYears, called, $"{Requalification.Usual_years} from {from:yyyy-MM-dd}, so until {until}");
        return Requalification.LastDay(from, years);
    }
}
