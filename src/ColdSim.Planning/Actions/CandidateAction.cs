namespace ColdSim.Planning.Actions;

/// <summary>An action before it is tried: its amounts, and what one of them makes of a scenario.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="Amounts">The amounts, the least change first; one where it is done or not done.</param>
/// <param name="Build">The scenario with an amount.</param>
internal sealed record CandidateAction(ActionKind Kind, IReadOnlyList<double> Amounts, Func<Scenario, double, Scenario> Build)
{
    /// <summary>As it is now, in the unit of the amounts; null where that means nothing.</summary>
    public double? Now { get; init; }

    /// <summary>What an amount is called, or what the action is about; null where neither has a name.</summary>
    public Func<double, string>? Name { get; init; }

    /// <summary>The change with the amount at a place.</summary>
    public ActionChange Change(int place) => new(Kind, Amounts[place], place > 0 ? Amounts[place - 1] : null)
    {
        Now = Now,
        Name = Name?.Invoke(Amounts[place]),
        IsFurthest = place == Amounts.Count - 1,
    };

    /// <summary>Something that is done or not done.</summary>
    public static CandidateAction Once(ActionKind kind, Func<Scenario, Scenario> build, string? name = null)
        => new(kind, [1], (scenario, _) => build(scenario)) { Name = name is null ? null : _ => name };
}
