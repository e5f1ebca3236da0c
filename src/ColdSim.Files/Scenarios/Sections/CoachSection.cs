using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Moisture;
using ColdSim.Physics.Flow;
using ColdSim.Physics.Units;
using ColdSim.Planning.Quick;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[coach]</c>: the coach by a measured heat loss, by its surfaces, or by length and grade.</summary>
internal static class CoachSection
{
    private const string Ways = "accepted: one of heat_loss (measured), [[coach.surface]], or length with grade";

    // Heat loss per metre of length by grade, infiltration included: computed archetypes of trailers and motorhomes of 5 to 10 m, good to about 30 %.
    private static readonly double Good_W_mK = GradedCoach.HeatLoss_W_mK(CoachGrade.Good);
    private static readonly double Ordinary_W_mK = GradedCoach.HeatLoss_W_mK(CoachGrade.Ordinary);
    private static readonly double Leaky_W_mK = GradedCoach.HeatLoss_W_mK(CoachGrade.Leaky);

    private const double LowestAir_J_K = 10e3;

    private static readonly QuantityKey HeatLoss = new(
        "heat_loss", Dimension.Conductance, "5 W/K", "2,000 W/K", KeyDefault.None,
        "measured, whole coach; holds infiltration unless `leakage_area` is given")
    {
        Usual = new("20 W/K", "700 W/K", UnusualValue.OurChoice),
    };

    private static readonly ChoiceKey<double> Grade = new(
        "grade", KeyDefault.None,
        $"{NumberShown.Of(Good_W_mK)}, {NumberShown.Of(Ordinary_W_mK)} or {NumberShown.Of(Leaky_W_mK)} W/K per metre of length, infiltration included; good to 30 %",
        ("good", Good_W_mK), ("ordinary", Ordinary_W_mK), ("leaky", Leaky_W_mK));

    private static readonly QuantityKey Length = new(
        "length", Dimension.Length, "1.5 m", "20 m", KeyDefault.None, "inside; for `grade`, and for what the coach stores")
    {
        Usual = new("2.5 m", "14 m", UnusualValue.CommonPractice) { Hint = " (8 to 46 ft)" },
    };

