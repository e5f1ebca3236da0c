using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;

namespace ColdSim.Files.Results;

/// <summary>How times, numbers and lists of texts are written in every document: what is not there is null.</summary>
internal static class JsonValues
{
    private static readonly JsonWriterOptions Layout = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    /// <summary>Opens a document, laid out for people too.</summary>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static Utf8JsonWriter Document(Stream output) => new(output, Layout);

    /// <summary>A time in ISO 8601 with its offset.</summary>
    public static void Time(Utf8JsonWriter json, string key, DateTimeOffset? time)
    {
        if (time is { } instant)
            json.WriteString(key, instant.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture));
        else
            json.WriteNull(key);
    }

    /// <summary>A number, rounded to a millionth: finer than any model here, and it hides the noise of unit conversions.</summary>
    public static void Number(Utf8JsonWriter json, string key, double? value)
    {
        if (value is { } number && double.IsFinite(number))
            json.WriteNumber(key, Math.Round(number, 6) + 0.0);
        else
            json.WriteNull(key);
    }

    /// <summary>A number with every digit it has.</summary>
    public static void Exact(Utf8JsonWriter json, string key, double value)
    {
        if (double.IsFinite(value))
            json.WriteNumber(key, value);
        else
            json.WriteNull(key);
    }

    /// <summary>A list of texts.</summary>
    public static void Texts(Utf8JsonWriter json, string key, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(key);
        foreach (string text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
