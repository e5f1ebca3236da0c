using ColdSim.Files.Scenarios.Sections;
using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Flow;
using ColdSim.Physics.Units;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios;

/// <summary>A scenario and the text it was read from.</summary>
/// <param name="Scenario">The scenario.</param>
/// <param name="Root">Its text.</param>
internal sealed record WrittenScenario(Scenario Scenario, SectionReader Root);

/// <summary>What is unusual of a scenario's values beside each other; what is unusual of one alone is declared with its key.</summary>
internal static class UnusualScenario
{
    private const double Design_K = ConversionFactors.ZeroCelsius_K - 18;
    private const double DesignWind_m_s = 4;
    private const double Air_kg_m3 = 1.3;
    private const double AirHeat_J_kgK = 1006;
    private const double Degree_h = 15;

    /// <summary>All that is looked for.</summary>
    public static IReadOnlyList<UnusualValue<WrittenScenario>> All { get; } =
    [
        new(
            "thermostat.night", "warmer by night than by day: swapped, perhaps", "the night's set point at or below the day's", UnusualValue.CommonPractice,
            s => s.Scenario.Rig.Thermostat is { } t && t.NightSetPoint_K > t.DaySetPoint_K + 0.3
                ? FormattableString.Invariant($"the night's set point, {Shown(t.NightSetPoint_K)}, is above the day's, {Shown(t.DaySetPoint_K)}") : null),
        new(
            "thermostat.night_hours", "hours that hold 13:00 and not 02:00: swapped, perhaps", "such as 22:00-06:00", UnusualValue.CommonPractice,
            s => s.Scenario.Rig.Thermostat is { } t && t.NightHours.Contains(13 * 3600) && !t.NightHours.Contains(2 * 3600) ? "the night hours lie by day" : null),
        new(
            "furnace.input", "less heat than a tenth, or more than five times, of what the coach loses at -18 °C (0 °F) in a wind of 4 m/s", "one to three times that loss", UnusualValue.CommonPractice,
            FurnaceAgainstLoss),
        new(
            "cylinder.tare", "less than 0.2 or more than 0.8 of the mass of water that it holds", "0.25 to 0.55 of it", UnusualValue.FromMemory,
            s => OfCylinders(s, c => c.Tare_kg / (1000 * c.Volume_m3) is < 0.2 or > 0.8, c => FormattableString.Invariant($"tare {c.Tare_kg:0.##} kg for a water capacity of {1000 * c.Volume_m3:0.#} kg"))),
        new(
            "cylinder.metal_mass", "less than 0.12 or more than 0.75 of the mass of water that it holds, or more than the tare", "0.2 to 0.5 of it, less than the tare", UnusualValue.FromMemory,
            s => OfCylinders(s, c => c.MetalMass_kg / (1000 * c.Volume_m3) is < 0.12 or > 0.75 || c.MetalMass_kg > c.Tare_kg * 1.001,
                c => FormattableString.Invariant($"metal_mass {c.MetalMass_kg:0.##} kg with a tare of {c.Tare_kg:0.##} kg for a water capacity of {1000 * c.Volume_m3:0.#} kg"))),
        new(
            "cylinder.legal_fill", "less than 0.36 or more than 0.44 of the mass of water that it holds", "0.42 of it", UnusualValue.FromMemory,
            s => OfCylinders(s, c => c.LegalFill_kg / (1000 * c.Volume_m3) is < 0.36 or > 0.44, c => FormattableString.Invariant($"legal_fill {c.LegalFill_kg:0.##} kg for a water capacity of {1000 * c.Volume_m3:0.#} kg"))),
        new(
            "enclosure", "openings of less than 2 % of the floor that the cylinders need: leaking gas must get out", "2 % of the floor at least, half of it low and half high", "24 CFR 3280.704",
            s => s.Scenario.Rig.Enclosure is { } e && EnclosureSection.Floor_m2(s.Scenario.Rig.Cylinders) is var floor_m2 && e.LowOpening_m2 + e.HighOpening_m2 < 0.999 * EnclosureSection.LeastOpenings_frac * floor_m2
                ? FormattableString.Invariant($"openings of {(e.LowOpening_m2 + e.HighOpening_m2) * 1e4:0} cm², {100 * (e.LowOpening_m2 + e.HighOpening_m2) / floor_m2:0.0} % of the floor that the cylinders need") : null),
        new(
            "coach.surface", "surfaces without a roof, a floor or a wall", "one of each at least", UnusualValue.CommonPractice,
            MissingSurface),
        new(
            "coach.surface", "floors under 4 m² or over 45 m² in all, or windows over 12 m²: square metres for square feet, perhaps", "a floor of 8 to 35 m², windows of 1 to 6 m²", UnusualValue.CommonPractice,
            s => OddArea(s, "floor", 4, 45) ?? OddArea(s, "window", 0, 12)),
        new(
            "place.longitude", "the other side of the world from the clock, which the other sign would fit: east for west", "15° an hour of the clock's offset; east is positive, west negative", UnusualValue.OurChoice,
            LongitudeAgainstClock),
    ];

