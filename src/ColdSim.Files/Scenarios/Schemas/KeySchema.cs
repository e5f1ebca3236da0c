using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;

namespace ColdSim.Files.Scenarios.Schemas;

/// <summary>Writes the schema of one key from its declaration.</summary>
internal static partial class KeySchema
{
    /// <summary>Writes it as the value of a property that has been begun.</summary>
    /// <param name="key">The key.</param>
    /// <param name="to">Where.</param>
    /// <param name="renamed">Whether it is written for the name that the key had before.</param>
    public static void Write(ScenarioKey key, Utf8JsonWriter to, bool renamed = false)
    {
        to.WriteStartObject();
        string? otherwise = Default(key);
        to.WriteString("description", renamed ? $"The old name of {key.Name}: {Description(key, otherwise)}" : Description(key, otherwise));
        if (renamed)
            to.WriteBoolean("deprecated", true);
        WriteWhatIsAccepted(key, to);
        if (otherwise is not null)
        {
            to.WritePropertyName("default");
            WriteValue(otherwise, to);
        }

        to.WriteStartArray("examples");
        WriteValue(Json(key.Example), to);
        to.WriteEndArray();
        to.WriteEndObject();
    }

    /// <summary>The name of a dimension's definition.</summary>
    public static string Definition(Dimension dimension) => dimension.Name().Replace(' ', '_');

    private static void WriteWhatIsAccepted(ScenarioKey key, Utf8JsonWriter to)
    {
        switch (key)
        {
            case QuantityKey quantity:
                WriteQuantity(quantity, to);
                break;
            case FlagKey:
                to.WriteString("type", "boolean");
                break;
            case NumberKey number:
                WriteNumber("number", number.Low, number.High, to);
                break;
            case WholeKey whole:
                WriteNumber("integer", whole.Low, whole.High, to);
                break;
            case ChoiceKey choice:
                WriteWords(choice.Words, TextPattern.OneOf(choice.Understood, spacesMatter: true), to);
                break;
            case TextKey { Words.Count: > 0 } text:
                WriteWords(text.Words, TextPattern.OneOf(text.Words, spacesMatter: false), to);
                break;
            case TextKey:
                to.WriteString("type", "string");
                break;
            case TimeKey:
                WriteText(TextPattern.Time, to);
                break;
            case DateKey:
                WriteText(TextPattern.Date, to);
                break;
            case DateTimeKey time:
                WriteText(TextPattern.DateAndTime(time.Form is DateTimeForm.DateAtLeast or DateTimeForm.DateWithTimeElsewhere), to);
                break;
            case PriceKey price:
                WriteText(TextPattern.Price(price.Each), to);
                break;
            case SpansKey spans:
                string span = spans.HasFlow ? TextPattern.SpanWithFlow : TextPattern.Span;
                WriteOneOrList(!spans.IsSingle, single: true, to, () => WriteText(span, to));
                break;
            case ItemsKey items:
                WriteOneOrList(items.IsList, items.IsSingle || !items.IsList, to, () => WriteForms(items.Forms, to));
                break;
            case ChangesKey:
                to.WriteString("type", "object");
                to.WriteNumber("minProperties", 1);
                break;
            default:
                throw new ArgumentException($"'{key.Name}' is a key of a kind that the schema does not know.", nameof(key));
        }
    }

    private static void WriteValue(string json, Utf8JsonWriter to)
    {
        using JsonDocument value = JsonDocument.Parse(json);
        value.RootElement.WriteTo(to);
    }

    // A bare number is a ratio; everything else has its unit.
    private static void WriteQuantity(QuantityKey key, Utf8JsonWriter to)
    {
        QuantityRange first = key.Ranges[0];
        if (key.Ranges.Count == 1 && key.Words.Count == 0)
        {
            WriteReference(first.Dimension, to);
        }
        else
        {
            to.WriteStartArray("anyOf");
            foreach (QuantityRange range in key.Ranges)
            {
                to.WriteStartObject();
                WriteReference(range.Dimension, to);
                to.WriteEndObject();
            }

            if (key.Words.Count > 0)
            {
                to.WriteStartObject();
                WriteText(TextPattern.OneOf(key.Words, spacesMatter: true), to);
                to.WriteEndObject();
            }

            to.WriteEndArray();
        }

        if (first.Dimension != Dimension.Ratio)
            return;
        to.WriteNumber("minimum", first.LowSi);
        to.WriteNumber("maximum", first.HighSi);
    }

