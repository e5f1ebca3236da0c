namespace ColdSim.Physics.Flow;

/// <summary>Wind at a height and in a terrain other than the weather station's.</summary>
/// <remarks>
/// Source: ASHRAE Handbook of Fundamentals, airflow around buildings: power laws that meet at the top of the boundary layer.
/// Made for heights of buildings; below about 2 m it is an extrapolation.
/// </remarks>
internal static class WindProfile
{
    /// <summary>Lowest height, m.</summary>
    public const double MinHeight_m = 0.1;

    /// <summary>Highest height, m: the thinnest boundary layer of the table.</summary>
    public const double MaxHeight_m = 210;

    // The station: 10 m up in open country, boundary layer 270 m, exponent 0.14.
    private static readonly double StationFactor = Math.Pow(270.0 / 10, 0.14);

    /// <summary>Wind at <paramref name="height_m"/> over that at the station: constant for a place, so worth keeping.</summary>
    /// <param name="height_m">Height above ground, 0.1 to 210 m.</param>
    /// <param name="terrain">Roughness of the country round the place.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Factor(double height_m, Terrain terrain)
    {
        (double layer_m, double exponent) = terrain switch
        {
            Terrain.OpenWater => (210.0, 0.10),
            Terrain.Open => (270.0, 0.14),
            Terrain.Wooded => (370.0, 0.22),
            Terrain.City => (460.0, 0.33),
            _ => throw new ArgumentOutOfRangeException(nameof(terrain), terrain, "Must be OpenWater, Open, Wooded or City."),
        };
        return StationFactor * Math.Pow(Require.InRange(height_m, MinHeight_m, MaxHeight_m, "m") / layer_m, exponent);
    }
}

/// <summary>Roughness of the country for half a kilometre or more upwind, as in the ASHRAE Handbook of Fundamentals.</summary>
public enum Terrain
{
    /// <summary>Category 4: open water or ice for 5 km, or flat shore.</summary>
    OpenWater,

    /// <summary>Category 3: open country with scattered low obstacles; the surroundings of a weather station.</summary>
    Open,

    /// <summary>Category 2: woods, suburbs, many obstacles the size of houses.</summary>
    Wooded,

    /// <summary>Category 1: a large town's centre.</summary>
    City,
}
