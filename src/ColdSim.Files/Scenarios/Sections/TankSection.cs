using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Nodes;
using ColdSim.Physics.Freezing;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[tank]]</c>: a tank of fresh or waste water.</summary>
internal static class TankSection
{
    // Of the whole wall, films included: bare, and in an enclosed bay; from memory.
    private const double Bare_W_m2K = 4.5;
    private const double InBay_W_m2K = 1.1;

    public static readonly TextKey Name = OwnNames.Key("tank", "each another");

    private static readonly QuantityKey Volume = new("volume", Dimension.Volume, "1 L", "1,000 L", KeyDefault.Needed, "of the tank");

    private static readonly QuantityKey WaterIn = new("water", Dimension.Volume, "0.5 L", "1,000 L", KeyDefault.Of("full"), "water in it")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Conductance = new(
        "conductance", Dimension.Conductance, "0.1 W/K", "100 W/K", KeyDefault.Of("by volume"),
        $"to what is around it: by default {NumberShown.Of(Bare_W_m2K)} W/m²K, {NumberShown.Of(InBay_W_m2K)} W/m²K in a bay, over a cube's surface")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly TextKey Where = WaterPlace.Key("where it is");

    private static readonly QuantityKey Start = new(
        "temperature", Dimension.Temperature, "-20 °C", "40 °C", KeyDefault.Quantity("8 °C"), "at the start")
    {
        Assumed = ScenarioKey.NotGiven + " at the start",
    };

    public static readonly ScenarioSection Declared = new(
        "tank", TableForm.Many, "a tank of fresh or waste water", [Name, Volume, WaterIn, Conductance, Where, Start]);

    public static ThermalNode Read(SectionReader section, int number, WaterPlace places)
    {
        string name = OwnNames.Named(section, Name, "tank", number);
        double volume_m3 = section.Require(Volume), water_m3 = section.Get(WaterIn, volume_m3);
        int place = places.Read(section, Where);

        // A cube's surface: flat tanks have more of it.
        double u_W_m2K = place >= 0 ? InBay_W_m2K : Bare_W_m2K, area_m2 = 6 * Math.Pow(volume_m3, 2.0 / 3);
        double conductance_W_K = section.Get(Conductance, u_W_m2K * area_m2);
        double start_K = section.GetOrDefault(Start);
        section.Finish();
        if (water_m3 > volume_m3)
            section.Reading.Report(section.ValuePlace(WaterIn), "there is more water than the tank holds");
        section.Assume(WaterIn, name);
        if (!double.IsNaN(volume_m3))
            section.Assume(Conductance, name, $"{conductance_W_K:0.#} W/K, {u_W_m2K} W/m²K over a cube's surface");
        section.Assume(Start, name);
        double water_kg = water_m3 * Water.Density_kg_m3;
        return WaterPlace.At(new ThermalNode
        {
            Name = name,
            Capacity_J_K = water_kg * Water.SpecificHeat_J_kgK,
            Water_kg = water_kg,
            Initial_K = start_K,
        }, place, conductance_W_K);
    }
}