    private static void WriteReference(Dimension dimension, Utf8JsonWriter to)
        => to.WriteString("$ref", $"#/$defs/{Definition(dimension)}");

    private static void WriteNumber(string type, double low, double high, Utf8JsonWriter to)
    {
        to.WriteString("type", type);
        to.WriteNumber("minimum", low);
        to.WriteNumber("maximum", high);
    }

    private static void WriteText(string pattern, Utf8JsonWriter to)
    {
        to.WriteString("type", "string");
        to.WriteString("pattern", pattern);
    }

    // An editor offers the words as they are shown; capitals do not matter.
    private static void WriteWords(IEnumerable<string> words, string pattern, Utf8JsonWriter to)
    {
        to.WriteString("type", "string");
        to.WriteStartArray("anyOf");
        to.WriteStartObject();
        to.WriteStartArray("enum");
        foreach (string word in words)
            to.WriteStringValue(word);
        to.WriteEndArray();
        to.WriteEndObject();
        to.WriteStartObject();
        to.WriteString("pattern", pattern);
        to.WriteEndObject();
        to.WriteEndArray();
    }

    private static void WriteOneOrList(bool list, bool single, Utf8JsonWriter to, Action writeOne)
    {
        if (!list)
        {
            writeOne();
            return;
        }

        if (single)
        {
            to.WriteStartArray("anyOf");
            to.WriteStartObject();
            writeOne();
            to.WriteEndObject();
            to.WriteStartObject();
        }

        to.WriteString("type", "array");
        to.WriteStartObject("items");
        writeOne();
        to.WriteEndObject();
        if (!single)
            return;
        to.WriteEndObject();
        to.WriteEndArray();
    }

    private static void WriteForms(ItemForms forms, Utf8JsonWriter to)
    {
        to.WriteStartArray("type");
        if (forms.HasFlag(ItemForms.Text) || forms.HasFlag(ItemForms.Date))
            to.WriteStringValue("string");
        if (forms.HasFlag(ItemForms.Number))
            to.WriteStringValue("number");
        else if (forms.HasFlag(ItemForms.Whole))
            to.WriteStringValue("integer");
        to.WriteEndArray();
    }

    // The default as JSON; null where there is no single one.
    private static string? Default(ScenarioKey key) => key switch
    {
        FlagKey { Default.Si: { } flag } => flag == 1 ? "true" : "false",
        NumberKey { Default.Si: { } number } => Number(number),
        WholeKey { Default.Si: { } whole } => Number(whole),
        QuantityKey { DefaultSi: not null, Default.Unit: not "-" } => key.Example,
        ChoiceKey choice when key.Default.Words is { } word && choice.Words.Contains(word) => Json($"\"{word}\""),
        _ => null,
    };

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    // A value of TOML as JSON: texts, numbers and lists are written alike, and dates become texts.
    private static string Json(string toml)
    {
        if (toml.StartsWith('{'))
            return toml.Replace(" = ", ": ", StringComparison.Ordinal);
        return toml.StartsWith('"') ? toml : BareDate().Replace(toml, "\"$&\"");
    }

    private static string Description(ScenarioKey key, string? otherwise)
    {
        string meaning = Link().Replace(key.Meaning, "$1");
        string limits = key.Limits.Length == 0 || key is TextKey { Words.Count: > 0 } ? ""
            : $"; accepted: {Link().Replace(key.Limits, "$1")}";
        string unlessGiven = otherwise is not null || key.IsNeeded ? "" : $"; unless given: {Link().Replace(key.DefaultShown, "$1")}";
        return (meaning + limits + unlessGiven).Replace("`", "", StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\d{4}-\d\d-\d\d[-T:+0-9]*", RegexOptions.CultureInvariant)]
    private static partial Regex BareDate();

    [GeneratedRegex(@"\[([^\]]+)\]\([^)]+\)", RegexOptions.CultureInvariant)]
    private static partial Regex Link();
}
