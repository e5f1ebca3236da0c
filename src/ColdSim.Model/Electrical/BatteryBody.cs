namespace ColdSim.Model.Electrical;

/// <summary>What a bank of batteries gives and takes at a charge and a temperature. SI units; it holds no state of its own.</summary>
/// <remarks>
/// Stored charge grows by what is sent in times the charge efficiency, and falls by what is taken out times Peukert's factor, which
/// is never below one: what goes in is what is given, what is stored and what is lost, to the last joule.
/// </remarks>
public sealed class BatteryBody
{
    // The last part before full, over which charging falls from the last rate to nothing: so it is reached without a switch.
    private const double Topping_frac = 0.02;
    private const double TwentyHours_s = 20 * 3600;
    private const double Hour_s = 3600;

    /// <summary>A bank.</summary>
    /// <param name="specification">Its plate.</param>
    public BatteryBody(BatterySpecification specification)
    {
        ArgumentNullException.ThrowIfNull(specification);
        Specification = specification;
    }

    /// <summary>Its plate.</summary>
    public BatterySpecification Specification { get; }

    /// <summary>The charge at which its voltage is taken as gone: what the cold locks in, and what is left for the battery's own sake. [J]</summary>
    /// <param name="battery_K">Temperature. [K]</param>
    public double Flat_J(double battery_K)
        => Specification.Rated_J * Math.Max(0, 1 - (Specification.UsableDepth_frac * ColdCapacity.Part_frac(battery_K)));

    /// <summary>What it can still give at a slow rate; below 0 where the cold has locked in more than it holds. [J]</summary>
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

    /// <summary>Most that it takes from a charger, at its terminals. [W]</summary>
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

        return Math.Min(taper_1_h, ColdCharging.Most_1_h(s.Chemistry, s.BulkRate_1_h, battery_K)) * s.Rated_J / Hour_s;
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

    /// <summary>Whether it may not be charged at all for the cold.</summary>
    /// <param name="battery_K">Its temperature. [K]</param>
    public bool IsTooColdToCharge(double battery_K)
        => ColdCharging.Most_1_h(Specification.Chemistry, Specification.BulkRate_1_h, battery_K) <= 0;
}
