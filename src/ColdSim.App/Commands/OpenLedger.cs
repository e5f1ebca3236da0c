using ColdSim.App.Text;
using ColdSim.Model.Engine;

namespace ColdSim.App.Commands;

/// <summary>What is said where a run's ledger does not close: nothing of it is shown.</summary>
internal static class OpenLedger
{
    /// <summary>The fault of one ledger.</summary>
    /// <param name="shown">What is not shown for it, such as "this run".</param>
    /// <param name="ledger">How it stands.</param>
    /// <param name="with">What to report it with.</param>
    public static CommandFault Fault(string shown, LedgerBalance ledger, string with) => Fault("the ledger", shown, [Line(ledger)], with);

    /// <summary>The fault of one or more of several.</summary>
    /// <param name="whose">Such as "the ledger of a member".</param>
    /// <param name="shown">What is not shown for it.</param>
    /// <param name="lines">How they stand, a line each.</param>
    /// <param name="with">What to report it with.</param>
    public static CommandFault Fault(string whose, string shown, IEnumerable<string> lines, string with) => new(
        ExitCode.Internal,
        [$"coldsim: internal error: {whose} does not close, so nothing of {shown} is shown.", .. lines, $"Please report it with {with}."]);

    /// <summary>How a ledger stands and what is allowed.</summary>
    public static string Line(LedgerBalance ledger) => RunText.Ledger(ledger) + " Allowed is 1e-6.";
}
