using ColdSim.App.Text;
using ColdSim.Files.Scenarios.Drafts;
using ColdSim.Planning;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Tries;

/// <summary>What adjustments are read off: the run as it is, the file, what is tried already, and the night that is looked at.</summary>
/// <param name="AsItIs">The run without what is tried.</param>
/// <param name="Draft">The scenario's text.</param>
/// <param name="Settings">What is tried.</param>
/// <param name="Night">Index of the night.</param>
/// <param name="Units">The units to print.</param>
internal sealed record TryPlace(RunReport AsItIs, ScenarioDraft Draft, TrySettings Settings, int Night, UnitStyle Units)
{
    /// <summary>The scenario as it is.</summary>
    public Scenario Scenario => AsItIs.Scenario;

    /// <summary>A plain number that the file gives; null where it gives none.</summary>
    public double? Written(string key) => Draft.Number(key);
}
