using ColdSim.Files.Quantities;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>How much heat the coach stores, given or by its floor area.</summary>
/// <param name="Air_J_K">Air and what follows it at once.</param>
/// <param name="Furnishings_J_K">What follows slowly.</param>
/// <param name="Coupling_W_K">Between the two.</param>
internal sealed record CoachMass(double Air_J_K, double Furnishings_J_K, double Coupling_W_K)
{
    private static readonly QuantityKey AirCapacity = new("air_capacity", Dimension.HeatCapacity, "10 kJ/K", "20 MJ/K");
    private static readonly QuantityKey FurnishingsCapacity = new("furnishings_capacity", Dimension.HeatCapacity, "0 J/K", "100 MJ/K");
    private static readonly QuantityKey Coupling = new("coupling", Dimension.Conductance, "1 W/K", "20,000 W/K");

    // Per floor area: about five times the air alone; a light interior; the middle of 9 to 25 W/(m²·K).
    private const double Air_J_m2K = 15e3;
    private const double Furnishings_J_m2K = 80e3;
    private const double Coupling_W_m2K = 16;

    public static CoachMass Read(SectionReader section, double floor_m2)
    {
        double? air = section.Get(AirCapacity);
        double? furnishings = section.Get(FurnishingsCapacity);
        double? coupling = section.Get(Coupling);
        bool all = section.Has("air_capacity") && section.Has("furnishings_capacity") && section.Has("coupling");
        if (section.Present && !all)
        {
            if (floor_m2 > 0)
                section.Reading.Assume($"coach: what it stores is taken by its floor of {floor_m2:0.#} m² where not given");
            else if (!section.Has("length"))
                section.Lacks("length", "accepted: length (and width) for the floor area, or air_capacity, furnishings_capacity and coupling");
        }
        return new CoachMass(
            air ?? (Air_J_m2K * floor_m2),
            furnishings ?? (Furnishings_J_m2K * floor_m2),
            coupling ?? (Coupling_W_m2K * floor_m2));
    }
}
