using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What has to be heard with the burners and the water that a rig has.</summary>
internal static class ApplianceCautions
{
    public static IEnumerable<string> Of(RunReport report)
    {
        Rig rig = report.Scenario.Rig;
        if (rig.Appliances.Any(a => a is CatalyticHeater))
        {
            yield return "A heater without a flue burns the coach's own air: carbon monoxide, less oxygen, damp. Only one listed for use inside, with the "
                + "openings to fresh air that its plate asks for, never while anybody sleeps. The plate and a licensed technician decide.";
        }

        if (rig.Appliances.Any(a => a is Cooker))
            yield return "Never heat with the stove or the oven. While cooking, a vent open and the fan on: carbon monoxide and damp.";
        if (report.Nights.Any(n => n.Water.Any(w => w.FreezesAt is not null)))
            yield return "Never thaw a pipe with a flame. Drain what nothing heats before the cold, as the makers' manuals say.";
    }
}
