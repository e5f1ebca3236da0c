using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Moisture;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[coach.moisture]</c>: damp in the coach's air and the surface on which it first settles.</summary>
internal static class MoistureSection
{
    // Of a person asleep or at rest; common practice, 40 to 60 g/h.
    private const double Person_kg_s = 0.05 / 3600;
    private const double Height_m = 2;

    private static readonly MoistureSpecification Usual = new() { Volume_m3 = 0 };

    private static readonly QuantityKey Volume = new(
        "volume", Dimension.Volume, "1 m³", "200 m³", KeyDefault.Of($"{NumberShown.Of(Height_m)} m over the floor"), "air in the coach")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Sources = new(
        "sources", Dimension.MassFlow, "0 g/h", "5 kg/h", KeyDefault.Of($"{NumberShown.Of(Person_kg_s, Dimension.MassFlow, "g/h")} for each person"),
        "water that goes into it, flames without a flue left out")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey U = new(
        "coldest_u", Dimension.HeatTransferCoefficient, "0.1 W/m²K", "7 W/m²K", KeyDefault.Of(Usual.ColdestU_W_m2K, "W/m²K", "single glass"),
        "of the coldest surface")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Area = new(
        "coldest_area", Dimension.Area, "0.01 m²", "50 m²", KeyDefault.Of(Usual.ColdestArea_m2, "m²"), "of that surface")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey Humidity = new(
        "start_humidity", Dimension.Ratio, "0.01", "1", KeyDefault.Of(Usual.InitialHumidity_frac, ""), "relative humidity at the start")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    public static readonly ScenarioSection Declared = new(
        "moisture", TableForm.One, "damp in the coach's air, followed where this table is written", [Volume, Sources, U, Area, Humidity]);

    /// <summary>Reads it; null where it is not written.</summary>
    /// <param name="section">The table.</param>
    /// <param name="people">How many there are.</param>
    /// <param name="floor_m2">Floor of the coach, 0 where not known. [m²]</param>
    public static MoistureSpecification? Read(SectionReader section, int people, double floor_m2)
    {
        double sources_kg_s = people * Person_kg_s;
        MoistureSpecification read = new()
        {
            Volume_m3 = section.Get(Volume, floor_m2 * Height_m),
            Sources_kg_s = section.Get(Sources, sources_kg_s),
            ColdestU_W_m2K = section.GetOrDefault(U),
            ColdestArea_m2 = section.GetOrDefault(Area),
            InitialHumidity_frac = section.GetOrDefault(Humidity),
        };
        section.Finish();
        if (!section.Present)
            return null;
        if (!section.Has(Volume) && floor_m2 <= 0)
            section.Lacks(Volume, Volume.Accepted);
        else
            section.Assume(Volume, "moisture", $"{floor_m2 * Height_m:0} m³, {Height_m} m over the floor");
        section.Assume(Sources, "moisture", $"{sources_kg_s * 3.6e6:0} g/h, {Person_kg_s * 3.6e6:0} for each person");
        section.Assume(U, "moisture");
        section.Assume(Area, "moisture");
        section.Assume(Humidity, "moisture");
        return read;
    }
}
