using System.Globalization;
using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Heaters;
using ColdSim.Physics.Units;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>What every reader of an estimate has to hear, in one wording for the command line and the screen.</summary>
internal static class Cautions
{
    // Snow falls, drifts and freezes on up to about here; common practice, no source.
    private const double Snow_C = 2;

    /// <summary>All of them, one sentence or two a line.</summary>
    public static IReadOnlyList<string> Lines { get; } =
    [
        "These are estimates from a model, not measurements. Keep a reserve and a way to leave.",
        "Never heat a cylinder with a flame, a torch, or any heater not listed for that cylinder.",
        "Cylinders stay outside and upright; never bring one into the coach.",
        "A cylinder must never get hotter than 125 °F (52 °C), and never be filled past its legal fill.",
        "Have working carbon monoxide and propane alarms. If one sounds: everybody out, gas off from outside.",
        "Ventless heaters, stoves and ovens take oxygen and make carbon monoxide and moisture: never sleep with one lit.",
        "The code in force, the makers' plates and manuals, and a licensed technician decide; this program does not.",
    ];

    /// <summary>What goes with every refill.</summary>
    public const string Filling =
        "Only a trained filler fills a cylinder, by weight or with the gauge open, at most to its legal filling; it rides outside or upright in the "
        + "open, its valve shut and plugged.";

    /// <summary>What goes with a day until which a refill can wait.</summary>
    public const string Waiting =
        "A refill that can wait can wait only in this weather: colder nights, a closed road or a closed station leave nothing. Keep a reserve.";

    /// <summary>The least to print where room is short.</summary>
    public static IReadOnlyList<string> Short { get; } =
    [
        "Estimates only: the code in force, the makers' plates and a licensed technician decide.",
        "Never heat a cylinder with a flame or an unlisted heater; keep it outside, upright, below 125 °F (52 °C).",
        "Working CO and propane alarms; never sleep with a ventless heater, stove or oven lit.",
    ];

    /// <summary>What a person has to know about the burners and the water of a rig.</summary>
    public static IEnumerable<string> Of(RunReport report)
    {
        Rig rig = report.Scenario.Rig;
        double below_s = report.Nights.Sum(n => n.BelowMinimumInlet.Seconds);
        if (below_s > 0)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"For {ClockText.Span(UnitsNet.Duration.FromSeconds(below_s))} gas flows with less than {rig.MinimumInlet_Pa / ConversionFactors.Psi_Pa:0.#} psi before the regulator, its minimum inlet; ")
                + "what it gives there follows from its springs alone, and its plate promises nothing.";
        }

        if (rig.Enclosure is { } enclosure)
            yield return $"The openings of the {enclosure.Name}, low and high, stay open and free of snow: leaking gas must get out. Never shut them for warmth.";
        if (report.Summary.OutsideLow.DegreesCelsius <= Snow_C && Openings(rig) is { Count: > 0 } openings)
            yield return $"Snow and ice: keep {string.Join(", ", openings)} clear, and look again after every fall or drift. Blocked, a burner makes carbon monoxide.";
        if (rig.Heaters.Any(h => h.Supply == HeaterSupply.OwnFuel))
        {
            yield return "A wood or diesel heater: its flue tight and clear, its clearances and combustion air as its plate asks, a carbon monoxide alarm "
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
