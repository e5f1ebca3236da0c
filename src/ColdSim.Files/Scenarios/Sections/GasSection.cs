using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Gas;
using ColdSim.Physics.Mixtures;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[gas]</c>: the fuel, by its grade or by what it is made of.</summary>
internal static class GasSection
{
    // What printed analyses miss by rounding.
    private const double Rounding = 0.005;

    private static readonly ChoiceKey<int> Grade = new(
        "grade", 0, "what is filled, as it is sold; [Mixed gas](mixed-gas.md) says what each is taken as", ChoiceKey.Numbered(GasGrade.Names));

    private static readonly QuantityKey HeatingValue = new(
        "heating_value", Dimension.HeatingValue, "45 MJ/kg", "52 MJ/kg", KeyDefault.Of($"{NumberShown.Of(new GasSpecification().HeatingValue_J_kg, Dimension.HeatingValue, "MJ/kg")}, of a mixed gas by what it is made of"),
        "gross heat of combustion, of a mixed gas as it is filled");

    private static readonly PriceKey GasPrice = new(
        "price", each: false, KeyDefault.None,
        "of the gas that is in the cylinders at the start: `\"1.20 per lb\"`, `\"2.60 per kg\"`, `\"4.35 per gal\"`. A volume is that of the liquid at 60 °F");

    private static readonly TextKey Currency = new("currency", KeyDefault.Of(new Prices().Currency), "what is written before a sum")
    {
        Accepts = "1 to 4 characters",
        Such = "EUR",
    };

    private static readonly Parts ByMass = new(
        "by_mass", "what the gas is made of, by mass", "part of the mass; the three add up to 100 %, half a percent apart at most", "part of the mass");

    private static readonly Parts ByVolume = new(
        "by_liquid_volume", "what the gas is made of, by liquid volume",
        "part of the liquid's volume at 60 °F; the three add up to 100 %, half a percent apart at most", "part of the volume");

    public static readonly ScenarioSection Declared = new("gas", TableForm.One, "the fuel", [Grade, HeatingValue, GasPrice, Currency], ByMass.Declared, ByVolume.Declared)
    {
        Ways = [[Grade.Name], [ByMass.Declared.Name], [ByVolume.Declared.Name]],
    };

    public static (GasSpecification Gas, Prices Prices) Read(SectionReader section)
    {
        GasSpecification gas = Composed(section);
        gas = gas with { HeatingValue_J_kg = section.Get(HeatingValue) ?? (gas.IsMixed ? GasBlend.Heat_J(gas.Composition) : gas.HeatingValue_J_kg) };
        Prices prices = new() { Gas = section.Get(GasPrice), Currency = section.Currency(Currency) ?? Currency.DefaultShown };
        section.Finish();
        return (gas, prices);
    }

    private static GasSpecification Composed(SectionReader section)
    {
        int? sold = section.Get(Grade);
        GasMasses? mass = ByMass.Read(section.Section(ByMass.Declared)), volume = ByVolume.Read(section.Section(ByVolume.Declared));
        ReportSecondWay(section);
        if (sold is { } place && GasGrade.Of(place) is { } grade)
        {
            if (grade.Composition != GasMasses.PurePropane)
                section.Reading.Assume($"gas: {grade.Name}, assumed to be {grade.Meaning}");
            return new GasSpecification { Name = grade.Name, Composition = grade.Composition };
        }

        GasMasses parts = mass ?? (volume is { } v ? GasBlend.FromLiquidVolumes(v) : GasMasses.PurePropane);
        return parts.NormalButane + parts.Isobutane > 0
            ? new GasSpecification { Name = "mixed gas", Composition = parts }
            : new GasSpecification();
    }

    private static void ReportSecondWay(SectionReader section)
    {
        string accepted = "accepted: one of " + string.Join(", ", Declared.Ways.Select(w => w[0]));
        if (section.Has(ByMass.Declared) && section.Has(Grade))
            section.Report(ByMass.Declared, $"'{ByMass.Declared.Name}' beside '{Grade.Name}'", accepted);
        else if (section.Has(ByVolume.Declared) && (section.Has(Grade) || section.Has(ByMass.Declared)))
            section.Report(ByVolume.Declared, $"'{ByVolume.Declared.Name}' beside '{(section.Has(Grade) ? Grade.Name : ByMass.Declared.Name)}'", accepted);
    }

    /// <summary>A table of what a gas is made of.</summary>
    private sealed class Parts
    {
        private readonly QuantityKey _propane, _normalButane, _isobutane;

        public Parts(string name, string meaning, string first, string others)
        {
            _propane = Part("propane", first);
            _normalButane = Part("n_butane", others);
            _isobutane = Part("isobutane", others);
            Declared = new ScenarioSection(name, TableForm.One, meaning, [_propane, _normalButane, _isobutane]);
        }

        public ScenarioSection Declared { get; }

        /// <summary>The parts, made to add up to one; null where nothing is said or it is faulty.</summary>
        public GasMasses? Read(SectionReader section)
        {
            int faults = section.Reading.Problems.Count;
            GasMasses parts = new(section.GetOrDefault(_propane), section.GetOrDefault(_normalButane), section.GetOrDefault(_isobutane));
            section.Finish();
            if (!section.Present || section.Reading.Problems.Count > faults)
                return null;
            if (Math.Abs(parts.Sum - 1) <= Rounding)
                return parts.Parts();
            section.Reading.Report(
                section.Place, FormattableString.Invariant($"{section.Title} adds up to {100 * parts.Sum:0.##} %"), "accepted: parts that add up to 100 %");
            return null;
        }

        private static QuantityKey Part(string name, string meaning) => new(name, Dimension.Ratio, "0 %", "100 %", KeyDefault.Of(0, ""), meaning);
    }
}
