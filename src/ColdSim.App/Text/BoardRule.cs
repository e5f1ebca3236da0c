using ColdSim.Planning;

namespace ColdSim.App.Text;

/// <summary>
/// Which cylinders may be on board, as it is said below a comparison and below what to do: a rule of the United States is quoted to its
/// people only.
/// </summary>
internal static class BoardRule
{
    private const string UnitedStates = "US";

    /// <summary>Below a comparison with a cylinder that is too large to be carried.</summary>
    public static string OnTheGround(Scenario scenario, UnitStyle units) => HoldsIn(scenario, units)
        ? units.InOwn("\"On the ground\": a cylinder of over 105 lb of water is not one to carry. 24 CFR 3280.704, a rule for manufactured homes, "
            + "allows on board at most two, each of at most 105 lb of water; local code decides where a larger one may be set.")
        : units.InOwn("\"On the ground\": a cylinder of over 105 lb of water is not one to carry. Your country's rules and the coach's papers say how many "
            + "of which size may be on board, and where a larger one may stand.");

    /// <summary>Below a list of actions.</summary>
    public static string Actions(Scenario scenario, UnitStyle units) => HoldsIn(scenario, units)
        ? units.InOwn("On board at most two cylinders of at most 105 lb of water each (24 CFR 3280.704, a rule for manufactured homes; local code "
            + "decides); a larger one stands on the ground.")
        : "Your country's rules and the coach's papers say how many cylinders of which size may be on board; a larger one stands on the ground.";

    // Without a country, who reads US units is taken to be under its rules.
    private static bool HoldsIn(Scenario scenario, UnitStyle units) => scenario.Country is { } country ? country == UnitedStates : units.IsUs;
}