    private static readonly QuantityKey Width = new("width", Dimension.Length, "1 m", "6 m", KeyDefault.Quantity("2.4 m"), "inside")
    {
        Usual = new("1.5 m", "4.5 m", UnusualValue.CommonPractice) { Hint = " (5 to 15 ft)" },
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey LeakageArea = new(
        "leakage_area", Dimension.Area, "0 cm²", "2,000 cm²",
        KeyDefault.Of($"with surfaces {CoachSurfaces.LeakageWords}, else 0"), "effective leakage area at 4 Pa")
    {
        Usual = new(null, "1,000 cm²", UnusualValue.OurChoice),
        Assumed = "{who}: leakage_area not given{value}",
    };

    private static readonly ChoiceKey<ShelterClass> Shelter = new(
        "shelter", ShelterClass.Isolated,
        "what breaks the wind: nothing; open country; some trees or rigs across the way; trees or rigs all round; right beside",
        ("none", ShelterClass.None), ("isolated", ShelterClass.Isolated), ("scattered", ShelterClass.AcrossTheRoad),
        ("surrounded", ShelterClass.Surrounded), ("adjacent", ShelterClass.Adjacent))
    {
        Assumed = ScenarioKey.NotGiven + " in open country",
    };

    private static readonly QuantityKey AirCapacity = new(
        "air_capacity", Dimension.HeatCapacity, "10 kJ/K", "20 MJ/K", KeyDefault.Of($"{NumberShown.Of(GradedCoach.AirCapacity_J_m2K, Dimension.HeatCapacity, "kJ/K")} per m² of floor, at least 10 kJ/K"),
        "air and what follows it at once");

    private static readonly QuantityKey FurnishingsCapacity = new(
        "furnishings_capacity", Dimension.HeatCapacity, "0 J/K", "100 MJ/K", KeyDefault.Of($"{NumberShown.Of(GradedCoach.FurnishingsCapacity_J_m2K, Dimension.HeatCapacity, "kJ/K")} per m² of floor"),
        "what follows slowly");

    private static readonly QuantityKey Coupling = new(
        "coupling", Dimension.Conductance, "1 W/K", "20,000 W/K", KeyDefault.Of($"{NumberShown.Of(GradedCoach.Coupling_W_m2K)} W/K per m² of floor"), "between the two");

    private static readonly QuantityKey SolarAperture = new(
        "solar_aperture", Dimension.Area, "0 m²", "20 m²", KeyDefault.Of("from the windows, else 0"), "window area times solar heat gain coefficient")
    {
        Assumed = "{who}: solar_aperture not given, so no sun comes in",
    };

    private static readonly QuantityKey Ventilation = new(
        "ventilation", Dimension.VolumeFlow, "0 m³/h", "2,000 m³/h", KeyDefault.Of(0, "m³/h"),
        "fresh air let in on purpose, such as a roof vent ajar; comes on top of what leaks");

    private static readonly QuantityKey Gains = new(
        "gains", Dimension.Power, "0 W", "5 kW", KeyDefault.Of(0, "W"), "lamps and other things that always run; people come on top")
    {
        Usual = new(null, "1 kW", UnusualValue.OurChoice),
        Assumed = ScenarioKey.NotGiven,
        Comment = "lamps, refrigerator, and other things that always run; people come on top",
    };

    private static readonly QuantityKey Temperature = new(
        "temperature", Dimension.Temperature, "-60 °C", "50 °C", KeyDefault.Of("the set point"), "inside at the start");

    private static readonly QuantityKey Saves = new(
        "saves", Dimension.Conductance, "0.1 W/K", "500 W/K", KeyDefault.Needed, "what the coach loses less while they are up");

    private static readonly SpansKey CoverHours = new("hours", KeyDefault.Of("always"), "when they are up")
    {
        Assumed = "covers: hours not given; assumed always up",
    };

    private static readonly ScenarioSection Covers = new("covers", TableForm.One, "covers over windows, put up for the night", [Saves, CoverHours]);

    public static readonly ScenarioSection Declared = new(
        "coach", TableForm.One, "how the coach loses and stores heat",
        [
            HeatLoss, Grade, Length, Width, LeakageArea, Shelter, AirCapacity, FurnishingsCapacity, Coupling, SolarAperture, Ventilation, Gains, Temperature,
        ],
        CoachSurfaces.Surface, CoachSurfaces.SlideOut, CoachSkirting.Declared, Covers, MoistureSection.Declared)
    {
        Ways = [[HeatLoss.Name], [CoachSurfaces.Surface.Name], [Length.Name, Grade.Name]],
    };

    public static CoachSpecification? Read(SectionReader section, double people_W, int people)
    {
        double? measured = section.Get(HeatLoss);
        CoachSurfaces surfaces = CoachSurfaces.Read(section);
        double? perMetre = section.Get(Grade);
        if (perMetre is not null)
            section.Reading.Assume($"coach: heat loss assumed {perMetre} W/K per metre of length, a rule of thumb good to 30 %");
        double? length = section.Get(Length);
        double? width = section.Get(Width);
        double? leakage = section.Get(LeakageArea);
        double? aperture = section.Get(SolarAperture);
        ShelterClass shelter = section.GetOrDefault(Shelter);
        double gains_W = section.GetOrDefault(Gains) + people_W;
        double? temperature = section.Get(Temperature);
        if (length is not null)
            section.Assume(Width, "coach");
        double floor_m2 = length * (width ?? Width.DefaultSi) ?? surfaces.Floor_m2;
        CoachSpecification stores = ReadStores(section, floor_m2);
        CoachSkirting? skirting = CoachSkirting.Read(section.Section(CoachSkirting.Declared), surfaces);
        double ventilation_m3_s = section.GetOrDefault(Ventilation);
        SectionReader covers = section.Section(Covers);
        MoistureSpecification? moisture = MoistureSection.Read(section.Section(MoistureSection.Declared), people, floor_m2);
        section.Finish();
        if (!section.Present)
            return null;

        bool built = section.Has(CoachSurfaces.Surface) || section.Has(CoachSurfaces.SlideOut);
        CheckWays(section, built);
        IReadOnlyList<HeatLossItem> loss =
            built ? skirting?.Over(surfaces.Items) ?? surfaces.Items
            : measured is { } whole ? [new HeatLossItem("whole coach, measured", whole)]
            : [new HeatLossItem("whole coach, by grade", (perMetre ?? double.NaN) * (length ?? double.NaN))];
        double leakage_cm2 = leakage * 1e4 ?? (built ? surfaces.UsualLeakage_cm2 : 0);
        section.Assume(
            LeakageArea, "coach",
            built ? $"; assumed {leakage_cm2:0} cm², 2 cm² per m² of envelope and the slide-outs' seals" : (FormattableString)$"; the heat loss is assumed to include infiltration already");
        if (leakage_cm2 > 0)
            section.Assume(Shelter, "coach");
        if (!built)
            section.Assume(SolarAperture, "coach");
        section.Assume(Gains, "coach", $"{gains_W:0} W{(people_W > 0 ? ", the people's" : "")}");
        (double covers_W_K, IReadOnlyList<ClockWindow> coverHours) = ReadCovers(covers, loss.Sum(l => l.Conductance_W_K));
        if (moisture is not null && leakage_cm2 <= 0 && ventilation_m3_s <= 0)
            section.Reading.Warn($"[coach.moisture] with neither leakage_area nor ventilation: damp has no way out of the coach");
        return stores with
        {
            HeatLoss = loss,
            LeakageArea_cm2 = leakage_cm2,
            Shelter = shelter,
            GroundConductance_W_K = skirting?.Ground_W_K ?? 0,
            GroundTemperature_K = skirting?.GroundTemperature_K ?? ConversionFactors.ZeroCelsius_K,
            SolarAperture_m2 = aperture ?? (built ? surfaces.SolarAperture_m2 : 0),
            InternalGains_W = gains_W,
            Ventilation_m3_s = ventilation_m3_s,
            Covers_W_K = covers_W_K,
            CoverHours = coverHours,
            Moisture = moisture,
            InitialTemperature_K = temperature,
        };
    }

    private static void CheckWays(SectionReader section, bool built)
    {
        int ways = (section.Has(HeatLoss) ? 1 : 0) + (built ? 1 : 0) + (section.Has(Grade) ? 1 : 0);
        if (ways == 0)
            section.Reading.Missing(section.Place, "[coach] does not say how it loses heat", Ways);
        if (ways > 1)
            section.Reading.Report(section.Place, "[coach] says in more than one way how it loses heat", Ways);
        if (section.Has(Grade) && !section.Has(Length))
            section.Lacks(Length, Length.Accepted);
        if (section.Has(CoachSkirting.Declared) && !built)
            section.Report(CoachSkirting.Declared, "skirting needs the floor as a [[coach.surface]]; another heat loss already holds it");
    }

    // How much heat the coach stores, given or by its floor area.
    private static CoachSpecification ReadStores(SectionReader section, double floor_m2)
    {
        double? air = section.Get(AirCapacity);
        double? furnishings = section.Get(FurnishingsCapacity);
        double? coupling = section.Get(Coupling);
        bool all = section.Has(AirCapacity) && section.Has(FurnishingsCapacity) && section.Has(Coupling);
        if (section.Present && !all)
        {
            if (floor_m2 > 0)
                section.Reading.Assume($"coach: heat capacity not given; assumed from its floor of {floor_m2:0.#} m²");
            else if (!section.Has(Length))
                section.Lacks(Length, "accepted: length (and width) for the floor area, or air_capacity, furnishings_capacity and coupling");
        }
        return new CoachSpecification
        {
            HeatLoss = [],
            AirCapacity_J_K = air ?? Math.Max(GradedCoach.AirCapacity_J_m2K * floor_m2, LowestAir_J_K),
            FurnishingsCapacity_J_K = furnishings ?? (GradedCoach.FurnishingsCapacity_J_m2K * floor_m2),
            Coupling_W_K = coupling ?? (GradedCoach.Coupling_W_m2K * floor_m2),
        };
    }

    // What covers over windows save while they are up [W/K], and when; nothing where there are none.
    private static (double Saves_W_K, IReadOnlyList<ClockWindow> Hours) ReadCovers(SectionReader section, double loss_W_K)
    {
        double saves_W_K = section.Present ? section.Require(Saves) : section.Get(Saves, 0);
        IReadOnlyList<ClockWindow> hours = section.Get(CoverHours) ?? [];
        section.Finish();
        if (!section.Present)
            return (0, []);
        if (saves_W_K >= loss_W_K)
            section.Report(Saves, "the covers save as much as the whole coach loses", FormattableString.Invariant($"accepted: less than {loss_W_K:0.#} W/K"));
        section.Assume(CoverHours, "covers");
        return (saves_W_K, hours);
    }
}
