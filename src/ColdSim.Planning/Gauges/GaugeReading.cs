namespace ColdSim.Planning.Gauges;

/// <summary>A way to read what a cylinder holds: its inputs with their errors, and the mass as a function of them.</summary>
public abstract class GaugeReading
{
    /// <summary>What the reading is called, such as "line" or "weight 2".</summary>
    public required string Name { get; init; }

    /// <summary>The inputs, in the order in which <see cref="Mass_kg"/> takes them.</summary>
    /// <param name="cylinder">The cylinder that was read.</param>
    public abstract IReadOnlyList<StatedError> Inputs(GaugedCylinder cylinder);

    /// <summary>Propane, liquid and vapour, that the inputs mean. [kg]</summary>
    /// <param name="cylinder">The cylinder that was read.</param>
    /// <param name="inputs">Values in the order of <see cref="Inputs"/>.</param>
    public abstract double Mass_kg(GaugedCylinder cylinder, ReadOnlySpan<double> inputs);

    /// <summary>Limits of the method and common misreadings, in short.</summary>
    public abstract IReadOnlyList<string> Cautions { get; }

    /// <summary>The mass with its standard uncertainty.</summary>
    /// <param name="cylinder">The cylinder that was read.</param>
    /// <exception cref="ImpossibleReadingException">The reading fits no contents of this cylinder.</exception>
    public ContentsEstimate Estimate(GaugedCylinder cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        return ContentsEstimate.Of(Name, x => Mass_kg(cylinder, x), Inputs(cylinder));
    }
}

/// <summary>A reading that no contents of the cylinder can give.</summary>
internal sealed class ImpossibleReadingException : Exception
{
    /// <summary>Without a message.</summary>
    public ImpossibleReadingException()
    {
    }

    /// <summary>With what is wrong.</summary>
    /// <param name="message">A sentence.</param>
    public ImpossibleReadingException(string message)
        : base(message)
    {
    }

    /// <summary>With what is wrong and why.</summary>
    /// <param name="message">A sentence.</param>
    /// <param name="innerException">The cause.</param>
    public ImpossibleReadingException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
