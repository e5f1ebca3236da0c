namespace ColdSim.App.Screens.Tries;

/// <summary>What is tried: a value for every adjustment that is not as the file has it.</summary>
/// <param name="Values">By the adjustment's own name.</param>
internal sealed record TrySettings(IReadOnlyDictionary<string, double> Values)
{
    /// <summary>Nothing is tried.</summary>
    public static TrySettings None { get; } = new(new Dictionary<string, double>());

    /// <summary>Whether nothing is tried.</summary>
    public bool IsNone => Values.Count == 0;

    /// <summary>The value that is tried; null where the file's holds.</summary>
    public double? this[string id] => Values.TryGetValue(id, out double value) ? value : null;

    /// <summary>The same with another value.</summary>
    public TrySettings With(string id, double value) => new(new Dictionary<string, double>(Values) { [id] = value });
}
