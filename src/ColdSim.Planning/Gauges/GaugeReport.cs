using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Gauges;

/// <summary>One or several readings of a cylinder, with what the person knows besides.</summary>
public sealed record GaugeQuestion
{
    public required GaugedCylinder Cylinder { get; init; }

    /// <summary>The readings; none where only the pressure was read.</summary>
    public IReadOnlyList<GaugeReading> Readings { get; init; } = [];

    /// <summary>The pressure, if that was read.</summary>
    public PressureReading? Pressure { get; init; }

    /// <summary>Liquid temperature, if known. [K]</summary>
    public double? Temperature_K { get; init; }

    /// <summary>The same with what it is known from; null where no pressure was read beside other readings.</summary>
    internal LiquidTemperature? Liquid { get; init; }

    /// <summary>Whether the cylinder has been closed for hours.</summary>
    public bool Rested { get; init; }

    /// <summary>The temperature that a sensor is made for. [K]</summary>
    public double Assumed_K { get; init; } = DriftTable.Assumed_K;

    /// <summary>Furnace input, if hours are asked for. [W]</summary>
    public double? Furnace_W { get; init; }
}

/// <summary>What readings of a cylinder come to.</summary>
public sealed record GaugeReport
{
    public required GaugeQuestion Question { get; init; }

    /// <summary>The readings one by one.</summary>
    public required IReadOnlyList<ContentsEstimate> Estimates { get; init; }

    /// <summary>All readings as one; null where there are none.</summary>
    public CombinedEstimate? Combined { get; init; }

    /// <summary>The contents in every unit of account; null where no reading determines them.</summary>
    public ContentsFigures? Contents { get; init; }

    /// <summary>The standard uncertainty of every figure.</summary>
    public ContentsFigures? Uncertainty { get; init; }

    /// <summary>The finding of the pressure, if it was read.</summary>
    public PressureFinding? Pressure { get; init; }

    /// <summary>Whether the pressure is all that was read.</summary>
    internal bool IsPressureAlone => Pressure is not null && Estimates.Count == 0;

    public required IReadOnlyList<string> Assumptions { get; init; }

    /// <summary>What the methods mislead by, in short.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Answers a question.</summary>
    /// <param name="question">What was read.</param>
    /// <exception cref="ImpossibleReadingException">A reading fits no contents of this cylinder.</exception>
    public static GaugeReport Of(GaugeQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        GaugedCylinder cylinder = question.Cylinder;
        foreach (GaugeReading reading in question.Readings)
            CheckLevel(reading, cylinder);
        ContentsEstimate[] estimates = [.. question.Readings.Select(r => r.Estimate(cylinder))];
        foreach (ContentsEstimate estimate in estimates)
            CheckMass(estimate, question);
        CombinedEstimate? combined = estimates.Length == 0 ? null : CombinedEstimate.Of(estimates);
        PressureFinding? pressure = question.Pressure?.Judge(cylinder);
        (double Mass_kg, double Uncertainty_kg)? known = combined is not null ? (combined.Mass_kg, combined.Uncertainty_kg)
            : pressure?.Vapour is { } vapour ? (vapour.Mass_kg, vapour.Uncertainty_kg) : null;
        return new()
        {
            Question = question,
            Estimates = estimates,
            Combined = combined,
            Contents = known is { } c ? ContentsFigures.Of(c.Mass_kg, cylinder, question.Furnace_W) : null,
            Uncertainty = known is { } u ? ContentsFigures.Of(u.Uncertainty_kg, cylinder, question.Furnace_W) : null,
            Pressure = pressure,
            Assumptions = Taken(question),
            Cautions = CautionsOf(question, known),
        };
    }

    private static void CheckLevel(GaugeReading reading, GaugedCylinder cylinder)
    {
        double? level_m = reading switch
        {
            EchoReading echo => echo.Level_m(cylinder),
            LineReading line => line.Level_m(cylinder),
            _ => null,
        };
        if (level_m is double level)
            LevelInputs.Check(cylinder.Vessel(), level, reading.Name);
    }

