using ColdSim.Files.Quantities;

namespace ColdSim.Files.Scenarios;

/// <summary>A key that holds a quantity, with what it measures and its limits as they are shown.</summary>
internal sealed class QuantityKey
{
    public QuantityKey(string name, Dimension dimension, string low, string high)
    {
        (Name, Dimension, Low, High) = (name, dimension, low, high);
        if (SiText.Read(low, dimension, out double lowSi) is { } lowFault)
            throw new ArgumentException(lowFault.ToString(), nameof(low));
        if (SiText.Read(high, dimension, out double highSi) is { } highFault)
            throw new ArgumentException(highFault.ToString(), nameof(high));
        (LowSi, HighSi) = (lowSi, highSi);
    }

    public string Name { get; }

    public Dimension Dimension { get; }

    public string Low { get; }

    public string High { get; }

    public double LowSi { get; }

    public double HighSi { get; }

    public string Accepted => Dimension == Dimension.Ratio ? $"accepted: {Low} to {High}" : $"accepted: \"{Low}\" to \"{High}\"";
}
