using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Coach;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[coach.skirting]</c>: a skirt makes a buffer under the floor, between inside, outside air and ground.</summary>
/// <remarks>
/// The buffer stores nothing here, so the star of its three conductances is replaced by the triangle that carries the same
/// heat: floor to air F·O/S and floor to ground F·G/S, with S their sum.
/// </remarks>
internal sealed class CoachSkirting
{
    // Two air changes an hour of a buffer 0.6 m high.
    private const double Ventilation_W_m2K = 0.4;

    private static readonly QuantityKey Area = new("area", Dimension.Area, "0.5 m²", "60 m²", KeyDefault.Needed, "of the skirt");

    // Vinyl skirt with still air inside and films.
    private static readonly QuantityKey U = new(
        "u", Dimension.HeatTransferCoefficient, "0.2 W/m²K", "8 W/m²K", KeyDefault.Quantity("2.9 W/m²K"), "of the skirt")
    {
        Assumed = "coach: u of the skirting not given; assumed {value}",
    };

    private static readonly QuantityKey Ventilation = new(
        "ventilation", Dimension.Conductance, "0 W/K", "200 W/K", KeyDefault.Of($"{NumberShown.Of(Ventilation_W_m2K)} W/K per m² of floor"),
        "air that passes under it")
    {
        Assumed = "coach: ventilation of the skirting not given; assumed {value}",
    };

    private static readonly QuantityKey Ground = new(
        "ground", Dimension.HeatTransferCoefficient, "0 W/m²K", "5 W/m²K", KeyDefault.Quantity("0.5 W/m²K"), "to the ground, per area of floor")
    {
        Assumed = "coach: ground under the skirting not given; assumed {value} of floor",
    };

    // Frozen to cool soil.
    private static readonly QuantityKey GroundTemperatureKey = new(
        "ground_temperature", Dimension.Temperature, "-20 °C", "20 °C", KeyDefault.Quantity("0 °C"), "of the ground")
    {
        Assumed = "coach: ground_temperature not given; assumed {value}",
    };

    public static readonly ScenarioSection Declared = new(
        "skirting", TableForm.One, "a skirt, which makes a buffer under the floor", [Area, U, Ventilation, Ground, GroundTemperatureKey]);

    private readonly CoachSurfaces _surfaces;
    private readonly double _floor_W_K;
    private readonly double _toAir_W_K;
    private readonly double _toGround_W_K;

    private CoachSkirting(CoachSurfaces surfaces, double toAir_W_K, double toGround_W_K, double groundTemperature_K)
    {
        _surfaces = surfaces;
        _floor_W_K = surfaces.Items.Where(surfaces.IsFloor).Sum(i => i.Conductance_W_K);
        (_toAir_W_K, _toGround_W_K, GroundTemperature_K) = (toAir_W_K, toGround_W_K, groundTemperature_K);
    }

    /// <summary>From inside to the ground through floor and buffer.</summary>
    public double Ground_W_K => _floor_W_K * _toGround_W_K / (_floor_W_K + _toAir_W_K + _toGround_W_K);

    public double GroundTemperature_K { get; }

    /// <summary>The breakdown with the floors' part to air only.</summary>
    public IReadOnlyList<HeatLossItem> Over(IReadOnlyList<HeatLossItem> items)
        => [.. items.Select(i => _surfaces.IsFloor(i)
            ? new HeatLossItem(i.Name + ", skirted", i.Conductance_W_K * _toAir_W_K / (_floor_W_K + _toAir_W_K + _toGround_W_K))
            : i)];

    public static CoachSkirting? Read(SectionReader section, CoachSurfaces surfaces)
    {
        double area_m2 = section.Present ? section.Require(Area) : section.Get(Area, double.NaN);
        double u_W_m2K = section.GetOrDefault(U);
        double ventilation_W_K = section.Get(Ventilation, Ventilation_W_m2K * surfaces.Floor_m2);
        double ground_W_m2K = section.GetOrDefault(Ground);
        double ground_K = section.GetOrDefault(GroundTemperatureKey);
        section.Finish();
        if (!section.Present)
            return null;
        section.Assume(U, "coach");
        section.Assume(Ventilation, "coach", $"{ventilation_W_K:0.#} W/K");
        section.Assume(Ground, "coach");
        section.Assume(GroundTemperatureKey, "coach");
        if (surfaces.Floor_m2 <= 0)
            section.Reading.Missing(section.Place, "skirting without a floor", "accepted: a [[coach.surface]] of kind = \"floor\"");
        return new CoachSkirting(surfaces, (area_m2 * u_W_m2K) + ventilation_W_K, ground_W_m2K * surfaces.Floor_m2, ground_K);
    }
}
