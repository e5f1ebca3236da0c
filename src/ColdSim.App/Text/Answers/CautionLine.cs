using ColdSim.Model.Appliances;
using ColdSim.Planning.Advice;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Answers;

/// <summary>The one caution that fits what was asked; <c>--full</c> has all of them.</summary>
internal static class CautionLine
{
    /// <summary>For an answer in which nothing is burnt or heated.</summary>
    public const string Estimate = "Caution: an estimate. Keep a reserve; the code and the makers' plates decide.";

    /// <summary>For burners in use.</summary>
    public const string Alarms = "Caution: an estimate. Keep a reserve, and working CO and propane alarms.";

    /// <summary>For water that may freeze.</summary>
    public const string Thaw = "Caution: never thaw a pipe or warm a cylinder with a flame. Working CO alarm.";

    /// <summary>For a chance, which is more hopeful than the truth.</summary>
    public const string Chance = "Caution: what breaks is not in a chance. Keep a reserve; working CO alarm.";

    /// <summary>For somebody who goes out to a cylinder with a scale or a gauge.</summary>
    public const string Reading = "Caution: read it outside, its valve closed, away from any flame. An estimate.";

    /// <summary>For weather from a station.</summary>
    public const string Weather = "Caution: a hollow is colder than the station (--hollow). Keep a reserve.";

    private const string Snow = "Caution: an estimate. Keep snow off the furnace's vents; working CO alarm.";
    private const string Ventless = "Caution: a heater without a flue makes carbon monoxide: never sleep with it lit.";
    private const string Cylinder = "Caution: never warm a cylinder with a flame or an unlisted heater. CO alarm on.";

    // Snow falls, drifts and freezes on up to about here; common practice, no source.
    private const double Snow_C = 2;

    /// <summary>The caution for a run.</summary>
    public static string Of(RunReport run, RunAdvice? advice)
    {
        if (run.Scenario.Rig.Appliances.Any(a => a is CatalyticHeater))
            return Ventless;
        if (run.Nights.Any(n => n.Water.Any(w => w.HoldsWater && w.FreezesAt is not null)))
            return Thaw;
        if (advice?.Explanation is not null)
            return Cylinder;
        return run.Scenario.Rig.Furnace is not null && run.Summary.OutsideLow.DegreesCelsius <= Snow_C ? Snow : Alarms;
    }
}
