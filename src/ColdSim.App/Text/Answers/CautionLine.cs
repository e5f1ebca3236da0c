using ColdSim.Model.Appliances;
using ColdSim.Planning.Advice;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Answers;

/// <summary>The one caution that fits what was asked; <c>--full</c> has all of them.</summary>
internal static class CautionLine
{
    /// <summary>For an answer in which nothing is burnt or heated.</summary>
    public const string Estimate = "Caution: an estimate. Keep a reserve; the code and the makers' plates decide.";

    private const string Alarms = "Caution: an estimate. Keep a reserve, and working CO and propane alarms.";
    private const string Snow = "Caution: an estimate. Keep snow off the furnace's vents; working CO alarm.";
    private const string Ventless = "Caution: a heater without a flue makes carbon monoxide: never sleep with it lit.";
    private const string Thaw = "Caution: never thaw a pipe or warm a cylinder with a flame. Working CO alarm.";
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
