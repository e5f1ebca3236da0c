using ColdSim.Model;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What is said where a cylinder gets hotter than one may be.</summary>
internal static class HotSentence
{
    /// <summary>The sentence, or null where none does.</summary>
    public static string? Of(RunReport report, UnitStyle units)
    {
        if (report.Nights.FirstOrDefault(n => n.CylinderHotAt is not null) is not { CylinderHotAt: { } at, HotCylinder: { } cylinder })
            return null;
        Rig rig = report.Scenario.Rig;
        string which = rig.Cylinders.Count > 1 ? $"{rig.NameOf(cylinder)} cylinder" : "cylinder";
        double hottest_K = report.Nights.Max(n => n.HottestCylinder.Kelvins);
        string why = rig.Cylinders[cylinder].Blanket is { StuckOn: true } ? " under the stuck thermostat" : "";
        return $"DANGER: the {which} passes 125 °F (52 °C) on {ClockText.DayClock(at)}{why} and reaches {units.Temperature(hottest_K)}; no cylinder "
            + "may get so hot. Cut the blanket's power and do not use it again until its maker or a licensed technician has seen to it.";
    }
}
