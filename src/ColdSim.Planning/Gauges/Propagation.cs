namespace ColdSim.Planning.Gauges;

/// <summary>A function of inputs as a reading sees it.</summary>
/// <param name="inputs">Values of the inputs.</param>
internal delegate double ReadingFunction(ReadOnlySpan<double> inputs);

/// <summary>Numerical propagation of stated errors through a method's own function.</summary>
/// <remarks>
/// Each input is moved by one standard uncertainty up and down. The greater of the two changes of the result counts, with the sign
/// it has on the way up: for a smooth function that is ∂f/∂x · u to first order, and an error whose effect starts with its square
/// (a sensor off the lowest point) or that is stopped by the vessel's end on one side is not lost.
/// </remarks>
internal static class Propagation
{
    public static (double Value, IReadOnlyList<ErrorShare> Shares) Of(ReadingFunction function, IReadOnlyList<StatedError> inputs)
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
