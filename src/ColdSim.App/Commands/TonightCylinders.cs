using System.CommandLine;
using System.Globalization;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Units;
using ColdSim.Planning;

namespace ColdSim.App.Commands;

/// <summary>Reads what the options of <c>tonight</c> say of the cylinders and what is in them.</summary>
internal sealed class TonightCylinders(ParseResult parsed, TonightOptions o) : OptionInput(parsed)
{
    private static readonly string[] Such = ["1/3", "full", "full", "full"];

    /// <summary>The cylinders with what is in them; what is faulty is left out.</summary>
    public IReadOnlyList<CylinderSpecification> Read()
    {
        List<CylinderSpecification> cylinders = [];
        foreach (string text in Values(o.Cylinder))
        {
            CountedSize counted = CountedSize.Find(text) ?? new CountedSize(1, text);
            if (CommonOptions.Size(counted.Size, "--cylinder", out string fault) is { } size)
                cylinders.AddRange(Enumerable.Repeat(size.Full(), counted.Count));
            else
                Faults.Add(fault);
        }

        if (cylinders.Count > Rig.MostCylinders)
            Faults.Add(string.Create(CultureInfo.InvariantCulture, $"--cylinder: {cylinders.Count} cylinders; accepted: up to {Rig.MostCylinders}"));
        string[] left = Values(o.Left);
        if (Faults.Count > 0 || left.Length == 0 || cylinders.Count == 0)
            return cylinders;
        return IsOneForEach(left, cylinders.Count) ? [.. cylinders.Zip(left, WithLeft)] : cylinders;
    }

    /// <summary>What is in a rig's cylinders, in the order of its file; null where nothing is said of it.</summary>
    public IReadOnlyList<double>? ReadLeft(Scenario scenario)
    {
        string[] left = Values(o.Left);
        IReadOnlyList<CylinderSpecification> cylinders = scenario.Rig.Cylinders;
        if (left.Length == 0 || !IsOneForEach(left, cylinders.Count))
            return null;
        double[] left_kg = new double[cylinders.Count];
        for (int i = 0; i < left_kg.Length; i++)
        {
            int place = scenario.FilePlaceOf(i);
            left_kg[place] = Contents_kg(left[place], cylinders[i].LegalFill_kg) ?? double.NaN;
        }

        return left_kg;
    }

    private CylinderSpecification WithLeft(CylinderSpecification cylinder, string left)
        => Contents_kg(left, cylinder.LegalFill_kg) is { } kg ? cylinder with { Contents_kg = kg } : cylinder;

    private bool IsOneForEach(string[] left, int cylinders)
    {
        if (left.Length == cylinders)
            return true;
        Faults.Add(string.Create(CultureInfo.InvariantCulture,
            $"--left has {left.Length} {(left.Length == 1 ? "value" : "values")} for {cylinders} {(cylinders == 1 ? "cylinder" : "cylinders")}; give one for each, such as --left {string.Join(',', Such.Take(cylinders))}"));
        return false;
    }

    private string[] Values(Option<string[]> option)
        => [.. (Parsed.GetValue(option) ?? []).SelectMany(v => v.Split(',', StringSplitOptions.TrimEntries))];

    private double? Contents_kg(string text, double full_kg)
    {
        bool mayBeEmpty = Parsed.GetValue(o.Now);
        if (text.Equals("full", StringComparison.OrdinalIgnoreCase))
            return full_kg;
        if (mayBeEmpty && text.Equals("empty", StringComparison.OrdinalIgnoreCase))
            return 0;
        bool part = QuantityText.TryParseRatio(text, out UnitsNet.Ratio ratio, out _);
        if (!part && !QuantityText.TryParseMass(text, out _, out _))
        {
            Faults.Add($"--left: '{Quote.Of(text)}' is neither a part of a full one, such as 1/3 or \"40 %\", nor a mass, such as \"7 lb\"");
            return null;
        }

        double kg = part ? ratio.DecimalFractions * full_kg
            : QuantityText.TryParseMass(text, out UnitsNet.Mass mass, out _) ? mass.Kilograms : double.NaN;
        if ((kg > 0 || (mayBeEmpty && kg == 0)) && kg <= full_kg * (1 + 1e-9))
            return kg;
        Faults.Add(string.Create(CultureInfo.InvariantCulture,
            $"--left: '{Quote.Of(text)}' must be more than nothing and no more than full, {full_kg / ConversionFactors.Pound_kg:0.0} lb ({full_kg:0.00} kg)"));
        return null;
    }
}
