using ColdSim.Planning.Diagnosis;

namespace ColdSim.App.Text;

/// <summary>What is said of each cause: a clause, what to do, and what never to do.</summary>
internal static class CauseWords
{
    private const string Flame = "never warm a cylinder or a regulator with a flame or an unlisted heater";

    /// <summary>The cause as a clause, such as "the cylinder is empty".</summary>
    public static string Clause(Cause cause) => cause switch
    {
        Cause.TooCold => "the cylinder is too cold to boil gas as fast as the furnace burns it",
        Cause.Empty => "the cylinder is empty",
        Cause.ButaneLeft => "mostly butane is left, which hardly boils in this cold",
        Cause.Overfilled => "the cylinder is overfilled and liquid reaches the regulator",
        Cause.ExcessFlow => "the valve's excess-flow device has tripped",
        Cause.RegulatorIce => "ice has formed in the regulator",
        Cause.RegulatorTooSmall => "the regulator passes too little for all burners together",
        Cause.AirInLine => "there is air in the gas line",
        Cause.LowVoltage => "the voltage at the furnace's board is too low",
        Cause.Airflow => "the fan moves too little air for the sail switch, or the return is blocked",
        Cause.BlockedVent => "the furnace's intake or vent is blocked",
        Cause.Lockout => "the furnace waits in a lockout after failed tries",
        Cause.Altitude => "the thin air up here takes part of the furnace's heat",
        _ => "it is none of the causes known here",
    };

    /// <summary>What to do if it is so.</summary>
    public static string ToDo(Cause cause) => cause switch
    {
        Cause.TooCold => "Lower the thermostat and shut other burners. Change to the fuller cylinder, or brush off its snow and let it "
            + "rest.",
        Cause.Empty => "Change to another cylinder, or have it filled. Open its valve slowly.",
        Cause.ButaneLeft => "Change to propane; a filler takes the butane back.",
        Cause.Overfilled => "Shut its valve, keep it outside and cool, and have a dealer take gas out.",
        Cause.ExcessFlow => "Shut every burner and the valve, wait five minutes, open the valve slowly.",
        Cause.RegulatorIce => "Shut the valve; lay a cloth wet with warm water on the regulator. Have a filler add methanol or dry the "
            + "gas.",
        Cause.RegulatorTooSmall => "Burn one thing at a time; have a technician fit a regulator for the sum of the plates.",
        Cause.AirInLine => "Light the stove, its window open, until it burns steadily; then start the furnace.",
        Cause.LowVoltage => "Charge the battery or plug in; switch off what else draws.",
        Cause.Airflow => "Clear the return grille and the ducts; if that does not help, have the fan and the sail switch looked at.",
        Cause.BlockedVent => "Switch the furnace off, clear intake and vent of snow and ice, then try once.",
        Cause.Lockout => "Find out why its tries failed; then switch it off for a minute and on again, once.",
        Cause.Altitude => "Expect less heat and close off rooms; only a technician may change the burner.",
        _ => "Have a technician look at valve, electrode and board. Keep warm by other means that are allowed inside, or leave.",
    };

    /// <summary>What never to do about it.</summary>
    public static string Never(Cause cause) => cause switch
    {
        Cause.TooCold => $"Never: {Flame[6..]}, or bring it inside.",
        Cause.Empty or Cause.AirInLine => "Never: open a fitting inside to let gas or air out, or look for a leak with a flame.",
        Cause.ButaneLeft => $"Never: {Flame[6..]}, or bring it inside.",
        Cause.Overfilled => "Never: bring it inside or near warmth, heat it, or let gas out yourself.",
        Cause.ExcessFlow => "Never: take the device out, or open the valve in a rush again.",
        Cause.RegulatorIce => "Never: thaw a regulator with a flame, hit it, or wrap its vent.",
        Cause.RegulatorTooSmall => "Never: turn the regulator up, or leave it out.",
        Cause.LowVoltage or Cause.Airflow => "Never: bridge the sail switch or a limit switch.",
        Cause.BlockedVent => "Never: run it with a blocked vent; carbon monoxide comes inside. CO alarm on.",
        Cause.Lockout => "Never: reset it again and again; unburned gas gathers.",
        Cause.Altitude => "Never: drill an orifice or turn the regulator up.",
        _ => "Never: bypass a safety switch, or heat with the stove.",
    };

    /// <summary>How sure a probability is: the scale of docs/sources.md, "Mastrandrea2010".</summary>
    public static string Likelihood(double p_frac)
        => p_frac >= 0.9 ? "very likely" : p_frac >= DiagnosisReport.Likely_frac ? "likely" : p_frac >= 0.33 ? "about as likely as not"
            : p_frac >= 0.1 ? "unlikely" : "very unlikely";
}
