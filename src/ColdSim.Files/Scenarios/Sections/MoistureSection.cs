using ColdSim.Files.Quantities;
using ColdSim.Model.Moisture;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[coach.moisture]</c>: damp in the coach's air and the surface on which it first settles.</summary>
internal static class MoistureSection
{
    // Of a person asleep or at rest; common practice, 40 to 60 g/h.
    private const double Person_kg_s = 0.05 / 3600;
    private const double Height_m = 2;

    private static readonly QuantityKey Volume = new("volume", Dimension.Volume, "1 m³", "200 m³");
    private static readonly QuantityKey Sources = new("sources", Dimension.MassFlow, "0 g/h", "5 kg/h");
    private static readonly QuantityKey U = new("coldest_u", Dimension.HeatTransferCoefficient, "0.1 W/m²K", "7 W/m²K");
    private static readonly QuantityKey Area = new("coldest_area", Dimension.Area, "0.01 m²", "50 m²");
    private static readonly QuantityKey Humidity = new("start_humidity", Dimension.Ratio, "0.01", "1");

    /// <summary>Reads it; null where it is not written.</summary>
    /// <param name="section">The table.</param>
    /// <param name="people">How many there are.</param>
    /// <param name="floor_m2">Floor of the coach, 0 where not known. [m²]</param>
    public static MoistureSpecification? Read(SectionReader section, int people, double floor_m2)
    {
        MoistureSpecification defaults = new() { Volume_m3 = floor_m2 * Height_m };
        MoistureSpecification read = new()
        {
            Volume_m3 = section.Get(Volume, defaults.Volume_m3),
            Sources_kg_s = section.Get(Sources, people * Person_kg_s),
            ColdestU_W_m2K = section.Get(U, defaults.ColdestU_W_m2K),
            ColdestArea_m2 = section.Get(Area, defaults.ColdestArea_m2),
            InitialHumidity_frac = section.Get(Humidity, defaults.InitialHumidity_frac),
        };
        section.Finish();
        if (!section.Present)
            return null;
        if (!section.Has("volume") && floor_m2 <= 0)
            section.Lacks("volume", Volume.Accepted);
        else
            ApplianceKeys.Assume(section, "moisture", "volume", $"{defaults.Volume_m3:0} m³, {Height_m} m over the floor");
        ApplianceKeys.Assume(section, "moisture", "sources", $"{people * Person_kg_s * 3.6e6:0} g/h, 50 for each person");
        ApplianceKeys.Assume(section, "moisture", "coldest_u", $"{defaults.ColdestU_W_m2K} W/m²K, single glass");
        ApplianceKeys.Assume(section, "moisture", "coldest_area", $"{defaults.ColdestArea_m2} m²");
        ApplianceKeys.Assume(section, "moisture", "start_humidity", $"{defaults.InitialHumidity_frac}");
        return read;
    }
}
