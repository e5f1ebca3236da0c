namespace ColdSim.Model.Engine;

/// <summary>How the 12 V side stands between two runs. SI units.</summary>
/// <param name="Stored_J">Charge as energy at nominal voltage. [J]</param>
/// <param name="Live">Whether there is voltage.</param>
public sealed record PowerState(double Stored_J, bool Live);
