using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;

namespace ColdSim.Files.Scenarios.Schemas;

/// <summary>The JSON Schema (2020-12) of the scenario file, from the declarations that its reader goes by, for editors.</summary>
/// <remarks>It knows the form of every value. What depends on other keys, on units or on the weather only the reader knows.</remarks>
public static class ScenarioSchema
{
    /// <summary>The file that a scenario names.</summary>
    public const string FileName = "coldsim.schema.json";

    /// <summary>The first line of a scenario, which names the schema beside it.</summary>
    public const string Line = "#:schema ./" + FileName;

    private const string Title = "ColdSim scenario";

    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema.</summary>
    public static string Text()
    {
        using MemoryStream bytes = new();
        using (Utf8JsonWriter to = new(bytes, Options))
        {
            to.WriteStartObject();
            to.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            to.WriteString("title", Title);
            WriteTable(ScenarioKeys.Root, to);
            WriteDefinitions(to);
            to.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    /// <summary>Whether a file is such a schema, of this version or another.</summary>
    /// <param name="text">Its text.</param>
    public static bool IsOne(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.StartsWith('{') && text.Contains($"\"title\": \"{Title}\"", StringComparison.Ordinal);
    }

    private static void WriteSection(ScenarioSection section, Utf8JsonWriter to)
    {
        to.WriteStartObject(section.Name);
        switch (section.Form)
        {
            case TableForm.One:
                WriteTable(section, to);
                break;
            case TableForm.Many:
                WriteTables(section, to);
                break;
            default:
                to.WriteStartArray("anyOf");
                to.WriteStartObject();
                WriteTable(section, to);
                to.WriteEndObject();
                to.WriteStartObject();
                WriteTables(section, to);
                to.WriteEndObject();
                to.WriteEndArray();
                break;
        }

        to.WriteEndObject();
    }

    private static void WriteTables(ScenarioSection section, Utf8JsonWriter to)
    {
        to.WriteString("type", "array");
        if (section.Most is { } most)
            to.WriteNumber("maxItems", most);
        to.WriteStartObject("items");
        WriteTable(section, to);
        to.WriteEndObject();
    }

    private static void WriteTable(ScenarioSection section, Utf8JsonWriter to)
    {
        to.WriteString("description", section.Meaning.Replace("`", "", StringComparison.Ordinal));
        to.WriteString("type", "object");
        to.WriteStartObject("properties");
        foreach (ScenarioKey key in section.Keys)
        {
            to.WritePropertyName(key.Name);
            KeySchema.Write(key, to);
            if (key.OldName is not { } old)
                continue;
            to.WritePropertyName(old);
            KeySchema.Write(key, to, renamed: true);
        }

        foreach (ScenarioSection below in section.Below)
            WriteSection(below, to);
        to.WriteEndObject();
        to.WriteStartArray("required");
        foreach (string needed in section.Keys.Where(k => k.IsNeeded).Select(k => k.Name)
            .Concat(section.Below.Where(b => b.IsNeeded).Select(b => b.Name)).Except(section.Ways.SelectMany(w => w)))
            to.WriteStringValue(needed);
        to.WriteEndArray();
        to.WriteBoolean("additionalProperties", false);
    }

    private static void WriteDefinitions(Utf8JsonWriter to)
    {
        to.WriteStartObject("$defs");
        foreach (Dimension dimension in Enum.GetValues<Dimension>())
        {
            bool ratio = dimension == Dimension.Ratio;
            to.WriteStartObject(KeySchema.Definition(dimension));
            string units = ratio ? "%, or a part" : string.Join(", ", SpellingTable.Accepted(dimension));
            to.WriteString("description", $"{dimension.Name()}: a number and {units}");
            if (ratio)
            {
                to.WriteStartArray("type");
                to.WriteStringValue("number");
                to.WriteStringValue("string");
                to.WriteEndArray();
            }
            else
            {
                to.WriteString("type", "string");
            }

            to.WriteString("pattern", TextPattern.Quantity(dimension));
            to.WriteStartArray("examples");
            to.WriteStringValue(QuantityExample.Of(dimension));
            to.WriteEndArray();
            to.WriteEndObject();
        }

        to.WriteEndObject();
    }
}
