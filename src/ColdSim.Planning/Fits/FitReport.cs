using ColdSim.Planning.Logs;
using UnitsNet;

namespace ColdSim.Planning.Fits;

/// <summary>A log with too little data for a fit.</summary>
internal sealed class TooLittleDataException : Exception
{
    /// <summary>Makes one without reasons.</summary>
    public TooLittleDataException()
        : this([])
    {
    }

    /// <summary>With one reason.</summary>
    /// <param name="message">A sentence.</param>
    public TooLittleDataException(string message)
        : this([message])
    {
    }

    /// <summary>With a reason and its cause.</summary>
    /// <param name="message">A sentence.</param>
    /// <param name="innerException">The cause.</param>
    public TooLittleDataException(string message, Exception innerException)
        : base(message, innerException) => Reasons = [message];

    /// <summary>With every reason.</summary>
    /// <param name="reasons">Sentences.</param>
    public TooLittleDataException(IReadOnlyList<string> reasons)
        : base(string.Join("; ", reasons)) => Reasons = reasons;

    /// <summary>Every reason.</summary>
    public IReadOnlyList<string> Reasons { get; }
}

/// <summary>One parameter of a fit.</summary>
public sealed record FitEstimate
{
    /// <summary>The parameter.</summary>
    public required FitKind Kind { get; init; }

    /// <summary>Its value: a factor, watts or a part.</summary>
    public required double Value { get; init; }

    /// <summary>Lower end of its 80 % interval.</summary>
    public required double Low { get; init; }

    /// <summary>Upper end.</summary>
    public required double High { get; init; }

    /// <summary>Fraction of the prior variance that the readings removed: 0 none, 1 all.</summary>
    public required double Learned_frac { get; init; }

    /// <summary>Whether the readings identify it: they removed at least half of the prior variance.</summary>
    public bool IsIdentified => Learned_frac >= 0.5;
}

/// <summary>One reading beside what the fitted simulator says.</summary>
/// <param name="Row">The reading.</param>
/// <param name="Predicted">What the simulator has in the cylinder then, its start moved to go best through the stretch's readings.</param>
/// <param name="Off">The reading less that.</param>
/// <param name="Times">How far the reading is off what all the others say of it, in standard uncertainties of that.</param>
/// <param name="Gross">Whether it was left out as grossly wrong.</param>
public sealed record FitResidual(LogRow Row, Mass Predicted, Mass Off, double Times, bool Gross)
{
    /// <summary>Which of several cylinders was read; null for one.</summary>
    public string? OneOf { get; init; }
}

/// <summary>What a fit says.</summary>
public sealed record FitReport
{
    public required Scenario Scenario { get; init; }

    /// <summary>The factors found, to be applied to the rig.</summary>
    public required FittedFactors Factors { get; init; }

    /// <summary>The parameters that the readings move at all.</summary>
    public required IReadOnlyList<FitEstimate> Estimates { get; init; }

    /// <summary>The parameters of which the readings say nothing; the scenario's stay.</summary>
    public required IReadOnlyList<FitKind> Silent { get; init; }

    /// <summary>Correlations of the estimates, row by row.</summary>
    public required IReadOnlyList<double> Correlations { get; init; }

    /// <summary>Eigenvalues of the normal matrix, in spreads of the priors, the smallest first: below one, a direction is determined less by the readings than by the prior.</summary>
    public required IReadOnlyList<double> Eigenvalues { get; init; }

    /// <summary>Groups of parameters that these readings cannot distinguish.</summary>
    public required IReadOnlyList<IReadOnlyList<FitKind>> Confused { get; init; }

    /// <summary>Every reading.</summary>
    public required IReadOnlyList<FitResidual> Residuals { get; init; }

    /// <summary>Sum of squares over its degrees of freedom; about one where the errors are as large as assumed.</summary>
    public required double ReducedChiSquare { get; init; }

    /// <summary>Degrees of freedom.</summary>
    public required int Freedom { get; init; }

    /// <summary>Gas of one burner cycle.</summary>
    public required Mass Cycle { get; init; }

    /// <summary>How many temperatures and pressures of the cylinders were used beside the readings of contents.</summary>
    public int MeasuredUsed { get; init; }

    /// <summary>Lines of the log with such values that are grossly off and were left out.</summary>
    public IReadOnlyList<int> MeasuredLeftOut { get; init; } = [];

    /// <summary>Lines with such values of several cylinders that were left out because the log does not show well enough which one fed.</summary>
    public IReadOnlyList<int> MeasuredUnclear { get; init; } = [];

    /// <summary>Which of several cylinders fed when, in order; empty for one.</summary>
    public required IReadOnlyList<FeedSpan> Feeds { get; init; }

    /// <summary>The log with all its readings.</summary>
    internal UseLog Log { get; init; } = UseLog.Empty;

    /// <summary>First reading.</summary>
    public DateTimeOffset From => Residuals[0].Row.Reading.Time;

    /// <summary>Last reading.</summary>
    public DateTimeOffset To => Residuals[^1].Row.Reading.Time;
}
