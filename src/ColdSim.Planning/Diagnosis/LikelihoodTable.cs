namespace ColdSim.Planning.Diagnosis;

/// <summary>The documented table: how likely each cause is before anything is known, and each state of each sign under each
/// cause.</summary>
/// <remarks>Set by reasoning, not fitted to cases. docs/diagnose.md has it in full.</remarks>
internal static class LikelihoodTable
{
    /// <summary>What stands for a source where there is none.</summary>
    public const string NoSource = "common practice, no source";

    private const string Sequence = "RV furnace sequence of operation";
    private const string Voltage = "RV furnace owners' pages";
    private const string Owner = "Motorhome owner manual, winter use of LP gas";
    private const string Valve = "Cylinder valve pages";
    private const string Water = "Battelle 2007, methanol in LP gas";
    private const string Blends = "Seasonal mixtures, European LPG Association";
    private const string Height = "Altitude rule of the trade";

    /// <summary>The part of all signs that is misseen or misheard: any state may then be reported.</summary>
    public const double Misread_frac = 0.08;

    /// <summary>How often each cause is behind a furnace that fails on a winter's night; common practice, no source.</summary>
    public static double Prior(Cause cause) => cause switch
    {
        Cause.TooCold => 0.16,
        Cause.Empty => 0.14,
        Cause.ButaneLeft => 0.04,
        Cause.Overfilled => 0.02,
        Cause.ExcessFlow => 0.06,
        Cause.RegulatorIce => 0.04,
        Cause.RegulatorTooSmall => 0.03,
        Cause.AirInLine => 0.05,
        Cause.LowVoltage => 0.16,
        Cause.Airflow => 0.06,
        Cause.BlockedVent => 0.05,
        Cause.Lockout => 0.07,
        Cause.Altitude => 0.03,
        _ => 0.09,
    };

    private static readonly IReadOnlyList<LikelihoodRow>[] Rows = [.. Enum.GetValues<Sign>().Select(Make)];

    /// <summary>The rows of a sign, the one for every other cause first.</summary>
    public static IReadOnlyList<LikelihoodRow> Of(Sign sign) => Rows[(int)sign];

