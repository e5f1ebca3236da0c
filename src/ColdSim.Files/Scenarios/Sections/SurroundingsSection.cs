using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Cylinder;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[cylinder.surroundings]</c>: what reaches the cylinder of wind, sky and sun.</summary>
internal static class SurroundingsSection
{
    private static readonly KeyDefault Computed = KeyDefault.Of("computed");

    private static readonly CylinderSurroundings Usual = new();

    private static readonly QuantityKey WindExposure = new(
        "wind_exposure", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.WindExposure_frac, "", "or as `[enclosure]` has it"),
        "part of the weather's wind that reaches it: 1 open to the wind, 0 in a closed box; `wind_shelter`, its old name, is still read")
    {
        OldName = "wind_shelter",
        Assumed = ScenarioKey.NotGiven + " of the weather's wind",
        Comment = "part of the wind that reaches it: 1 open to the wind, 0 in a closed box",
    };

    private static readonly QuantityKey SkyView = new(
        "sky_view", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.SkyView_frac, "", "or as `[enclosure]` has it"), "part of the open sky that its side sees")
    {
        Assumed = ScenarioKey.NotGiven,
        Comment = "part of the sky it sees",
    };

    private static readonly QuantityKey SunExposure = new(
        "sun_exposure", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.SunExposure_frac, ""), "part of the sun that reaches it")
    {
        Assumed = ScenarioKey.NotGiven + ", in the shade",
        Comment = "part of the sun that reaches it",
    };

    private static readonly QuantityKey Emissivity = new(
        "emissivity", Dimension.Ratio, "0.02", "1", KeyDefault.Of(Usual.Emissivity_frac, "", "paint"), "long-wave, of the outside");

    private static readonly QuantityKey Absorptance = new(
        "absorptance", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.SolarAbsorptance_frac, "", "white"), "for sunlight");

    private static readonly QuantityKey InsideFilm = new(
        "inside_film", Dimension.HeatTransferCoefficient, "10 W/m²K", "5,000 W/m²K", KeyDefault.Of(Usual.InsideFilm_W_m2K, "W/m²K"),
        "between wall and liquid");

    private static readonly QuantityKey HeatTransfer = new(
        "heat_transfer", Dimension.Conductance, "0.01 W/K", "500 W/K", Computed,
        "whole conductance between air and liquid, if measured; replaces all the rest");

    private static readonly QuantityKey Convection = new(
        "convection", Dimension.HeatTransferCoefficient, "0 W/m²K", "200 W/m²K", Computed, "outside film by convection, if fixed");

    private static readonly QuantityKey Radiation = new(
        "radiation", Dimension.HeatTransferCoefficient, "0 W/m²K", "10 W/m²K", Computed, "outside film by radiation, if fixed");

    private static readonly QuantityKey Fin = new(
        "fin", Dimension.Length, "0 m", "2 m", Computed, "height of dry wall that counts as wetted, if fixed; never more than there is");

    private static readonly QuantityKey Frost = new("frost", Dimension.Length, "0 mm", "50 mm", Computed, "thickness of frost, if fixed");

    private static readonly QuantityKey Sun = new("sun", Dimension.Power, "0 W", "2 kW", Computed, "sun absorbed by the whole outside wall, if fixed");

    public static readonly ScenarioSection Declared = new(
        "surroundings", TableForm.One, "what reaches the cylinder of wind, sky and sun",
        [WindExposure, SkyView, SunExposure, Emissivity, Absorptance, InsideFilm, HeatTransfer, Convection, Radiation, Fin, Frost, Sun]);

    /// <summary>What reaches a cylinder.</summary>
    /// <param name="section">Its table.</param>
    /// <param name="called">What the cylinder is called.</param>
    /// <param name="place">Where it is, which gives the defaults; null where nothing is said.</param>
    public static CylinderSurroundings Read(SectionReader section, string called, EnclosureSection.Kind? place)
    {
        CylinderSurroundings usual = EnclosureSection.Around(place);
        double? whole = section.Get(HeatTransfer);
        CylinderSurroundings surroundings = new()
        {
            WindExposure_frac = section.Get(WindExposure, usual.WindExposure_frac),
            SkyView_frac = section.Get(SkyView, usual.SkyView_frac),
            SunExposure_frac = section.Get(SunExposure, usual.SunExposure_frac),
            Emissivity_frac = section.GetOrDefault(Emissivity),
            SolarAbsorptance_frac = section.GetOrDefault(Absorptance),
            InsideFilm_W_m2K = section.GetOrDefault(InsideFilm),
            FixedConductance_W_K = whole,
            FixedConvection_W_m2K = section.Get(Convection),
            FixedRadiation_W_m2K = section.Get(Radiation),
            FixedFin_m = section.Get(Fin),
            FixedFrost_m = section.Get(Frost),
            FixedSun_W = section.Get(Sun),
        };
        section.Finish();
        if (whole is not null)
            return surroundings;
        if (!section.Has(Convection))
            section.Assume(WindExposure, called, $"{usual.WindExposure_frac:0.##}");
        if (!section.Has(Radiation))
            section.Assume(SkyView, called, $"{usual.SkyView_frac:0.##}");
        if (!section.Has(Sun))
            section.Assume(SunExposure, called);
        return surroundings;
    }
}
