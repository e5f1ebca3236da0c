using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;
using ColdSim.Physics.MoistAir;
using CsCheck;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>Cylinders and weathers for tests, made up or drawn at random from what is sane.</summary>
internal static class Some
{
    public const double Zero_K = ColdSim.Physics.Units.ConversionFactors.ZeroCelsius_K;
    public const double Sea_Pa = StandardAtmosphere.SeaLevel_Pa;

    /// <summary>A cylinder under a roof in still, shaded air at the weather's own temperature: no wind factor, no sky, no sun.</summary>
    public static CylinderSurroundings Sheltered { get; } = new() { WindExposure_frac = 1, SkyView_frac = 0, SunExposure_frac = 0 };

    public static CylinderSpecification Cylinder(string size, CylinderSurroundings? around = null) => Cylinder(StandardSize.Find(size)!, around);

    public static CylinderSpecification Cylinder(StandardSize size, CylinderSurroundings? around = null) => size.Full() with { Surroundings = around ?? Sheltered };

    /// <summary>Dry or humid air without sun, under a sky as warm as the air.</summary>
    public static WeatherSample Weather(double air_K, double wind_m_s = 0, double humidity_frac = 0, double pressure_Pa = Sea_Pa)
        => new(air_K, wind_m_s, Humidity.VapourPressure_Pa(air_K, humidity_frac), air_K, pressure_Pa, 0, 0);

    public static Gen<StandardSize> Size { get; } = Gen.Int[0, StandardSize.All.Count - 1].Select(i => StandardSize.All[i]);

    /// <summary>Any standard size with walls and surroundings of any sane kind.</summary>
    public static Gen<CylinderSpecification> AnyCylinder { get; } =
        Gen.Select(Size, Gen.Double[0.0015, 0.006], Gen.Double[0.3, 200], Surroundings())
            .Select((size, wall_m, conductivity, around) => Cylinder(size, around) with
            {
                WallThickness_m = wall_m,
                WallConductivity_W_mK = conductivity,
            });

    /// <summary>Part of the legal filling, down to nearly nothing.</summary>
    public static Gen<double> Fill { get; } = Gen.Double[0.002, 1];

    public static Gen<WeatherSample> AnyWeather { get; } =
        Gen.Select(Gen.Double[223, 313], Gen.Double[0, 20], Gen.Double[0.05, 1], Gen.Double[0, 30], Gen.Double[65_000, 104_000], Gen.Double[0, 500])
            .Select((air_K, wind, humidity, skyBelow_K, pressure_Pa, sun)
                => new WeatherSample(air_K, wind, Humidity.VapourPressure_Pa(air_K, humidity), air_K - skyBelow_K, pressure_Pa, sun, sun));

    private static Gen<CylinderSurroundings> Surroundings()
        => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0.05, 0.98], Gen.Double[0.1, 0.95], Gen.Double[50, 400])
            .Select((wind, sky, sun, emissivity, absorptance, inside) => new CylinderSurroundings
            {
                WindExposure_frac = wind,
                SkyView_frac = sky,
                SunExposure_frac = sun,
                Emissivity_frac = emissivity,
                SolarAbsorptance_frac = absorptance,
                InsideFilm_W_m2K = inside,
            });
}
