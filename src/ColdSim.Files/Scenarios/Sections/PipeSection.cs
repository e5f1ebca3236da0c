using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Nodes;
using ColdSim.Physics.Freezing;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[pipe]]</c>: a length of pipe with standing water.</summary>
internal static class PipeSection
{
    private const double StillFilm = 10;
    private const double WindyFilm = 25;

    public static readonly TextKey Name = OwnNames.Key("pipe", "each another");

    // The diameters of half-inch plastic pipe, from memory.
    private static readonly QuantityKey InsideDiameter = new(
        "inside_diameter", Dimension.Length, "3 mm", "110 mm", KeyDefault.Quantity("12.3 mm"), "of the water; the defaults are half-inch plastic pipe")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey OutsideDiameter = new(
        "outside_diameter", Dimension.Length, "4 mm", "120 mm", KeyDefault.Quantity("15.9 mm"), "of the pipe")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey Length = new("length", Dimension.Length, "0.1 m", "60 m", KeyDefault.Needed, "of the pipe");

    private static readonly QuantityKey Insulation = new(
        "insulation", Dimension.Length, "0 mm", "100 mm", KeyDefault.Called(0, "none"), "its thickness")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey Conductivity = new(
        "conductivity", Dimension.Conductivity, "0.01 W/mK", "1 W/mK", KeyDefault.Quantity("0.035 W/mK"), "of the insulation")
    {
        GoesWith = [Insulation.Name],
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Film = new(
        "film", Dimension.HeatTransferCoefficient, "2 W/m²K", "100 W/m²K",
        KeyDefault.Of($"{NumberShown.Of(StillFilm)} W/m²K; {NumberShown.Of(WindyFilm)} W/m²K outside, in wind"), "of the air on it")
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
        "pipe", TableForm.Many, "a length of pipe with standing water",
        [Name, InsideDiameter, OutsideDiameter, Length, Insulation, Conductivity, Film, Where, Start]);

    public static ThermalNode Read(SectionReader section, int number, WaterPlace places)
    {
        string name = OwnNames.Named(section, Name, "pipe", number);
        double inside_m = section.GetOrDefault(InsideDiameter), outside_m = section.GetOrDefault(OutsideDiameter);
        double length_m = section.Require(Length), insulation_m = section.GetOrDefault(Insulation);
        double conductivity_W_mK = section.GetOrDefault(Conductivity);
        int place = places.Read(section, Where);
        double film = place == -2 ? WindyFilm : StillFilm;
        double perLength_W_mK = PipeConductance.PerLength_W_mK(outside_m, insulation_m, conductivity_W_mK, section.Get(Film, film));
        double start_K = section.GetOrDefault(Start);
        section.Finish();
        if (inside_m >= outside_m)
            section.Report(section.Has(InsideDiameter) ? InsideDiameter : OutsideDiameter, "the inside diameter is not below the outside diameter");
        if (section.Has(Conductivity) && !section.Has(Insulation))
            section.Report(Conductivity, "'conductivity' has no effect without 'insulation'");
        section.Assume(InsideDiameter, name);
        section.Assume(OutsideDiameter, name);
        section.Assume(Insulation, name);
        if (insulation_m > 0)
            section.Assume(Conductivity, name);
        section.Assume(Film, name, $"{film} W/m²K, {(place == -2 ? "in wind" : "in still air")}");
        section.Assume(Start, name);
        double water_kg = 0.25 * Math.PI * inside_m * inside_m * length_m * Water.Density_kg_m3;
        return WaterPlace.At(new ThermalNode
        {
            Name = name,
            Capacity_J_K = water_kg * Water.SpecificHeat_J_kgK,
            Water_kg = water_kg,
            IceLength_m = length_m,
            Initial_K = start_K,
        }, place, perLength_W_mK * length_m);
    }
}
