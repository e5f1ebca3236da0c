using System.Text.Json;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Values of a JSON object by their names; null where one is missing or of another kind.</summary>
internal static class JsonValues
{
    public static readonly JsonReaderOptions Options = new() { MaxDepth = 32, CommentHandling = JsonCommentHandling.Skip };

    public static string? Text(this JsonElement from, string name)
        => from.Value(name, JsonValueKind.String)?.GetString();

    public static double? Number(this JsonElement from, string name)
        => from.Value(name, JsonValueKind.Number) is { } value && value.TryGetDouble(out double number) && double.IsFinite(number) ? number : null;

    public static JsonElement? Object(this JsonElement from, string name) => from.Value(name, JsonValueKind.Object);

    /// <summary>The first two or three numbers of an array, as positions are written; null where there are fewer than two.</summary>
    public static double[]? Position(this JsonElement array)
    {
        if (array.ValueKind != JsonValueKind.Array || array.GetArrayLength() is not (2 or 3))
            return null;
        double[] numbers = new double[array.GetArrayLength()];
        for (int i = 0; i < numbers.Length; i++)
        {
            if (array[i].ValueKind != JsonValueKind.Number || !array[i].TryGetDouble(out numbers[i]) || !double.IsFinite(numbers[i]))
                return null;
        }

        return Math.Abs(numbers[0]) <= 180 && Math.Abs(numbers[1]) <= 90 ? numbers : null;
    }

    /// <summary>A fault of the document as a whole.</summary>
    /// <param name="faults">Receives it.</param>
    /// <param name="json">The document.</param>
    /// <param name="e">What the reader said.</param>
    public static void ReportBroken(WeatherFaults faults, JsonText json, JsonException e)
    {
        (int line, int column) = ((int)(e.LineNumber ?? 0) + 1, (int)(e.BytePositionInLine ?? 0) + 1);
        faults.At = null;
        faults.Report(line, column, json.IsEnd(line, column) ? "the JSON document ends in the middle; the file is cut short" : "not JSON from here on");
    }

    private static JsonElement? Value(this JsonElement from, string name, JsonValueKind kind)
        => from.ValueKind == JsonValueKind.Object && from.TryGetProperty(name, out JsonElement value) && value.ValueKind == kind ? value : null;
}
