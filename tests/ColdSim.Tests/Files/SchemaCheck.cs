using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using ColdSim.Files.Scenarios.Schemas;
using ColdSim.Files.Toml;
using Json.Schema;

namespace ColdSim.Tests.Files;

/// <summary>Holds a scenario's text against the schema, as an editor does.</summary>
internal static class SchemaCheck
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(ScenarioSchema.Text());

    private static readonly EvaluationOptions Options = new() { OutputFormat = OutputFormat.List };

    /// <summary>What the schema has against it: places and messages; none where it fits.</summary>
    public static IReadOnlyList<string> Faults(string toml)
    {
        using JsonDocument document = JsonDocument.Parse(Json(TomlTree.Read(toml, "s.toml", "cylinder").Root)!.ToJsonString());
        EvaluationResults results = Schema.Evaluate(document.RootElement, Options);
        return results.IsValid ? [] :
        [
            .. (results.Details ?? []).Where(d => d.Errors is { Count: > 0 })
                .SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}")).DefaultIfEmpty("it does not fit"),
        ];
    }

    /// <summary>Whether a value of TOML fits at one key.</summary>
    /// <param name="path">The names of the key's sections and its own.</param>
    /// <param name="toml">The value as a file has it.</param>
    public static bool Fits(string path, string toml)
    {
        JsonObject whole = JsonNode.Parse(ScenarioSchema.Text())!.AsObject();
        JsonObject key = Property(whole, path).DeepClone().AsObject();
        key["$defs"] = whole["$defs"]!.DeepClone();
        JsonNode? value = Json(TomlTree.Read($"key = {toml}\n", "s.toml").Root)!["key"];
        using JsonDocument document = JsonDocument.Parse(value?.ToJsonString() ?? "null");
        return JsonSchema.FromText(key.ToJsonString()).Evaluate(document.RootElement).IsValid;
    }

    /// <summary>The schema of one key.</summary>
    public static JsonObject Property(JsonObject schema, string path)
    {
        JsonObject at = schema;
        foreach (string name in path.Split('.'))
        {
            JsonObject table = at.ContainsKey("properties") ? at : at["anyOf"] is JsonArray forms ? forms[0]!.AsObject() : at["items"]!.AsObject();
            at = table["properties"]![name]!.AsObject();
        }

        return at;
    }

    private static JsonNode? Json(TomlValue value) => value switch
    {
        TomlText text => JsonValue.Create(text.Value),
        TomlNumber { Whole: true } whole => JsonValue.Create((long)whole.Value),
        TomlNumber number => double.IsFinite(number.Value) ? JsonValue.Create(number.Value) : JsonValue.Create(number.Written),
        TomlFlag flag => JsonValue.Create(flag.Value),
        TomlDateOrTime time => JsonValue.Create(Written(time)),
        TomlList list => new JsonArray([.. list.Items.Select(Json)]),
        TomlTables tables => new JsonArray([.. tables.Items.Select(t => Json(t))]),
        TomlTable table => new JsonObject(table.Entries.Select(e => KeyValuePair.Create(e.Key, Json(e.Value.Value)))),
        _ => null,
    };

    // Dates and times are texts in JSON.
    private static string Written(TomlDateOrTime time) => time.Value.ToString(
        (time.HasDate, time.HasTime, time.HasOffset) switch
        {
            (true, false, _) => "yyyy-MM-dd",
            (false, _, _) => "HH:mm:ss",
            (_, _, true) => "yyyy-MM-ddTHH:mm:sszzz",
            _ => "yyyy-MM-ddTHH:mm:ss",
        },
        CultureInfo.InvariantCulture);
}
