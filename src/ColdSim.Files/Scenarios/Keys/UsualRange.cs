namespace ColdSim.Files.Scenarios.Keys;

/// <summary>Between what a key's value usually lies; beyond it there is a warning, and the value is used all the same.</summary>
/// <param name="Low">The lower end as it is shown; null where none is unusual.</param>
/// <param name="High">The upper end; null likewise.</param>
/// <param name="Basis">Where that is from.</param>
internal sealed record UsualRange(string? Low, string? High, string Basis)
{
    /// <summary>Such as "2.5 m to 14 m".</summary>
    public string Shown => Low is null ? $"up to {High}" : High is null ? $"{Low} or more" : $"{Low} to {High}";

    /// <summary>What else may have been meant; empty where nothing suggests itself.</summary>
    public string Hint { get; init; } = "";
}
