using ColdSim.App.Text;
using ColdSim.Files.Scenarios.Starters;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Frame;

/// <summary>The scenario files that the screen reads and writes.</summary>
/// <remarks>What goes wrong is an <see cref="InvalidOperationException"/> with the lines that a command would print.</remarks>
internal interface IScenarioFiles
{
    /// <summary>Reads a scenario and its log anew and runs it.</summary>
    Opening Open(string path, CancellationToken cancel);

    /// <summary>The scenario files in the folder of the open one, in the order of their names.</summary>
    IReadOnlyList<string> Beside(string? open);

    /// <summary>One line on a scenario: its verdict.</summary>
    string Verdict(string path, UnitStyle units, CancellationToken cancel);

    /// <summary>What is wrong with a rig that is being described.</summary>
    IReadOnlyList<string> Faults(StarterRig rig, string path);

    /// <summary>Writes a new scenario, with weather beside it where it names none.</summary>
    void Write(StarterRig rig, string path);

    /// <summary>Writes a night's curves and a report of the run beside the scenario, and says where.</summary>
    string Export(RunReport report, int night, string? open, UnitStyle units, IProgress<int> done, CancellationToken cancel);

    /// <summary>Writes a fit into the scenario, keeps what was there, and says so.</summary>
    string TakeOver(FitReport fit, string path);
}
