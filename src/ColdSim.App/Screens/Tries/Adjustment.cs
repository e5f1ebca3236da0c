using ColdSim.Files.Scenarios.Drafts;

namespace ColdSim.App.Screens.Tries;

/// <summary>One thing that can be turned: how it is read off a rig, shown, stepped, and written as keys of the scenario.</summary>
/// <param name="Id">Its own name among the settings.</param>
/// <param name="Name">What it is called in the list.</param>
internal sealed record Adjustment(string Id, string Name)
{
    /// <summary>Its value without being turned; null where it is off.</summary>
    public required Func<TryPlace, double?> AsItIs { get; init; }

    /// <summary>A value in words.</summary>
    public required Func<double, TryPlace, string> Show { get; init; }

    /// <summary>The values there are.</summary>
    public required Func<TryPlace, ValueGrid> Grid { get; init; }

    /// <summary>The keys of a value; of cylinders all keys are made together, so theirs has none.</summary>
    public Func<double, TryPlace, IEnumerable<KeyChange>> Changes { get; init; } = (_, _) => [];

    /// <summary>The value with which it is turned on; null where it cannot be.</summary>
    public Func<TryPlace, double?> TurnedOn { get; init; } = _ => null;

    /// <summary>Why it is off.</summary>
    public Func<TryPlace, string> WhyOff { get; init; } = _ => "none";

    /// <summary>Whether the nights hold more easily the higher it reads.</summary>
    public bool IsEasierHigh { get; init; } = true;

    /// <summary>Its value now; null where it is off.</summary>
    public double? Value(TryPlace place) => place.Settings[Id] ?? AsItIs(place);

    /// <summary>Its value in words, or why it is off.</summary>
    public string Shown(TryPlace place) => Value(place) is { } value ? Show(value, place) : WhyOff(place);

    /// <summary>The value a step on; null where there is none.</summary>
    public double? Next(TryPlace place, int direction)
        => Value(place) is { } value ? Grid(place).Next(value, direction) : direction > 0 ? TurnedOn(place) : null;
}
