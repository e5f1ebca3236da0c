using ColdSim.Files.Quantities;
using ColdSim.Model.Gas;
using ColdSim.Physics.Mixtures;
using ColdSim.Planning.Trips;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[gas]</c>: the fuel.</summary>
internal static class GasSection
{
    private static readonly QuantityKey HeatingValue = new("heating_value", Dimension.HeatingValue, "45 MJ/kg", "52 MJ/kg");

    // The three ways of saying what the gas is.
    private const string Grade = "grade";
    private const string ByMass = "by_mass";
    private const string ByVolume = "by_liquid_volume";

    public static (GasSpecification Gas, Prices Prices) Read(SectionReader section)
    {
        GasSpecification gas = Composed(section);
        gas = gas with { HeatingValue_J_kg = section.Get(HeatingValue) ?? (gas.IsMixed ? GasBlend.Heat_J(gas.Composition) : gas.HeatingValue_J_kg) };
        Prices defaults = new();
        Prices prices = new() { Gas = section.Price("price", each: false), Currency = section.Currency("currency") ?? defaults.Currency };
        section.Finish();
        return (gas, prices);
    }

    private static GasSpecification Composed(SectionReader section)
    {
        int? sold = section.Choice(Grade, [.. GasGrade.Names.Select((name, place) => (name, place))]);
        GasMasses? mass = GasParts.Read(section.Section(ByMass)), volume = GasParts.Read(section.Section(ByVolume));
        string[] said = [.. new[] { Grade, ByMass, ByVolume }.Where(section.Has)];
        if (said.Length > 1)
            section.Report(said[1], $"'{said[1]}' beside '{said[0]}'", $"accepted: one of {Grade}, {ByMass}, {ByVolume}");
        if (sold is { } place && GasGrade.Of(place) is { } grade)
        {
            if (grade.Composition != GasMasses.PurePropane)
                section.Reading.Assume($"gas: {grade.Name}, taken as {grade.Meaning}");
            return new GasSpecification { Name = grade.Name, Composition = grade.Composition };
        }

        GasMasses parts = mass ?? (volume is { } v ? GasBlend.FromLiquidVolumes(v) : GasMasses.PurePropane);
        return parts.NormalButane + parts.Isobutane > 0
            ? new GasSpecification { Name = "mixed gas", Composition = parts }
            : new GasSpecification();
    }
}
