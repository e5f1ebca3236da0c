using System.Globalization;

namespace ColdSim.Files.Quantities;

/// <summary>Several of one size written as one, such as "2x20 lb" or "2 × 11 kg".</summary>
/// <param name="Count">How many.</param>
/// <param name="Size">Of which size.</param>
internal readonly record struct CountedSize(int Count, string Size)
{
    /// <summary>Reads one; null where the text is none.</summary>
    public static CountedSize? Find(string text)
    {
        int times = text.IndexOfAny(['x', 'X', '×', '*']);
        return times > 0
            && int.TryParse(text.AsSpan(0, times).Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int count)
            && count is > 0 and < 100
            && text[(times + 1)..].Trim() is { Length: > 0 } size && char.IsAsciiDigit(size[0])
            ? new CountedSize(count, size)
            : null;
    }
}
