namespace ColdSim.Planning.Nights;

/// <summary>Runs a scenario and reads the nights off it.</summary>
public static class NightRun
{
    /// <summary>Runs the scenario from its start.</summary>
    /// <param name="scenario">The question.</param>
    /// <param name="progress">Told the part done, 0 to 1, now and then; may be null.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <returns>Everything the run says. Look at <c>Ledger.Closes</c> before trusting it.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static RunReport Of(Scenario scenario, IProgress<double>? progress = null, CancellationToken cancel = default)
        => throw new NotSupportedException();
}
