using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Scenarios.Sections;

namespace ColdSim.Tests.Docs;

/// <summary>The tables of docs/scenario.md as the declarations have them.</summary>
internal static class ScenarioPage
{
    /// <summary>All of them, by the names of their markers.</summary>
    public static IReadOnlyDictionary<string, string> Parts()
    {
        Dictionary<string, string> parts = new(StringComparer.Ordinal)
        {
            ["surfaces"] = Table(["kind or glazing", "U", "solar heat gain coefficient"], SurfaceKind.Kinds.Where(k => k.Word != "window").Concat(SurfaceKind.Glazings).Select(Surface)),
            ["units"] = Table(["for", "written", "is"], SpellingTable.All.Select(Unit)),
        };
        foreach ((string name, ScenarioSection section) in ScenarioKeys.All)
            parts.Add("keys " + (name.Length == 0 ? "of the top level" : name), Table(["key", "type", "limits", "default", "meaning"], section.Keys.Select(Key)));
        return parts;
    }

    private static string[] Key(ScenarioKey key) => [$"`{key.Name}`", key.Kind, key.Limits, key.DefaultShown, key.Meaning];

    private static string[] Surface(SurfaceKind kind)
        => [kind.Word, Invariant($"{kind.U_W_m2K:0.0} W/m²K"), kind.SolarGain_frac == 0 ? "0" : Invariant($"{kind.SolarGain_frac:0.00}")];

    private static string[] Unit(UnitSpelling unit)
    {
        string factor = unit.Factor.ToString("G9", CultureInfo.InvariantCulture);
        string meaning = unit.Offset == 0 ? $"{factor} {SiName(unit.Dimension)}" : Invariant($"(t + {unit.Offset}) × {factor} K");
        return [unit.Dimension.Name(), string.Join(", ", unit.Spellings.Select(s => $"`{s}`")), meaning.Trim()];
    }

    private static string Table(string[] headings, IEnumerable<string[]> rows)
    {
        string[] line = [.. headings.Select(_ => "---")];
        return string.Concat(rows.Prepend(line).Prepend(headings).Select(r => $"|{string.Join('|', r.Select(c => c.Length == 0 ? " " : $" {c} "))}|\n"));
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string SiName(Dimension dimension) => dimension switch
    {
        Dimension.Mass => "kg",
        Dimension.Temperature or Dimension.TemperatureDifference => "K",
        Dimension.Power => "W",
        Dimension.Energy => "J",
        Dimension.Pressure => "Pa",
        Dimension.Length => "m",
        Dimension.Area => "m²",
        Dimension.Volume => "m³",
        Dimension.Speed => "m/s",
        Dimension.Duration => "s",
        Dimension.Ratio => "",
        Dimension.MassFlow => "kg/s",
        Dimension.VolumeFlow => "m³/s",
        Dimension.Conductance => "W/K",
        Dimension.HeatCapacity => "J/K",
        Dimension.HeatTransferCoefficient => "W/m²K",
        Dimension.Conductivity => "W/mK",
        Dimension.SpecificHeat => "J/kgK",
        Dimension.HeatingValue => "J/kg",
        Dimension.Irradiance => "W/m²",
        Dimension.ThermalInsulance => "m²K/W",
        Dimension.Current => "A",
        Dimension.Charge => "C",
        Dimension.Voltage => "V",
        Dimension.Angle => "rad",
        _ => throw new ArgumentOutOfRangeException(nameof(dimension)),
    };
}
