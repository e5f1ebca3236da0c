using System.Globalization;
using System.Text.Json;
using ColdSim.Planning.Compare;
using UnitsNet;

namespace ColdSim.Files.Results;

/// <summary>Reads the document of an earlier run back, as far as it is compared with a later one.</summary>
internal static class EarlierReport
{
    private const long MostBytes = 64 << 20;
    private const string Accepted = "accepted: a document that 'coldsim run --json' wrote";

    /// <summary>Reads a document.</summary>
    /// <param name="stream">The document.</param>
    /// <param name="name">Its name in messages.</param>
    /// <param name="problem">What is wrong with it; null where it was read.</param>
    /// <returns>The answer; null where something is wrong.</returns>
    public static AnswerDigest? Read(Stream stream, string name, out FileProblem? problem)
    {
        ArgumentNullException.ThrowIfNull(stream);
        problem = null;
        byte[] bytes = Bytes(stream);
        if (bytes.Length > MostBytes)
        {
            problem = new FileProblem(name, 1, 1, "larger than 64 MB", Accepted);
            return null;
        }

        try
        {
            ReadOnlyMemory<byte> text = bytes.AsMemory();
            if (text.Span.StartsWith("\uFEFF"u8))
                text = text[3..];
            using JsonDocument document = JsonDocument.Parse(text);
            return Digest(document.RootElement);
        }
        catch (JsonException e)
        {
            problem = new FileProblem(name, (int)(e.LineNumber ?? 0) + 1, (int)(e.BytePositionInLine ?? 0) + 1, "not a JSON document", Accepted);
        }
        catch (Exception e) when (e is KeyNotFoundException or InvalidOperationException or FormatException or ArgumentException or OverflowException)
        {
            problem = new FileProblem(name, 1, 1, "a JSON document, but not the report of a run", Accepted);
        }

        return null;
    }

    private static byte[] Bytes(Stream stream)
    {
        using MemoryStream bytes = new();
        byte[] buffer = new byte[1 << 15];
        while (bytes.Length <= MostBytes && stream.Read(buffer) is int length and > 0)
            bytes.Write(buffer, 0, length);
        return bytes.ToArray();
    }

    private static AnswerDigest Digest(JsonElement root)
    {
        JsonElement summary = root.GetProperty("summary");
        DateTimeOffset? readAt = root.TryGetProperty("started_from", out JsonElement from) && from.ValueKind == JsonValueKind.Object ? Time(from.GetProperty("read_at")) : null;
        return new(
            Text(root.GetProperty("title")),
            Time(root.GetProperty("start")),
            Text(summary.GetProperty("verdict")),
            Mass.FromKilograms(Number(summary.GetProperty("left_at_start_kg"))!.Value),
            readAt,
            [.. root.GetProperty("nights").EnumerateArray().Select(Night)]);
    }

    private static NightDigest Night(JsonElement night)
    {
        double? inside_C = Number(night.GetProperty("inside_low_c")), left_kg = Number(night.GetProperty("left_at_dawn_kg"));
        return new(
            Evening(Time(night.GetProperty("from"))),
            Text(night.GetProperty("verdict")),
            Temperature.FromDegreesCelsius(Number(night.GetProperty("outside_low_c")) ?? throw new FormatException()),
            inside_C is { } c ? Temperature.FromDegreesCelsius(c) : null,
            left_kg is { } kg ? Mass.FromKilograms(kg) : null,
            night.GetProperty("first_short") is { ValueKind: JsonValueKind.String } at ? Time(at) : null);
    }

    // A night begins at noon, or with a run that starts before the morning is over.
    private static DateOnly Evening(DateTimeOffset from) => DateOnly.FromDateTime((from - TimeSpan.FromHours(MorningEnds_h)).DateTime);

    private const int MorningEnds_h = 7;

    private static string Text(JsonElement element) => element.GetString() ?? throw new FormatException();

    private static double? Number(JsonElement element) => element.ValueKind == JsonValueKind.Null ? null : element.GetDouble();

    private static DateTimeOffset Time(JsonElement element) => DateTimeOffset.Parse(Text(element), CultureInfo.InvariantCulture);
}
