using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ColdSim.Files.Disk;

namespace ColdSim.Files.Weather.Services;

/// <summary>Answers of services, kept in a folder of the person: a file for each address, which may be deleted at any time.</summary>
/// <param name="folder">The folder; made when the first answer is kept.</param>
internal sealed class AnswerCache(string folder)
{
    private const string FirstLine = "coldsim forecast answer, format 1";
    private const string InstantForm = "yyyy-MM-dd'T'HH:mm:ss'Z'";
    private const int LongestFile = 32 << 20;

    private static readonly OutputKind Kind = new("a forecast", text => text.StartsWith(FirstLine + "\n", StringComparison.Ordinal));

    /// <summary>The answer kept for an address; null where there is none, or none that can be read.</summary>
    public WebAnswer? Find(Uri address)
    {
        ArgumentNullException.ThrowIfNull(address);
        string path = PathOf(address);
        try
        {
            if (!File.Exists(path) || new FileInfo(path).Length > LongestFile)
                return null;
            return Read(File.ReadAllBytes(path)) is { } kept && kept.Address == address ? kept : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Keeps an answer in place of an earlier one to the same address.</summary>
    /// <exception cref="FileFaultException">It cannot be written.</exception>
    public void Keep(WebAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        UserFolder.Make(folder);
        OutputFile file = new(PathOf(answer.Address), Kind, Force: true);
        file.Check(new FilesRead());
        AtomicFile.Write(file.Path, stream =>
        {
            stream.Write(Encoding.UTF8.GetBytes(Head(answer)));
            stream.Write(answer.Body);
        });
    }

    private string PathOf(Uri address)
    {
        string digest = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(address.AbsoluteUri)).AsSpan(0, 8));
        string host = string.Concat(address.Host.Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' ? c : '_'));
        return Path.Combine(folder, $"{host}-{digest}.answer");
    }

    private static string Head(WebAnswer answer)
    {
        StringBuilder head = new();
        head.Append(FirstLine).Append('\n');
        head.Append("address: ").Append(answer.Address.AbsoluteUri).Append('\n');
        head.Append("checked: ").Append(Instant(answer.CheckedAt)).Append('\n');
        head.Append("expires: ").Append(Instant(answer.ExpiresAt)).Append('\n');
        if (answer.LastModified is { } modified)
            head.Append("last-modified: ").Append(OneLine(modified)).Append('\n');
        if (answer.EntityTag is { } tag)
            head.Append("etag: ").Append(OneLine(tag)).Append('\n');
        return head.Append(CultureInfo.InvariantCulture, $"length: {answer.Body.Length}\n\n").ToString();
    }

    private static WebAnswer? Read(byte[] file)
    {
        int end = file.AsSpan().IndexOf("\n\n"u8);
        if (end < 0)
            return null;
        string[] lines = Encoding.UTF8.GetString(file, 0, end).Split('\n');
        Dictionary<string, string> fields = new(StringComparer.Ordinal);
        foreach (string line in lines.Skip(1))
        {
            int colon = line.IndexOf(": ", StringComparison.Ordinal);
            if (colon > 0)
                fields[line[..colon]] = line[(colon + 2)..];
        }

        byte[] body = file[(end + 2)..];
        if (lines[0] != FirstLine || !Uri.TryCreate(fields.GetValueOrDefault("address"), UriKind.Absolute, out Uri? address)
            || Instant(fields.GetValueOrDefault("checked")) is not { } at || Instant(fields.GetValueOrDefault("expires")) is not { } expires
            || fields.GetValueOrDefault("length") != body.Length.ToString(CultureInfo.InvariantCulture))
        {
            return null;
        }

        return new()
        {
            Address = address,
            Body = body,
            CheckedAt = at,
            ExpiresAt = expires,
            LastModified = fields.GetValueOrDefault("last-modified"),
            EntityTag = fields.GetValueOrDefault("etag"),
        };
    }

    private static string Instant(DateTimeOffset time) => time.ToUniversalTime().ToString(InstantForm, CultureInfo.InvariantCulture);

    private static DateTimeOffset? Instant(string? text)
        => DateTimeOffset.TryParseExact(text, InstantForm, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset time)
            ? time : null;

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
