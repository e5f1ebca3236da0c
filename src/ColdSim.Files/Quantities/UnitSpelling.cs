namespace ColdSim.Files.Quantities;

/// <summary>One unit and the ways it may be written.</summary>
/// <param name="Dimension">What it measures.</param>
/// <param name="Spellings">As people write it, the one used in messages first.</param>
/// <param name="Factor">How many SI units make one of it.</param>
/// <param name="Offset">Added before the factor is applied; for temperature scales only.</param>
/// <param name="UnitsNetUnit">The same unit in UnitsNet, or null where it has no such quantity.</param>
/// <param name="AnyCase">Whether capitals do not matter; SI symbols are read as they are defined, since m and M differ.</param>
internal sealed record UnitSpelling(
    Dimension Dimension, string[] Spellings, double Factor, double Offset, Enum? UnitsNetUnit, bool AnyCase)
{
    public double ToSi(double value) => (value + Offset) * Factor;
}