    private static IReadOnlyList<LikelihoodRow> Make(Sign sign) => sign switch
    {
        Sign.Stove =>
        [
            Usual([0.93, 0.03, 0.01, 0.02, 0.01]),
            Row(Cause.TooCold, Owner, 0.42, 0.25, 0.27, 0.06, 0),
            Row(Cause.Empty, NoSource, 0.04, 0.10, 0.26, 0.60, 0),
            Row(Cause.ButaneLeft, NoSource, 0.20, 0.30, 0.20, 0.30, 0),
            Row(Cause.Overfilled, NoSource, 0.30, 0.10, 0.05, 0.05, 0.50),
            Row(Cause.ExcessFlow, Valve, 0.15, 0.62, 0.10, 0.12, 0.01),
            Row(Cause.RegulatorIce, Owner, 0.15, 0.20, 0.35, 0.28, 0.02),
            Row(Cause.RegulatorTooSmall, NoSource, 0.45, 0.45, 0.08, 0.02, 0),
            Row(Cause.AirInLine, NoSource, 0.25, 0.05, 0.20, 0.50, 0),
            Row(Cause.Altitude, Height, 0.50, 0.45, 0.02, 0.02, 0.01),
            Row(Cause.Other, NoSource, 0.70, 0.08, 0.05, 0.15, 0.02),
        ],
        Sign.Fan =>
        [
            Usual([0.88, 0.05, 0.07]),
            Row(Cause.LowVoltage, Voltage, 0.15, 0.70, 0.15),
            Row(Cause.Airflow, NoSource, 0.80, 0.12, 0.08),
            Row(Cause.Lockout, Sequence, 0.30, 0.03, 0.67),
            Row(Cause.Other, NoSource, 0.60, 0.10, 0.30),
        ],
        Sign.Furnace => FurnaceRows,
        Sign.Volts => [Usual([0.01, 0.03, 0.13, 0.23, 0.60]), Row(Cause.LowVoltage, Voltage, 0.45, 0.30, 0.17, 0.06, 0.02)],
        Sign.Regulator =>
        [
            Usual([0.85, 0.15]),
            Row(Cause.TooCold, Owner, 0.75, 0.25),
            Row(Cause.RegulatorIce, Water, 0.12, 0.88),
            Row(Cause.Overfilled, NoSource, 0.50, 0.50),
        ],
        Sign.OpenedFast => [Usual([0.12, 0.88]), Row(Cause.ExcessFlow, Valve, 0.85, 0.15)],
        Sign.Swapped =>
        [
            Usual([0.12, 0.88]),
            Row(Cause.TooCold, NoSource, 0.08, 0.92),
            Row(Cause.ButaneLeft, NoSource, 0.40, 0.60),
            Row(Cause.ExcessFlow, Valve, 0.45, 0.55),
            Row(Cause.AirInLine, NoSource, 0.93, 0.07),
            Row(Cause.Lockout, NoSource, 0.25, 0.75),
        ],
        Sign.Filled =>
        [
            Usual([0.12, 0.88]),
            Row(Cause.Empty, NoSource, 0.01, 0.99),
            Row(Cause.ButaneLeft, Blends, 0.30, 0.70),
            Row(Cause.Overfilled, NoSource, 0.90, 0.10),
            Row(Cause.ExcessFlow, NoSource, 0.20, 0.80),
            Row(Cause.RegulatorIce, Water, 0.45, 0.55),
            Row(Cause.AirInLine, NoSource, 0.20, 0.80),
        ],
        Sign.Vents => [Usual([0.85, 0.15]), Row(Cause.BlockedVent, NoSource, 0.12, 0.88)],
        Sign.Return => [Usual([0.92, 0.08]), Row(Cause.Airflow, NoSource, 0.30, 0.70)],
        Sign.Load =>
        [
            Usual([0.90, 0.10]),
            Row(Cause.TooCold, Owner, 0.60, 0.40),
            Row(Cause.ButaneLeft, NoSource, 0.65, 0.35),
            Row(Cause.ExcessFlow, NoSource, 0.60, 0.40),
            Row(Cause.RegulatorIce, NoSource, 0.75, 0.25),
            Row(Cause.RegulatorTooSmall, NoSource, 0.10, 0.90),
        ],
        Sign.ByDay =>
        [
            Usual([0.80, 0.20]),
            Row(Cause.TooCold, Owner, 0.12, 0.88),
            Row(Cause.ButaneLeft, Blends, 0.15, 0.85),
            Row(Cause.RegulatorIce, Water, 0.40, 0.60),
            Row(Cause.LowVoltage, NoSource, 0.45, 0.55),
            Row(Cause.BlockedVent, NoSource, 0.70, 0.30),
            Row(Cause.Altitude, NoSource, 0.90, 0.10),
        ],
        Sign.Reopened =>
        [
            Usual([0.12, 0.88]),
            Row(Cause.TooCold, NoSource, 0.35, 0.65),
            Row(Cause.ExcessFlow, Valve, 0.85, 0.15),
            Row(Cause.RegulatorIce, NoSource, 0.40, 0.60),
            Row(Cause.AirInLine, NoSource, 0.40, 0.60),
        ],
        Sign.Reset =>
        [
            Usual([0.06, 0.94]),
            Row(Cause.TooCold, NoSource, 0.20, 0.80),
            Row(Cause.AirInLine, NoSource, 0.75, 0.25),
            Row(Cause.Lockout, Sequence, 0.90, 0.10),
            Row(Cause.Altitude, NoSource, 0.10, 0.90),
            Row(Cause.Other, NoSource, 0.20, 0.80),
        ],
        Sign.Gas => [Usual([0.85, 0.13, 0.02]), Row(Cause.ButaneLeft, Blends, 0.06, 0.62, 0.32)],
        Sign.Elevation => [Usual([0.55, 0.25, 0.15, 0.05]), Row(Cause.Altitude, Height, 0.02, 0.13, 0.35, 0.50)],
        _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "has no rows"),
    };

    // Silent, fan alone, clicks, burns for seconds, for minutes, burns on.
    private static LikelihoodRow[] FurnaceRows =>
    [
        Usual([0.10, 0.10, 0.35, 0.20, 0.15, 0.10]),
        Row(Cause.TooCold, Owner, 0.05, 0.02, 0.33, 0.25, 0.30, 0.05),
        Row(Cause.Empty, NoSource, 0.06, 0.02, 0.62, 0.15, 0.14, 0.01),
        Row(Cause.ButaneLeft, NoSource, 0.05, 0.02, 0.45, 0.22, 0.20, 0.06),
        Row(Cause.Overfilled, NoSource, 0.05, 0.05, 0.20, 0.30, 0.25, 0.15),
        Row(Cause.ExcessFlow, Valve, 0.05, 0.02, 0.45, 0.33, 0.08, 0.07),
        Row(Cause.RegulatorIce, Owner, 0.05, 0.02, 0.35, 0.20, 0.35, 0.03),
        Row(Cause.RegulatorTooSmall, NoSource, 0.03, 0.02, 0.20, 0.35, 0.20, 0.20),
        Row(Cause.AirInLine, NoSource, 0.10, 0.02, 0.75, 0.10, 0.02, 0.01),
        Row(Cause.LowVoltage, Voltage, 0.25, 0.50, 0.12, 0.06, 0.05, 0.02),
        Row(Cause.Airflow, Voltage, 0.05, 0.60, 0.03, 0.05, 0.25, 0.02),
        Row(Cause.BlockedVent, NoSource, 0.04, 0.15, 0.30, 0.28, 0.20, 0.03),
        Row(Cause.Lockout, Sequence, 0.75, 0.20, 0.03, 0.01, 0.01, 0),
        Row(Cause.Altitude, Height, 0.02, 0.02, 0.12, 0.12, 0.05, 0.67),
        Row(Cause.Other, NoSource, 0.25, 0.12, 0.30, 0.15, 0.10, 0.08),
    ];

    /// <summary>How likely a state is under a cause, misreadings included.</summary>
    /// <param name="sign">The sign.</param>
    /// <param name="state">Its state.</param>
    /// <param name="cause">The cause.</param>
    public static double Likelihood(Sign sign, int state, Cause cause)
    {
        IReadOnlyList<LikelihoodRow> rows = Of(sign);
        LikelihoodRow row = rows[0];
        for (int i = 1; i < rows.Count; i++)
        {
            if (rows[i].Cause == cause) row = rows[i];
        }

        return (1 - Misread_frac) * row.Weights[state] + Misread_frac / row.Weights.Count;
    }

    private static LikelihoodRow Usual(double[] weights) => new(null, weights, NoSource);

    private static LikelihoodRow Row(Cause cause, string basis, params double[] weights) => new(cause, weights, basis);
}
