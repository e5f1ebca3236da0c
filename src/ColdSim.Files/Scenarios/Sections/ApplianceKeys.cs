using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Appliances;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The keys that every burner beside the furnace has.</summary>
internal static class ApplianceKeys
{
    /// <summary>From what the name of all that takes gas must differ.</summary>
    public const string AnotherName = "another than all that takes gas";

    private static readonly ConstantDraw Usual = new() { Name = "", Input_W = 0 };

    private static readonly QuantityKey FullPressure = Full("delivery pressure from which its input is full");

    private static readonly QuantityKey MinimumPressure = Minimum("below it, its flame is lost; of several the one with the highest starves first");

    private static readonly ChoiceKey<AltitudeRule> Altitude = new(
        "altitude", Usual.Altitude, "how altitude lowers the input",
        ("fixed orifice", AltitudeRule.FixedOrifice), ("code percentage", AltitudeRule.CodePercentage));

    /// <summary>Whether it stops without 12 V.</summary>
    public static readonly FlagKey NeedsPower = new("needs_power", true, "whether its board stops it without 12 V");

    /// <summary>When it may burn.</summary>
    public static readonly SpansKey Hours = new("hours", KeyDefault.Of("always"), "when it may burn");

    /// <summary>Whether it is never lit.</summary>
    public static readonly FlagKey Off = new("off", false, "whether it is never lit, as if its valve were shut");

    /// <summary>The pressures, the rule for altitude and whether it is off, which are last in every kind's list.</summary>
    public static IReadOnlyList<ScenarioKey> Plate { get; } = [FullPressure, MinimumPressure, Altitude, Off];

    /// <summary>A key for the pressure at which something takes its full gas.</summary>
    public static QuantityKey Full(string meaning)
        => new("full_pressure", Dimension.Pressure, "100 Pa", "10 kPa", KeyDefault.Of(Usual.FullPressure_Pa, "inH2O"), meaning);

    /// <summary>A key for the pressure below which something stops.</summary>
    public static QuantityKey Minimum(string meaning)
        => new("minimum_pressure", Dimension.Pressure, "0 Pa", "10 kPa", KeyDefault.Of(Usual.MinimumPressure_Pa, "inH2O"), meaning);

    /// <summary>The appliance with pressures and altitude as written.</summary>
    /// <param name="section">Its table.</param>
    /// <param name="appliance">It, as its kind's own keys make it.</param>
    public static T Over<T>(SectionReader section, T appliance)
        where T : GasAppliance
    {
        appliance = appliance with
        {
            FullPressure_Pa = section.GetOrDefault(FullPressure),
            MinimumPressure_Pa = section.GetOrDefault(MinimumPressure),
            Altitude = section.GetOrDefault(Altitude),
        };
        bool off = section.GetOrDefault(Off);
        section.Finish();
        if (appliance.MinimumPressure_Pa > appliance.FullPressure_Pa)
            section.Report(section.Has(MinimumPressure) ? MinimumPressure : FullPressure, "the minimum pressure is above the full pressure");
        return off ? (T)appliance.Shut() : appliance;
    }
}
