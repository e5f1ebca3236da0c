using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>One plain sentence a night: what happens, when, how much is left and how cold it gets.</summary>
internal static class NightSentence
{
    public static string Of(NightReport night, RunReport run, UnitStyle units) => $"{Subject(night)} " + (night.Verdict switch
    {
        Verdict.Holds => HoldingSentence.Predicate(night, run, units),
        Verdict.RunsFlat => FlatSentence.Predicate(night, run, units),
        _ => FailingSentence.Predicate(night, run, units),
    }) + ".";

    /// <summary>What stopped the run early, if something in the cylinder did; else null.</summary>
    public static string? WhyItEnds(RunReport run) => run.End switch
    {
        Model.Engine.RunEnd.LiquidFull =>
            "The run stops early: the liquid has swollen until it fills the cylinder, a danger in itself.",
        Model.Engine.RunEnd.ReliefPressure =>
            "The run stops early: the cylinder is so warm that its relief valve would open, a danger in itself.",
        Model.Engine.RunEnd.WeatherEnded => "The weather file ends before the nights that were asked for; nothing is known beyond it.",
        _ => null,
    };

    private static string Subject(NightReport night) => night.LeftAtDawn is null
        ? $"{ClockText.NightName(night)} (run only from {ClockText.Clock(night.From)} to {ClockText.Clock(night.To)}),"
        : $"{ClockText.NightName(night)},";

    /// <summary>Such as "8.1 lb is left at 07:00".</summary>
    public static string Left(NightReport night, RunReport run, UnitStyle units) => night.LeftAtDawn is { } left
        ? $"{Mass(left, units)} is left at {run.Scenario.Criteria.Dawn:HH:mm}"
        : $"{Mass(night.LeftAtEnd, units)} is left at {ClockText.Clock(night.To)}, where the run ends";

    public static string Mass(Mass mass, UnitStyle units) => units.Mass(mass.Kilograms);

    public static string Temperature(Temperature temperature, UnitStyle units) => units.Temperature(temperature.Kelvins);
}
