namespace ColdSim.Planning.Gauges;

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
/// <param name="Shared">Whether it sits alike in every reading of the cylinder, as one tare does in every weighing.</param>
public sealed record StatedError(string Name, InputKind Kind, double Value, double Uncertainty, string Basis, bool Shared);

/// <summary>What one input's error makes of the mass.</summary>
/// <param name="Input">The input.</param>
/// <param name="Change_kg">Change of mass for one standard uncertainty upwards, signed. [kg]</param>
public readonly record struct ErrorShare(StatedError Input, double Change_kg);
