using ColdSim.Files.Quantities;
using ColdSim.Model.Cylinder;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[cylinder.surroundings]</c>: where the cylinder stands, as heat sees it.</summary>
internal static class SurroundingsSection
{
    private static readonly QuantityKey WindShelter = new("wind_shelter", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey SkyView = new("sky_view", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey SunExposure = new("sun_exposure", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey Emissivity = new("emissivity", Dimension.Ratio, "0.02", "1");
    private static readonly QuantityKey Absorptance = new("absorptance", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey InsideFilm = new("inside_film", Dimension.HeatTransferCoefficient, "10 W/m²K", "5,000 W/m²K");
    private static readonly QuantityKey HeatTransfer = new("heat_transfer", Dimension.Conductance, "0.01 W/K", "500 W/K");
    private static readonly QuantityKey Convection = new("convection", Dimension.HeatTransferCoefficient, "0 W/m²K", "200 W/m²K");
    private static readonly QuantityKey Radiation = new("radiation", Dimension.HeatTransferCoefficient, "0 W/m²K", "10 W/m²K");
    private static readonly QuantityKey Fin = new("fin", Dimension.Length, "0 m", "2 m");
    private static readonly QuantityKey Frost = new("frost", Dimension.Length, "0 mm", "50 mm");
    private static readonly QuantityKey Sun = new("sun", Dimension.Power, "0 W", "2 kW");

    public static CylinderSurroundings Read(SectionReader section, string called)
    {
        CylinderSurroundings defaults = new();
        double? whole = section.Get(HeatTransfer);
        double shelter = section.Get(WindShelter, defaults.WindShelter_frac);
        double sky = section.Get(SkyView, defaults.SkyView_frac);
        double sun = section.Get(SunExposure, defaults.SunExposure_frac);
        if (whole is null)
        {
            if (!section.Has("wind_shelter") && !section.Has("convection"))
                section.Reading.Assume($"{called}: wind_shelter not given, taken as {shelter} of the weather's wind");
            if (!section.Has("sky_view") && !section.Has("radiation"))
                section.Reading.Assume($"{called}: sky_view not given, taken as {sky}");
            if (!section.Has("sun_exposure") && !section.Has("sun"))
                section.Reading.Assume($"{called}: sun_exposure not given, taken as {sun}, in the shade");
        }
        CylinderSurroundings surroundings = new()
        {
            WindShelter_frac = shelter,
            SkyView_frac = sky,
            SunExposure_frac = sun,
            Emissivity_frac = section.Get(Emissivity, defaults.Emissivity_frac),
            SolarAbsorptance_frac = section.Get(Absorptance, defaults.SolarAbsorptance_frac),
            InsideFilm_W_m2K = section.Get(InsideFilm, defaults.InsideFilm_W_m2K),
            FixedConductance_W_K = whole,
            FixedConvection_W_m2K = section.Get(Convection),
            FixedRadiation_W_m2K = section.Get(Radiation),
            FixedFin_m = section.Get(Fin),
            FixedFrost_m = section.Get(Frost),
            FixedSun_W = section.Get(Sun),
        };
        section.Finish();
        return surroundings;
    }
}
