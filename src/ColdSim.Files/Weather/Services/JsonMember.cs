using System.Text.Json;

namespace ColdSim.Files.Weather.Services;

/// <summary>One member of a JSON document, by the names on the way to it.</summary>
internal static class JsonMember
{
    /// <summary>A text; null where there is none.</summary>
    public static string? Text(ReadOnlyMemory<byte> document, params ReadOnlySpan<string> path)
    {
        using JsonDocument json = JsonDocument.Parse(document);
        JsonElement element = json.RootElement;
        foreach (string name in path)
        {
            if (element.ValueKind != JsonValueKind.Object || !element.TryGetProperty(name, out element))
                return null;
        }

        return element.ValueKind == JsonValueKind.String ? element.GetString() : null;
    }
}
