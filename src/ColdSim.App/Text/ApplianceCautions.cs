using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Heaters;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What has to be heard with the burners and the water that a rig has.</summary>
internal static class ApplianceCautions
{
    // Snow falls, drifts and freezes on up to about here; common practice, no source.
    private const double Snow_C = 2;

    public static IEnumerable<string> Of(RunReport report)
    {
        Rig rig = report.Scenario.Rig;
        if (report.Summary.OutsideLow.DegreesCelsius <= Snow_C && Openings(rig) is { Count: > 0 } openings)
            yield return $"Snow and ice: keep {string.Join(", ", openings)} clear, and look again after every fall or drift. Blocked, a burner makes carbon monoxide.";
        if (rig.Heaters.Any(h => h.Supply == HeaterSupply.OwnFuel))
        {
            yield return "A wood or diesel heater: its flue tight and clear, its distances and its own air as its plate asks, a carbon monoxide alarm "
                + "beside it, and nobody asleep over an open fire.";
        }

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

    // Where a rig's burners take air and leave their fumes.
    private static List<string> Openings(Rig rig)
    {
        List<string> openings = [];
        if (rig.Furnace is not null)
            openings.Add("the furnace's intake and exhaust");
        if (rig.Appliances.Any(a => a is AbsorptionRefrigerator))
            openings.Add("the refrigerator's vents");
        if (rig.Appliances.Any(a => a is StorageWaterHeater or OnDemandWaterHeater))
            openings.Add("the water heater's vent");
        if (rig.Heaters.Any(h => h.Supply == HeaterSupply.OwnFuel))
            openings.Add("the other heaters' flues and intakes");
        if (rig.Power?.Generator is not null)
            openings.Add("the generator's exhaust");
        if (rig.Appliances.Any(a => a.IsUnvented) || rig.Coach is { Ventilation_m3_s: > 0 } or { Moisture: not null })
            openings.Add("every opening for fresh air");
        return openings;
    }
}
