namespace ColdSim.Files.Weather;

/// <summary>Cloud layers as weather services write them: <c>FEW:02 55 OVC:08 80</c>, in eighths of the sky.</summary>
internal static class CloudLayers
{
    private const int Obscured = 9;

    /// <summary>The cover of the last layer, which includes the layers below it; null where no layer is written.</summary>
    public static double? Cover_frac(string text)
    {
        int colon = text.LastIndexOf(':');
        if (colon < 0)
            return text is "CLR" or "SKC" ? 0 : null;
        int end = colon + 1;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
            end++;
        return int.TryParse(text.AsSpan(colon + 1, end - colon - 1), out int oktas) && oktas is >= 0 and <= Obscured ? Math.Min(1, oktas / 8.0) : null;
    }
}
