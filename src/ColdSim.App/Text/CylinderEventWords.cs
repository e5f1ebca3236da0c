using ColdSim.Model;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What happens to one of several cylinders, with its name and what is left in it.</summary>
internal sealed class CylinderEventWords(Rig rig, UnitStyle units)
{
    /// <summary>The words, or null where the kind is not a cylinder's or there is only one.</summary>
    public string? Of(ReportedEvent e)
    {
        bool several = rig.Cylinders.Count > 1;
        string name = rig.NameOf(Math.Min(e.Cylinder, rig.Cylinders.Count - 1));
        return e.Kind switch
        {
            ReportedKind.CylinderChanged => $"changed by hand to {name}, {Left(e.Value)} left in the other",
            ReportedKind.ReserveFeeds => $"reserve feeds too, {Left(e.Value)} left in service",
            ReportedKind.CylinderFilled => several ? $"{name} filled to {Left(e.Value)}" : $"filled to {Left(e.Value)}",
            ReportedKind.LiquidGone when several => $"last liquid boils off in {name}",
            ReportedKind.CylinderHot when several => $"{name} passes 125 °F (52 °C)",
            ReportedKind.CylinderHot => "cylinder passes 125 °F (52 °C)",
            ReportedKind.Dry when several => "all cylinders dry",
            _ => null,
        };
    }

    private string Left(double kg) => units.Mass(kg);
}