    private static void CheckMass(ContentsEstimate estimate, GaugeQuestion question)
    {
        // Without a temperature the densest liquid counts that the product knows.
        double densest_kg_m3 = 1 / SaturationTable.At(question.Temperature_K ?? SaturationTable.Lowest_K).LiquidVolume_m3_kg;
        double most_kg = question.Cylinder.Volume_m3 * densest_kg_m3;
        string fault = estimate.Mass_kg < -2 * estimate.Uncertainty_kg ? "less than an empty cylinder"
            : estimate.Mass_kg > most_kg + 2 * estimate.Uncertainty_kg ? "more than liquid from bottom to top"
            : "";
        if (fault.Length > 0)
        {
            throw new ImpossibleReadingException(FormattableString.Invariant(
                $"{estimate.Reading}: means {estimate.Mass_kg / ConversionFactors.Pound_kg:0.0} lb ({estimate.Mass_kg:0.00} kg) of propane, {fault}"));
        }
    }

    private static List<string> Taken(GaugeQuestion q)
    {
        List<string> taken =
        [
            "pure propane; liquid, vapour and wall at one temperature; the vapour's mass counted",
            FormattableString.Invariant(
                $"2:1 heads; wall {q.Cylinder.WallThickness_m / ConversionFactors.Inch_m:0.00} in ({1000 * q.Cylinder.WallThickness_m:0.0} mm); water capacity known within {100 * q.Cylinder.CapacityError_frac:0.#} %, diameter within {100 * q.Cylinder.DiameterError_frac:0.#} %"),
            "every error given or assumed is one standard uncertainty; one reading's own error is free of another's",
        ];
        if (q.Readings.Any(r => r is WeightReading))
            taken.Add("used cylinders: 66 % of stamped tares are within -3/+1 %, new ones 98 % (NCWM and NIST survey, 2022)");
        if (q.Readings.Any(r => r is EchoReading { Shown: EchoShown.Time }))
            taken.Add("the time is that in the liquid alone; what the wall and the sensor take is already off");
        if (q.Readings.Any(r => r is EchoReading { Shown: EchoShown.PartOfFull }))
            taken.Add(FormattableString.Invariant($"full is where {100 * EchoReading.Full_frac:0} % of the volume is liquid (common practice, no source)"));
        if (q.Readings.Any(r => r is LineReading { Foot_m: 0 }))
            taken.Add("the line's height is counted from the lowest point of the body, not from the ground");
        if (q.Cylinder.Lies && q.Cylinder.OffMiddle_m is null && q.Readings.Any(r => r is not WeightReading))
            taken.Add("read a quarter of the straight part away from the tank's middle, which a tilted coach raises or lowers");
        if (q.Pressure is not null)
            taken.Add("grade: up to 3 % ethane raises the pressure, up to 5 % butane in what is left lowers it");
        if (q.Furnace_W is not null)
            taken.Add("furnace lit without pause at its plate's input; heat is gross, 50.33 MJ/kg (21,638 BTU/lb)");
        return taken;
    }

    private static List<string> CautionsOf(GaugeQuestion q, (double Mass_kg, double Uncertainty_kg)? known)
    {
        List<string> cautions = [.. q.Readings.SelectMany(r => r.Cautions).Distinct()];
        if (!q.Rested && q.Liquid is null && (q.Pressure is not null || q.Readings.Any(r => r is not WeightReading)))
            cautions.Add("A cylinder that has just been drawn from is colder than the air; the air's temperature is then not the liquid's.");
        if (known is { } c && c.Mass_kg > q.Cylinder.LegalFill_kg + c.Uncertainty_kg)
            cautions.Insert(0, "That is above the legal fill. Keep it cool and outside, and have a dealer take gas out.");
        if (known is { } few && few.Mass_kg < 2 * few.Uncertainty_kg)
            cautions.Add("It may as well be empty.");
        return cautions;
    }
}
