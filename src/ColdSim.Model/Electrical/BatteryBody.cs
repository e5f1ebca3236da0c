using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Electrical;

/// <summary>Discharge and charge of a bank of batteries at a charge and a temperature. SI units; it holds no state of its own.</summary>
/// <remarks>
/// Stored charge grows by what is sent in times the charge efficiency, and falls by what is taken out times Peukert's factor, which
/// is never below one: what goes in is what is given, what is stored and what is lost, exactly.
/// </remarks>
internal sealed class BatteryBody
{
    // The last part before full, over which charging falls from the last rate to nothing: so it is reached without a switch.
    private const double Topping_frac = 0.02;
    private const double TwentyHours_s = 20 * Hour_s;
    private const double ChargeRateAtFive_1_h = 0.1, ChargeRateAtTen_1_h = 0.2, ChargeRateAtTwentyFive_1_h = 1;

    /// <summary>A battery bank.</summary>
    /// <param name="specification">Ratings of the bank.</param>
    public BatteryBody(BatterySpecification specification)
    {
        ArgumentNullException.ThrowIfNull(specification);
        Specification = specification;
    }

    /// <summary>Ratings of the bank.</summary>
    public BatterySpecification Specification { get; }

    /// <summary>The charge at which it counts as flat: what the cold locks in, and what is left for the battery's own sake. [J]</summary>
    /// <param name="battery_K">Temperature. [K]</param>
    public double Flat_J(double battery_K)
        => Specification.Rated_J * Math.Max(0, 1 - (Specification.UsableDepth_frac * ColdCapacity_frac(battery_K)));

    /// <summary>Usable charge at a slow rate; below 0 where the cold has locked in more than it holds. [J]</summary>
    /// <param name="stored_J">Charge. [J]</param>
    /// <param name="battery_K">Temperature. [K]</param>
    public double Usable_J(double stored_J, double battery_K) => stored_J - Flat_J(battery_K);

    /// <summary>The same per what a full bank gives at that temperature; 0 where it gives nothing.</summary>
    /// <param name="stored_J">Charge. [J]</param>
    /// <param name="battery_K">Temperature. [K]</param>
    public double Usable_frac(double stored_J, double battery_K)
    {
        double flat_J = Flat_J(battery_K), full_J = Specification.Rated_J - flat_J;
        return full_J > 0 ? (stored_J - flat_J) / full_J : 0;
    }

    /// <summary>Charge acceptance: the highest power from a charger, at its terminals. [W]</summary>
    /// <param name="stored_J">Charge. [J]</param>
    /// <param name="battery_K">Temperature. [K]</param>
    public double Acceptance_W(double stored_J, double battery_K)
    {
        BatterySpecification s = Specification;
        double charge_frac = stored_J / s.Rated_J;
        if (charge_frac >= 1) return 0;
        double taper_1_h = s.BulkRate_1_h;
        double topping_frac = 1 - Topping_frac;
        if (charge_frac > topping_frac)
        {
            taper_1_h = s.LastRate_1_h * (1 - charge_frac) / Topping_frac;
        }
        else if (charge_frac > s.BulkUntil_frac)
        {
            double x = (charge_frac - s.BulkUntil_frac) / (topping_frac - s.BulkUntil_frac);
            taper_1_h = s.BulkRate_1_h + (x * (s.LastRate_1_h - s.BulkRate_1_h));
        }

        return Math.Min(taper_1_h, HighestChargeRate_1_h(battery_K)) * s.Rated_J / Hour_s;
    }

    /// <summary>How fast its charge falls while it gives a power: Peukert's law above the twenty-hour rate. [W]</summary>
    /// <param name="given_W">Power at its terminals. [W]</param>
    public double Drain_W(double given_W)
    {
        double multiple = given_W * TwentyHours_s / Specification.Rated_J;
        return multiple <= 1 ? given_W : given_W * Math.Pow(multiple, Specification.PeukertExponent - 1);
    }

    /// <summary>How fast its charge grows while it takes a power. [W]</summary>
    /// <param name="taken_W">Power at its terminals. [W]</param>
    public double Gain_W(double taken_W) => taken_W * Specification.ChargeEfficiency_frac;

    /// <summary>Whether it is too cold to be charged at all.</summary>
    /// <param name="battery_K">Its temperature. [K]</param>
    public bool IsTooColdToCharge(double battery_K)
        => HighestChargeRate_1_h(battery_K) <= 0;

    /// <summary>Part of its rated charge that a battery can give at a temperature, 0 to 1.04.</summary>
    /// <remarks>
    /// Source: the capacity table of the battery model in NREL's System Advisor Model, the same for lead-acid and lithium there:
    /// 65 % at −15 °C, 85 % at 0 °C, 100 % at 25 °C, 104 % at 40 °C. Linear between; colder than −15 °C it goes on along the first
    /// slope (assumption) down to nothing.
    /// </remarks>
    /// <param name="battery_K">Temperature of the battery. [K]</param>
    public static double ColdCapacity_frac(double battery_K)
    {
        double t_C = battery_K - ZeroCelsius_K;
        return t_C switch
        {
            < 0 => Math.Max(0, 0.85 + (t_C * (0.20 / 15))),
            < 25 => 0.85 + (t_C * (0.15 / 25)),
            < 40 => 1 + ((t_C - 25) * (0.04 / 15)),
            _ => 1.04,
        };
    }

    /// <summary>Where its acid freezes at a charge; 0 K where there is no acid. [K]</summary>
    /// <param name="stored_J">Charge. [J]</param>
    public double FreezingPoint_K(double stored_J)
        => Specification.Chemistry == BatteryChemistry.LithiumIronPhosphate ? 0 : LeadAcidFreezing.AtCharge_K(stored_J / Specification.Rated_J);

    // Per rated charge. Lithium iron phosphate (a maker's manual): nothing below freezing, 0.1 from 0 to 5 °C, 0.1 to 0.2 up to 10 °C, 0.2 to 1 up to
    // 25 °C, and never more than its own bulk current. Lead-acid: in proportion to what it can give (assumption).
    private double HighestChargeRate_1_h(double battery_K)
    {
        double bulk_1_h = Specification.BulkRate_1_h;
        if (Specification.Chemistry != BatteryChemistry.LithiumIronPhosphate) return bulk_1_h * Math.Min(1, ColdCapacity_frac(battery_K));
        double t_C = battery_K - ZeroCelsius_K;
        return t_C switch
        {
            < 0 => 0,
            < 5 => Math.Min(bulk_1_h, ChargeRateAtFive_1_h),
            < 10 => Math.Min(bulk_1_h, ChargeRateAtFive_1_h + ((t_C - 5) / 5 * (ChargeRateAtTen_1_h - ChargeRateAtFive_1_h))),
            < 25 => Math.Min(bulk_1_h, ChargeRateAtTen_1_h + ((t_C - 10) / 15 * (ChargeRateAtTwentyFive_1_h - ChargeRateAtTen_1_h))),
            _ => bulk_1_h,
        };
    }
}
