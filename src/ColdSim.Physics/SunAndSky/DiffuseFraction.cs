namespace ColdSim.Physics.SunAndSky;

/// <summary>Parts global sunshine into what comes from the sun's disc and what comes from the rest of the sky.</summary>
/// <remarks>Source: Erbs, Klein and Duffie 1982, for hourly means. No checks.</remarks>
public static class DiffuseFraction
{
    /// <summary>Diffuse over global irradiance, 0.1 to 1.</summary>
    /// <param name="clearness">Clearness: global irradiance over that above the atmosphere, both level; 0 to 1.</param>
    public static double Erbs(double clearness)
    {
        double kt = clearness;
        return kt switch
        {
            <= 0.22 => 1 - (0.09 * kt),
            <= 0.80 => 0.9511 + (kt * (-0.1604 + (kt * (4.388 + (kt * (-16.638 + (kt * 12.336))))))),
            _ => 0.165,
        };
    }
}
