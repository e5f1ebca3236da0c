using ColdSim.Planning;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.App.Text.Answers;

/// <summary>What an answer hangs on that is not known well, a line each: how far off it may be, what that does, and how to measure it.</summary>
internal static class GuessText
{
    private const int Most = 3;

    /// <summary>The line above them.</summary>
    public const string About = "Least certain, and how to measure it:";

    /// <summary>The inputs that move the answer most, a line each.</summary>
    /// <param name="effects">The effects, the first most.</param>
    /// <param name="scenario">The scenario whose answer it is.</param>
    /// <param name="holds">Whether it holds.</param>
    /// <param name="units">The units to print.</param>
    public static IReadOnlyList<string> Lines(IReadOnlyList<InputEffect> effects, Scenario scenario, bool holds, UnitStyle units)
        => [.. effects.Take(Most).Select(e => $"{Off(e, scenario, units)}: {Does(e, holds, units)}. {Measure(e.Input)}")];

    private static string Off(InputEffect effect, Scenario scenario, UnitStyle units) => effect.Input switch
    {
        Uncertainty.Temperature => $"forecast {units.WholeDifference(effect.Size)} {(effect.Worse ? "colder" : "warmer")}",
        Uncertainty.Contents => $"contents {units.Mass(effect.Size)} {(effect.Worse ? "less" : "more")}{(scenario.Rig.Cylinders.Count > 1 ? " in each" : "")}",
        Uncertainty.Wind => $"wind {Part(effect)} {(effect.Worse ? "more" : "less")}",
        Uncertainty.Infiltration => $"air leaks {Part(effect)} {(effect.Worse ? "more" : "less")}",
        _ => $"coach's heat loss {Part(effect)} {(effect.Worse ? "more" : "less")}",
    };

    // As a percentage of what it is: half as much again one way is a third less the other way.
    private static string Part(InputEffect effect)
        => $"{UnitStyle.Number(100 * (effect.Worse ? effect.Size : effect.Size / (1 + effect.Size)), 0)} %";

    private static string Does(InputEffect effect, bool holds, UnitStyle units)
    {
        if (holds)
        {
            return effect.Holds ? $"holds, {units.RoundMass(effect.Left_kg)} left"
                : effect.FailsAt is { } at ? $"fails {ClockText.ShortDayClock(at)}" : "fails";
        }

        return effect.Holds ? "would hold"
            : effect.FailsAt is null ? "still fails" : $"fails {ClockText.Span(UnitsNet.Duration.FromSeconds(RoundedDelay_s(effect.Moved)))} later";
    }

    // A delay is no more certain than what causes it.
    private static double RoundedDelay_s(double delay_s) => delay_s < 3600 ? Math.Round(delay_s / 300) * 300 : Math.Round(delay_s / 1800) * 1800;

    /// <summary>How to know better what is not known.</summary>
    /// <param name="input">What is not known.</param>
    public static string Measure(Uncertainty input) => input switch
    {
        Uncertainty.Temperature => "Ask again with a newer forecast.",
        Uncertainty.Contents => "Weigh it: coldsim gauge.",
        Uncertainty.Wind => "See wind_exposure.",
        Uncertainty.SetPoint => "Hold a thermometer beside the thermostat.",
        Uncertainty.DoorOpenings => "Count how often the door opens in a day.",
        _ => "Log 5 days, coldsim fit.",
    };
}
