using ColdSim.Model;

namespace ColdSim.App.Text;

/// <summary>What the contents of the cylinders are called in a few letters.</summary>
internal static class GasWord
{
    /// <summary>"propane" for propane alone; a mixed gas is no propane, least of all when little but butane is left of it.</summary>
    public static string Of(Rig rig) => rig.Gas.IsMixed ? "gas" : "propane";
}
