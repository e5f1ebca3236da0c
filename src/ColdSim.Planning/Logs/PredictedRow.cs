using UnitsNet;

namespace ColdSim.Planning.Logs;

/// <summary>How a reading stands to what the simulator says.</summary>
public enum ReadingMark
{
    /// <summary>Within what the errors let expect, or nothing to compare it with.</summary>
    None,

    /// <summary>Far off, and so is nothing that would put it down to one reading.</summary>
    Far,

    /// <summary>Far off one way and the next one far off the other way: this reading looks wrong.</summary>
    LooksWrong,

    /// <summary>Far off because the reading before looks wrong.</summary>
    AfterWrong,
}

/// <summary>A reading beside what the simulator makes of the reading before.</summary>
/// <param name="Row">The reading.</param>
/// <param name="Predicted">What the simulator, started from the reading before, has in the cylinder; null for a first reading, after a filling and outside the weather.</param>
/// <param name="Times">The reading less that, in standard errors of the difference.</param>
/// <param name="Mark">What that says of the reading.</param>
public sealed record PredictedRow(LogRow Row, Mass? Predicted, double? Times, ReadingMark Mark)
{
    /// <summary>The reading less the prediction.</summary>
    public Mass? Off => Predicted is { } predicted ? Row.Contents.Mass - predicted : null;
}
