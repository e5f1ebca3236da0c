using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Toml;
using ColdSim.Model;
using ColdSim.Model.Appliances;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The keys that every burner beside the furnace has: its name, its plate, the pressures it needs.</summary>
internal static class ApplianceKeys
{
    private static readonly QuantityKey FullPressure = new("full_pressure", Dimension.Pressure, "100 Pa", "10 kPa");
    private static readonly QuantityKey MinimumPressure = new("minimum_pressure", Dimension.Pressure, "0 Pa", "10 kPa");

    /// <summary>What it is called: its own name, or its kind, with a number from the second on.</summary>
    public static string Name(SectionReader section, string kind, int number)
        => section.Text("name") ?? (number == 1 ? kind : string.Create(CultureInfo.InvariantCulture, $"{kind} {number}"));

    /// <summary>The appliance with pressures and altitude as written.</summary>
    /// <param name="section">Its table.</param>
    /// <param name="appliance">It, as its kind's own keys make it.</param>
    public static T Over<T>(SectionReader section, T appliance)
        where T : GasAppliance
    {
        appliance = appliance with
        {
            FullPressure_Pa = section.Get(FullPressure, appliance.FullPressure_Pa),
            MinimumPressure_Pa = section.Get(MinimumPressure, appliance.MinimumPressure_Pa),
            Altitude = section.Choice("altitude", ("fixed orifice", AltitudeRule.FixedOrifice), ("code percentage", AltitudeRule.CodePercentage))
                ?? appliance.Altitude,
        };
        section.Finish();
        if (appliance.MinimumPressure_Pa > appliance.FullPressure_Pa)
            section.Report(section.Has("minimum_pressure") ? "minimum_pressure" : "full_pressure", "the minimum pressure is above the full pressure");
        return appliance;
    }

    /// <summary>Spans of which there must be at least one; none would mean always.</summary>
    public static IReadOnlyList<ClockWindow> Needed(SectionReader section, string key, string accepted)
    {
        if (!section.Has(key))
            section.Lacks(key, accepted);
        else if (section.Value(key) is TomlList { Items.Count: 0 })
            section.Report(key, $"'{key}' is empty", accepted);
        return section.Spans(key) ?? [];
    }

    /// <summary>Says what was taken for a key that is not there.</summary>
    public static void Assume(SectionReader section, string name, string key, FormattableString taken)
    {
        if (!section.Has(key))
            section.Reading.Assume($"{name}: {key} not given, taken as {taken.ToString(CultureInfo.InvariantCulture)}");
    }
}
