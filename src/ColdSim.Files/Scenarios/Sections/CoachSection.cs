using ColdSim.Files.Quantities;
using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Moisture;
using ColdSim.Physics.Flow;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[coach]</c>: the coach by a measured heat loss, by its surfaces, or by length and grade.</summary>
internal static class CoachSection
{
    private static readonly QuantityKey HeatLoss = new("heat_loss", Dimension.Conductance, "5 W/K", "2,000 W/K");
    private static readonly QuantityKey Length = new("length", Dimension.Length, "1.5 m", "20 m");
    private static readonly QuantityKey Width = new("width", Dimension.Length, "1 m", "6 m");
    private static readonly QuantityKey LeakageArea = new("leakage_area", Dimension.Area, "0 cm²", "2,000 cm²");
    private static readonly QuantityKey SolarAperture = new("solar_aperture", Dimension.Area, "0 m²", "20 m²");
    private static readonly QuantityKey Ventilation = new("ventilation", Dimension.VolumeFlow, "0 m³/h", "2,000 m³/h");
    private static readonly QuantityKey Gains = new("gains", Dimension.Power, "0 W", "5 kW");
    private static readonly QuantityKey Temperature = new("temperature", Dimension.Temperature, "-60 °C", "50 °C");

    private const string Ways = "accepted: one of heat_loss (measured), [[coach.surface]], or length with grade";
    private const double UsualWidth_m = 2.4;

    public static CoachSpecification? Read(SectionReader section, double people_W, int people)
    {
        double? measured = section.Get(HeatLoss);
        CoachSurfaces surfaces = CoachSurfaces.Read(section);
        double? perMetre = CoachGrade.Read(section);
        double? length = section.Get(Length);
        double? width = section.Get(Width);
        double? leakage = section.Get(LeakageArea);
        double? aperture = section.Get(SolarAperture);
        ShelterClass? shelter = section.Choice("shelter", CoachShelter.Words);
        double gains_W = section.Get(Gains, 0) + people_W;
        double? temperature = section.Get(Temperature);
        double floor_m2 = FloorArea(section, surfaces, length, width);
        CoachMass mass = CoachMass.Read(section, floor_m2);
        CoachSkirting? skirting = CoachSkirting.Read(section.Section("skirting"), surfaces);
        double ventilation_m3_s = section.Get(Ventilation, 0);
        SectionReader covers = section.Section("covers");
        MoistureSpecification? moisture = MoistureSection.Read(section.Section("moisture"), people, floor_m2);
        section.Finish();
        if (!section.Present)
            return null;

        bool built = section.Has("surface") || section.Has("slide_out");
        int ways = (section.Has("heat_loss") ? 1 : 0) + (built ? 1 : 0) + (section.Has("grade") ? 1 : 0);
        if (ways == 0)
            section.Reading.Missing(section.Place, "[coach] does not say how it loses heat", Ways);
        if (ways > 1)
            section.Reading.Report(section.Place, "[coach] says in more than one way how it loses heat", Ways);
        if (section.Has("grade") && !section.Has("length"))
            section.Lacks("length", Length.Accepted);
        if (section.Has("skirting") && !built)
            section.Report("skirting", "skirting needs the floor as a [[coach.surface]]; another heat loss already holds it");

        IReadOnlyList<HeatLossItem> loss =
            built ? skirting?.Over(surfaces.Items) ?? surfaces.Items
            : measured is { } whole ? [new HeatLossItem("whole coach, measured", whole)]
            : [new HeatLossItem("whole coach, by grade", (perMetre ?? double.NaN) * (length ?? double.NaN))];
        double leakage_cm2 = leakage * 1e4 ?? (built ? surfaces.UsualLeakage_cm2 : 0);
        if (!section.Has("leakage_area"))
            AssumeLeakage(section, built, leakage_cm2);
        if (leakage_cm2 > 0 && !section.Has("shelter"))
            section.Reading.Assume($"coach: shelter not given, taken as isolated in open country");
        if (!section.Has("solar_aperture") && !built)
            section.Reading.Assume($"coach: solar_aperture not given, so no sun comes in");
        if (!section.Has("gains"))
            section.Reading.Assume($"coach: gains not given, taken as {gains_W:0} W{(people_W > 0 ? ", the people's" : "")}");
        (double covers_W_K, IReadOnlyList<ClockWindow> coverHours) = CoachCovers.Read(covers, loss.Sum(l => l.Conductance_W_K));
        if (moisture is not null && leakage_cm2 <= 0 && ventilation_m3_s <= 0)
            section.Reading.Warn($"[coach.moisture] with neither leakage_area nor ventilation: damp has no way out of the coach");
        return new CoachSpecification
        {
            HeatLoss = loss,
            LeakageArea_cm2 = leakage_cm2,
            Shelter = shelter ?? ShelterClass.Isolated,
            AirCapacity_J_K = mass.Air_J_K,
            FurnishingsCapacity_J_K = mass.Furnishings_J_K,
            Coupling_W_K = mass.Coupling_W_K,
            GroundConductance_W_K = skirting?.Ground_W_K ?? 0,
            GroundTemperature_K = skirting?.GroundTemperature_K ?? 273.15,
            SolarAperture_m2 = aperture ?? (built ? surfaces.SolarAperture_m2 : 0),
            InternalGains_W = gains_W,
            Ventilation_m3_s = ventilation_m3_s,
            Covers_W_K = covers_W_K,
            CoverHours = coverHours,
            Moisture = moisture,
            InitialTemperature_K = temperature,
        };
    }

    private static double FloorArea(SectionReader section, CoachSurfaces surfaces, double? length, double? width)
    {
        if (length is null)
            return surfaces.Floor_m2;
        if (!section.Has("width"))
            section.Reading.Assume($"coach: width not given, taken as {UsualWidth_m} m");
        return length.Value * (width ?? UsualWidth_m);
    }

    private static void AssumeLeakage(SectionReader section, bool built, double leakage_cm2)
    {
        if (built)
            section.Reading.Assume($"coach: leakage_area not given, taken as {leakage_cm2:0} cm², 2 cm² per m² of envelope and the slide-outs' seals");
        else
            section.Reading.Assume($"coach: leakage_area not given; the heat loss is taken to hold infiltration already");
    }
}
