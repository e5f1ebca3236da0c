using ColdSim.Planning;
using ColdSim.Planning.Measurements;

namespace ColdSim.App.Text;

/// <summary>What measured values come to beside the computed ones, a sentence a group.</summary>
internal static class MeasuredWords
{
    /// <summary>The sentence: what is read, by how much it is off, and what that means.</summary>
    public static string Sentence(MeasuredGroup group, UnitStyle units)
    {
        string many = group.Count == 1 ? "1 reading" : $"{UnitStyle.Number(group.Count, 0)} readings";
        string within = $"({many}, give or take {Amount(group.Quantity, group.StandardError, units)})";
        return group.Finding == MeasuredFinding.Agrees
            ? $"{Name(group)} agrees with what was computed{While(group)}, within its error {within}."
            : $"{Name(group)} is read {Amount(group.Quantity, Math.Abs(group.Mean), units)} {Direction(group)} than computed{While(group)} {within}: {Meaning(group)}.";
    }

    /// <summary>An amount in the unit of a quantity.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="amount">A difference or an error. [K, Pa or V]</param>
    /// <param name="units">The person's units.</param>
    public static string Amount(MeasuredQuantity quantity, double amount, UnitStyle units) => quantity switch
    {
        MeasuredQuantity.Pressure => units.Pressure(amount),
        MeasuredQuantity.Voltage => UnitStyle.Volts(amount),
        _ => units.Difference(amount),
    };

    private static string Name(MeasuredGroup group) => group.Quantity switch
    {
        MeasuredQuantity.Pressure => "The cylinder's pressure",
        MeasuredQuantity.Liquid => "The liquid",
        MeasuredQuantity.Wall => "The cylinder's wall",
        MeasuredQuantity.Inside => "Inside",
        _ => "The battery at rest",
    };

    private static string Direction(MeasuredGroup group)
    {
        bool higher = group.Finding == MeasuredFinding.Higher;
        return group.Quantity is MeasuredQuantity.Pressure or MeasuredQuantity.Voltage ? higher ? "higher" : "lower" : higher ? "warmer" : "colder";
    }

    private static string While(MeasuredGroup group) => group.Inside switch
    {
        InsideState.Held => " while the furnace holds it",
        InsideState.Free => " while the furnace does not hold it",
        _ => "",
    };

    private static string Meaning(MeasuredGroup group) => (group.Quantity, group.Finding) switch
    {
        (MeasuredQuantity.Inside, MeasuredFinding.Higher) => group.Inside == InsideState.Held
            ? "the thermostat is set higher than the scenario says, or the thermometer hangs in a warm place"
            : "the coach loses less heat than the scenario says",
        (MeasuredQuantity.Inside, _) => group.Inside == InsideState.Held
            ? "the thermostat is set lower than the scenario says, or the thermometer hangs in a cold place"
            : "the coach loses more heat than the scenario says, or the furnace gives less",
        (MeasuredQuantity.Liquid or MeasuredQuantity.Wall, MeasuredFinding.Higher)
            => "less gas is drawn than computed, or the cylinder takes in more heat (wind_exposure, sun_exposure)",
        (MeasuredQuantity.Liquid or MeasuredQuantity.Wall, _)
            => "more gas is drawn than computed, or the cylinder takes in less heat (wind_exposure, snow or frost on it)",
        (MeasuredQuantity.Pressure, MeasuredFinding.Higher)
            => "the liquid is warmer than computed, or lighter gas or air is with it; a pressure does not say how much is left",
        (MeasuredQuantity.Pressure, _)
            => "the liquid is colder than computed, or heavier gas is with it; a pressure does not say how much is left",
        (_, MeasuredFinding.Higher) => "it holds more than computed; less is drawn or more comes in than the scenario says",
        _ => "it holds less than computed; more is drawn or less comes in than the scenario says, or it has aged",
    };
}
