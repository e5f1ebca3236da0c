namespace ColdSim.Physics.Flow;

/// <summary>Propane gas through a small hole: mass flux, with sonic choking.</summary>
/// <remarks>
/// Isentropic flow of an ideal gas (Saint-Venant and Wantzel 1839; ISO 9300 gives the choked form). Real propane at 10 bar is
/// 15 % denser than ideal, so a discharge coefficient fitted to a rating carries that. No checks: called every step.
/// </remarks>
public static class Orifice
{
    /// <summary>Ratio of the specific heats of propane gas.</summary>
    public const double Gamma = 1.13;

    /// <summary>Gas constant of propane, J/(kg K).</summary>
    public const double GasConstant_J_kgK = 8.314462618 / 0.0440956;

    private const double InverseGamma = 1 / Gamma;
    private const double Factor = 2 * Gamma / (Gamma - 1);

    /// <summary>Downstream over upstream pressure below which the flow is sonic and falls no further: (2/(γ+1))^(γ/(γ-1)), 0.578.</summary>
    public static readonly double CriticalRatio = Math.Pow(2 / (Gamma + 1), Gamma / (Gamma - 1));

    /// <summary>The plateau of <see cref="FlowFunction"/>, √γ (2/(γ+1))^((γ+1)/(2(γ-1))), 0.637.</summary>
    public static readonly double ChokedFlowFunction = Math.Sqrt(Gamma) * Math.Pow(2 / (Gamma + 1), (Gamma + 1) / (2 * (Gamma - 1)));

    /// <summary>Mass flux made dimensionless with p₁/√(R T₁): √(2γ/(γ-1) (r^(2/γ) - r^((γ+1)/γ))), level below the critical ratio, 0 from 1 up.</summary>
    /// <param name="pressureRatio">Downstream over upstream absolute pressure, 0 or more.</param>
    public static double FlowFunction(double pressureRatio)
    {
        if (pressureRatio >= 1)
        {
            return 0;
        }

        if (pressureRatio <= CriticalRatio)
        {
            return ChokedFlowFunction;
        }

        double a = Math.Pow(pressureRatio, InverseGamma);
        return Math.Sqrt(Factor * a * (a - pressureRatio));
    }

    /// <summary>Mass flux, kg/(m² s), through the hole; 0 where the downstream side is not below the upstream.</summary>
    /// <param name="upstream_Pa">Absolute pressure before the hole, Pa, above 0.</param>
    /// <param name="upstream_K">Temperature before the hole, K.</param>
    /// <param name="downstream_Pa">Absolute pressure behind the hole, Pa.</param>
    public static double MassFlux_kg_m2s(double upstream_Pa, double upstream_K, double downstream_Pa)
        => Scale_kg_m2s(upstream_Pa, upstream_K) * FlowFunction(downstream_Pa / upstream_Pa);

    /// <summary>What <see cref="FlowFunction"/> is multiplied by to be a mass flux, p₁/√(R T₁), kg/(m² s).</summary>
    /// <param name="upstream_Pa">Absolute pressure before the hole, Pa, above 0.</param>
    /// <param name="upstream_K">Temperature before the hole, K.</param>
    public static double Scale_kg_m2s(double upstream_Pa, double upstream_K) => upstream_Pa / Math.Sqrt(GasConstant_J_kgK * upstream_K);
}
