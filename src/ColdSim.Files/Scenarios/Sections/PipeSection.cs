using ColdSim.Files.Quantities;
using ColdSim.Model.Nodes;
using ColdSim.Physics.Freezing;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[pipe]]</c>: a length of pipe with standing water.</summary>
internal static class PipeSection
{
    // Half-inch plastic pipe, from memory.
    private const double Inside_mm = 12.3;
    private const double Outside_mm = 15.9;
    private const double Conductivity = 0.035;
    private const double StillFilm = 10;
    private const double WindyFilm = 25;
    private const double Start_C = 8;

    private static readonly QuantityKey InsideDiameter = new("inside_diameter", Dimension.Length, "3 mm", "110 mm");
    private static readonly QuantityKey OutsideDiameter = new("outside_diameter", Dimension.Length, "4 mm", "120 mm");
    private static readonly QuantityKey Length = new("length", Dimension.Length, "0.1 m", "60 m");
    private static readonly QuantityKey Insulation = new("insulation", Dimension.Length, "0 mm", "100 mm");
    private static readonly QuantityKey InsulationConductivity = new("conductivity", Dimension.Conductivity, "0.01 W/mK", "1 W/mK");
    private static readonly QuantityKey Film = new("film", Dimension.HeatTransferCoefficient, "2 W/m²K", "100 W/m²K");
    private static readonly QuantityKey Start = new("temperature", Dimension.Temperature, "-20 °C", "40 °C");

    public static ThermalNode Read(SectionReader section, int number, WaterPlace places)
    {
        string name = ApplianceKeys.Name(section, "pipe", number);
        double inside_m = section.Get(InsideDiameter, Inside_mm / 1000), outside_m = section.Get(OutsideDiameter, Outside_mm / 1000);
        double length_m = section.Require(Length), insulation_m = section.Get(Insulation, 0);
        double conductivity_W_mK = section.Get(InsulationConductivity, Conductivity);
        int place = places.Read(section);
        double film = place == -2 ? WindyFilm : StillFilm;
        double perLength_W_mK = PipeConductance.PerLength_W_mK(outside_m, insulation_m, conductivity_W_mK, section.Get(Film, film));
        double start_K = section.Get(Start, Start_C + Water.Freezing_K);
        section.Finish();
        if (inside_m >= outside_m)
            section.Report(section.Has("inside_diameter") ? "inside_diameter" : "outside_diameter", "the inside diameter is not below the outside diameter");
        if (section.Has("conductivity") && !section.Has("insulation"))
            section.Report("conductivity", "'conductivity' has no effect without 'insulation'");
        ApplianceKeys.Assume(section, name, "inside_diameter", $"{Inside_mm} mm");
        ApplianceKeys.Assume(section, name, "outside_diameter", $"{Outside_mm} mm");
        ApplianceKeys.Assume(section, name, "insulation", $"none");
        if (insulation_m > 0)
            ApplianceKeys.Assume(section, name, "conductivity", $"{Conductivity} W/mK");
        ApplianceKeys.Assume(section, name, "film", $"{film} W/m²K, {(place == -2 ? "in wind" : "in still air")}");
        ApplianceKeys.Assume(section, name, "temperature", $"{Start_C} °C at the start");
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
