using UnitsNet;

namespace ColdSim.Planning.Gauges;

/// <summary>What one reading says is in a cylinder.</summary>
public sealed class ContentsEstimate
{
    private ContentsEstimate(string reading, double mass_kg, IReadOnlyList<ErrorShare> shares)
    {
        Reading = reading;
        Mass_kg = mass_kg;
        Shares = shares;
        Uncertainty_kg = Math.Sqrt(shares.Sum(s => s.Change_kg * s.Change_kg));
    }

    /// <summary>What the reading is called.</summary>
    public string Reading { get; }

    /// <summary>Propane, liquid and vapour.</summary>
    public Mass Mass => Mass.FromKilograms(Mass_kg);

    /// <summary>Its standard uncertainty: the root of the sum of squares of the shares.</summary>
    public Mass StandardUncertainty => Mass.FromKilograms(Uncertainty_kg);

    /// <summary>What each stated error makes of it.</summary>
    public IReadOnlyList<ErrorShare> Shares { get; }

    internal double Mass_kg { get; }

    internal double Uncertainty_kg { get; }

    /// <summary>The estimate that a reading's own function makes of its inputs, with the inputs' stated errors propagated numerically.</summary>
    /// <remarks>
    /// Each input is moved by one standard uncertainty up and down. The greater of the two changes of the result counts, with the sign
    /// it has on the way up: for a smooth function that is ∂f/∂x · u to first order, and an error whose effect starts with its square
    /// (a sensor off the lowest point) or that is stopped by the vessel's end on one side is not lost.
    /// </remarks>
    internal static ContentsEstimate Of(string reading, ReadingFunction function, IReadOnlyList<StatedError> inputs)
    {
        (double mass_kg, IReadOnlyList<ErrorShare> shares) = Propagate(function, inputs);
        return new ContentsEstimate(reading, mass_kg, shares);
    }

    private static (double Value, IReadOnlyList<ErrorShare> Shares) Propagate(ReadingFunction function, IReadOnlyList<StatedError> inputs)
    {
        double[] x = [.. inputs.Select(i => i.Value)];
        double value = function(x);
        List<ErrorShare> shares = new(inputs.Count);
        for (int i = 0; i < x.Length; i++)
        {
            double at = x[i], u = inputs[i].Uncertainty;
            x[i] = at + u;
            double up = function(x) - value;
            x[i] = at - u;
            double down = value - function(x);
            x[i] = at;
            shares.Add(new(inputs[i], Math.Abs(up) >= Math.Abs(down) ? up : down));
        }

        return (value, shares);
    }
}

/// <summary>What an input of a reading measures, so that it can be printed in either unit system.</summary>
public enum InputKind
{
    /// <summary>kg.</summary>
    Mass,

    /// <summary>m.</summary>
    Length,

    /// <summary>K.</summary>
    Temperature,

    /// <summary>s.</summary>
    Time,

    /// <summary>A fraction.</summary>
    Ratio,

    /// <summary>rad.</summary>
    Angle,

    /// <summary>Pa.</summary>
    Pressure,
}

/// <summary>One input of a reading with its stated error. SI units.</summary>
/// <param name="Name">What it is; inputs of that name are one and the same error in every reading if <paramref name="Shared"/>.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Value">Its value.</param>
/// <param name="Uncertainty">Its standard uncertainty.</param>
/// <param name="Basis">Where the error comes from: given, a source, from memory, an assumption.</param>
/// <param name="Shared">Whether it is common to every reading of the cylinder, as one tare is to every weighing.</param>
public sealed record StatedError(string Name, InputKind Kind, double Value, double Uncertainty, string Basis, bool Shared);

/// <summary>What one input's error makes of the mass.</summary>
/// <param name="Input">The input.</param>
/// <param name="Change_kg">Change of mass for one standard uncertainty upwards, signed. [kg]</param>
public readonly record struct ErrorShare(StatedError Input, double Change_kg);

/// <summary>A function of inputs as a reading sees it.</summary>
/// <param name="inputs">Values of the inputs.</param>
internal delegate double ReadingFunction(ReadOnlySpan<double> inputs);
