namespace ColdSim.Planning.Diagnosis;

/// <summary>What comes before any other answer.</summary>
public enum Emergency
{
    /// <summary>None was mentioned.</summary>
    None,

    /// <summary>A smell of gas.</summary>
    GasSmell,

    /// <summary>Signs of carbon monoxide: an alarm, headache, dizziness, nausea.</summary>
    CarbonMonoxide,
}

/// <summary>Everything that is known when somebody asks why there is no heat.</summary>
public sealed record DiagnosisQuestion
{
    /// <summary>The rig.</summary>
    public DiagnosisRig Rig { get; init; } = new();

    /// <summary>What was read of the cylinder.</summary>
    public CylinderReadings Readings { get; init; } = new();

    /// <summary>Voltage at the furnace's board with its fan running, where it was measured; it is weighed as a state of
    /// <see cref="Sign.Volts"/>. [V]</summary>
    public double? Board_V { get; init; }

    /// <summary>What was seen and heard: the state of each sign that is known.</summary>
    public IReadOnlyDictionary<Sign, int> Signs { get; init; } = new Dictionary<Sign, int>();

    /// <summary>What comes before any other answer.</summary>
    public Emergency Emergency { get; init; }

    /// <summary>What was assumed, in plain words.</summary>
    public IReadOnlyList<string> Assumptions { get; init; } = [];

    /// <summary>Whether anything was seen or heard; air, height and gas alone are none of that.</summary>
    public bool HasEvidence => Signs.Keys.Any(s => s is not (Sign.Elevation or Sign.Gas)) || Enum.GetValues<Reading>().Any(Readings.Has);

    /// <summary>The signs that count: a fan that is still in a furnace that does nothing says nothing more.</summary>
    internal IEnumerable<KeyValuePair<Sign, int>> Counted
    {
        get
        {
            bool silent = Signs.TryGetValue(Sign.Furnace, out int furnace) && furnace == 0;
            return Signs.Where(s => !(silent && s is { Key: Sign.Fan, Value: 2 }));
        }
    }

    /// <summary>The question with one sign more.</summary>
    public DiagnosisQuestion With(Sign sign, int state) => this with { Signs = new Dictionary<Sign, int>(Signs) { [sign] = state } };
}