    private static string? FurnaceAgainstLoss(WrittenScenario s)
    {
        if (s.Scenario.Rig is not { Furnace: { } furnace, Coach: { } coach, Thermostat: { } thermostat })
            return null;
        double warmer_K = thermostat.DaySetPoint_K - Design_K;
        double air_m3_s = Infiltration.Basic_m3_s(Math.Min(coach.LeakageArea_cm2, 10_000), warmer_K, DesignWind_m_s, coach.Shelter) + coach.Ventilation_m3_s;
        double perKelvin = coach.GroundConductance_W_K + (Air_kg_m3 * AirHeat_J_kgK * air_m3_s);
        foreach (HeatLossItem item in coach.HeatLoss)
            perKelvin += item.Conductance_W_K;
        double loss_W = perKelvin * warmer_K, heat_W = furnace.Input_W * furnace.Efficiency_frac * (1 - furnace.DuctLoss_frac), ratio = heat_W / loss_W;
        return ratio is >= 0.1 and <= 5 ? null
            : FormattableString.Invariant($"the furnace gives {heat_W / 1000:0.0#} kW, {ratio:0.0#} of the {loss_W / 1000:0.0#} kW that the coach loses at -18 °C");
    }

    private static string? OfCylinders(WrittenScenario s, Func<CylinderSpecification, bool> isOdd, Func<CylinderSpecification, string> found)
    {
        Rig rig = s.Scenario.Rig;
        for (int i = 0; i < rig.Cylinders.Count; i++)
        {
            if (isOdd(rig.Cylinders[i]))
                return rig.Cylinders.Count == 1 ? found(rig.Cylinders[i]) : $"{rig.NameOf(i)}: {found(rig.Cylinders[i])}";
        }

        return null;
    }

    private static string? MissingSurface(WrittenScenario s)
    {
        SectionReader coach = s.Root.Section(CoachSection.Declared);
        if (!coach.Has(CoachSurfaces.Surface))
            return null;
        List<string> missing = ["roof", "floor", "wall"];
        foreach (SectionReader surface in coach.Sections(CoachSurfaces.Surface))
        {
            if (CoachSurfaces.KindOf(surface) is { } kind)
                missing.Remove(kind);
        }

        return missing.Count == 0 ? null : $"the coach's surfaces have no {string.Join(" and no ", missing)}";
    }

    private static string? OddArea(WrittenScenario s, string kind, double least_m2, double most_m2)
    {
        SectionReader coach = s.Root.Section(CoachSection.Declared);
        double area_m2 = 0;
        int pieces = 0;
        foreach (SectionReader surface in coach.Has(CoachSurfaces.Surface) ? coach.Sections(CoachSurfaces.Surface) : [])
        {
            if (CoachSurfaces.KindOf(surface) == kind)
                (area_m2, pieces) = (area_m2 + CoachSurfaces.AreaOf_m2(surface), pieces + 1);
        }

        return pieces == 0 || (area_m2 >= least_m2 && area_m2 <= most_m2) ? null : FormattableString.Invariant($"{kind}s of {area_m2:0.##} m² ({area_m2 / (ConversionFactors.Foot_m * ConversionFactors.Foot_m):0} ft²) in all");
    }

    private static string? LongitudeAgainstClock(WrittenScenario s)
    {
        if (s.Scenario.Rig.Site.Longitude_deg is not { } longitude)
            return null;
        double offset_h = s.Scenario.Start.Offset.TotalHours;
        return Math.Abs((longitude / Degree_h) - offset_h) > 6 && Math.Abs((-longitude / Degree_h) - offset_h) < 2.5
            ? FormattableString.Invariant($"longitude {longitude:0.##} with a clock {Math.Abs(offset_h):0.#} h {(offset_h < 0 ? "behind" : "before")} UTC") : null;
    }

    private static string Shown(double kelvin) => FormattableString.Invariant($"{kelvin - ConversionFactors.ZeroCelsius_K:0.#} °C ({(kelvin - ConversionFactors.ZeroCelsius_K) * 1.8 + 32:0} °F)");
}
