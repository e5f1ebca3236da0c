using System.Text;

namespace ColdSim.Files.Toml;

/// <summary>Reads the text of a file that somebody wrote, as far as it may be long.</summary>
internal static class TomlFile
{
    // Characters beyond ASCII take several bytes; the text itself is measured afterwards.
    private const int MostBytes = 4 * TomlBounds.LargestText;

    /// <summary>The text without a byte order mark. Of an endless file only as much is read as shows that it is too large.</summary>
    /// <param name="stream">The file.</param>
    /// <exception cref="DecoderFallbackException">It is no UTF-8.</exception>
    public static string Read(Stream stream)
    {
        using MemoryStream bytes = new();
        byte[] buffer = new byte[1 << 15];
        while (bytes.Length <= MostBytes && stream.Read(buffer) is int length and > 0)
            bytes.Write(buffer, 0, length);
        ReadOnlySpan<byte> all = bytes.GetBuffer().AsSpan(0, (int)bytes.Length);
        UTF8Encoding strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: bytes.Length <= MostBytes);
        return strict.GetString(all).TrimStart('\uFEFF');
    }
}
