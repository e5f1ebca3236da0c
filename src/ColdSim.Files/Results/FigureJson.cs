using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using ColdSim.Planning.Figures;
using UnitsNet;

namespace ColdSim.Files.Results;

/// <summary>Writes rows of figures into a JSON document: numbers in the unit that ends their key, times in ISO 8601, null for what is absent.</summary>
internal static class FigureJson
{
    // Laid out for people too.
    private static readonly JsonWriterOptions Layout = new() { Indented = true, NewLine = "\n", Encoder = Encoder() };

    // The writer keeps what it was given until it is told to pass it on, and a document of many nights is long.
    private const int MostPending = 8192;

    /// <summary>Writes a document of one row.</summary>
    /// <param name="figures">The row's figures.</param>
    /// <param name="row">The row.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void WriteDocument<TRow>(IReadOnlyList<Figure<TRow>> figures, TRow row, Stream output)
    {
        using (Utf8JsonWriter json = new(output, Layout))
            Write(json, new FigureRow<TRow>(figures, row));
        output.WriteByte((byte)'\n');
    }

    /// <summary>An instant as every document and file has it.</summary>
    public static string Instant(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    // Letters of every script as they are; control codes, marks of direction and of no width by their numbers.
    private static JavaScriptEncoder Encoder()
    {
        TextEncoderSettings allowed = new(UnicodeRanges.All);
        allowed.ForbidRanges(
            UnicodeRange.Create('\u0080', '\u009F'), UnicodeRange.Create('\u200B', '\u200F'), UnicodeRange.Create('\u2028', '\u202E'),
            UnicodeRange.Create('\u2060', '\u206F'), UnicodeRange.Create('\uFFF9', '\uFFFB'));
        allowed.ForbidCharacters('\u00AD', '\u061C', '\u115F', '\u1160', '\u180E', '\u3164', '\uFEFF', '\uFFA0');
        return JavaScriptEncoder.Create(allowed);
    }

    private static void Write(Utf8JsonWriter json, IFigureRow row)
    {
        json.WriteStartObject();
        foreach ((IFigure figure, object? value) in row.Values)
        {
            json.WritePropertyName(figure.Key);
            Value(json, figure, value);
        }

        json.WriteEndObject();
    }

    private static void Value(Utf8JsonWriter json, IFigure figure, object? value)
    {
        switch (value)
        {
            case null: json.WriteNullValue(); break;
            case string text: json.WriteStringValue(text); break;
            case Word word: json.WriteStringValue(word.Key); break;
            case bool flag: json.WriteBooleanValue(flag); break;
            case int count: json.WriteNumberValue(count); break;
            case double number: Number(json, number, figure.Exact); break;
            case IQuantity quantity: Number(json, quantity.As(figure.Unit!), figure.Exact); break;
            case DateTimeOffset time: json.WriteStringValue(Instant(time)); break;
            case DateOnly day: json.WriteStringValue(day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)); break;
            case IFigureRow part: Write(json, part); break;
            case IEnumerable<object?> all: Values(json, figure, all); break;
            case IEnumerable<double> numbers: Values(json, figure, numbers.Cast<object?>()); break;
            default: throw new ArgumentException($"'{figure.Key}' has a value of {value.GetType().Name}, which no document can hold");
        }

        if (json.BytesPending > MostPending)
            json.Flush();
    }

    private static void Values(Utf8JsonWriter json, IFigure figure, IEnumerable<object?> values)
    {
        json.WriteStartArray();
        foreach (object? value in values)
            Value(json, figure, value);
        json.WriteEndArray();
    }

    // Rounded to a millionth: finer than any model here, and it hides the noise of unit conversions.
    private static void Number(Utf8JsonWriter json, double number, bool exact)
    {
        if (!double.IsFinite(number))
            json.WriteNullValue();
        else
            json.WriteNumberValue(exact ? number : Math.Round(number, 6) + 0.0);
    }
}
