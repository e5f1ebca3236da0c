using System.Diagnostics;
using System.Text;
using System.Text.Json;
using ColdSim.App.Commands;

namespace ColdSim.Fuzz.Rigs;

/// <summary>What <c>coldsim run --json --fail-if-short</c> answers to a rig, in this process.</summary>
/// <param name="Rig">The rig.</param>
/// <param name="Code">The exit code.</param>
/// <param name="Time">How long it took; of one that is run alone, the processor's time, which other work on the machine does not stretch.</param>
/// <param name="Residual_frac">The ledger's energy residual, per throughput; NaN without an answer.</param>
/// <param name="Fault">What is wrong with the answer; null where nothing is.</param>
internal sealed record RigAnswer(DrawnRig Rig, int Code, TimeSpan Time, double Residual_frac, string? Fault)
{
    /// <summary>Longer than any rig may take.</summary>
    public static TimeSpan Longest { get; } = TimeSpan.FromSeconds(5);

    // A run that never ends is stopped, so that the others are still tried.
    private static readonly TimeSpan GivenUpAfter = TimeSpan.FromSeconds(20);

    // Alone it is measured by the processor's time, which on a busy machine is a small part of what passes.
    private static readonly TimeSpan GivenUpAloneAfter = TimeSpan.FromMinutes(2);

    /// <summary>Runs the real command on a rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="folder">A folder for its two files.</param>
    /// <param name="alone">Whether nothing else is done in this process.</param>
    public static RigAnswer Of(DrawnRig rig, string folder, bool alone = false)
    {
        string path = Write(rig, folder);
        using MemoryStream output = new();
        using StringWriter error = new();
        using CancellationTokenSource source = new(alone ? GivenUpAloneAfter : GivenUpAfter);
        long from = Stopwatch.GetTimestamp();
        TimeSpan before = Environment.CpuUsage.TotalTime;
        int code;
        using (Host host = new(output, error))
            code = Dispatcher.RunAsync(["run", path, "--json", "--fail-if-short", "--no-log"], host, source.Token).GetAwaiter().GetResult();
        TimeSpan time = alone ? Environment.CpuUsage.TotalTime - before : Stopwatch.GetElapsedTime(from);
        if (code is not (0 or 1)) return new(rig, code, time, double.NaN, $"exit code {code}: {error}");
        string? fault = FaultOf(output.ToArray(), out double residual_frac);
        if (time > Longest) fault ??= $"it took {time.TotalSeconds:0.0} s";
        return new(rig, code, time, residual_frac, fault);
    }

    /// <summary>Writes a rig's two files.</summary>
    public static string Write(DrawnRig rig, string folder)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "weather.csv"), rig.Weather);
        string path = Path.Combine(folder, "rig.toml");
        File.WriteAllText(path, rig.Scenario);
        return path;
    }

    // JSON has no word for what is not finite, so a parser refuses it; a text "NaN" would get past it.
    private static string? FaultOf(byte[] json, out double residual_frac)
    {
        residual_frac = double.NaN;
        try
        {
            using JsonDocument document = JsonDocument.Parse(json);
            residual_frac = document.RootElement.GetProperty("ledger").GetProperty("energy_residual").GetDouble();
            return FaultIn(document.RootElement);
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException)
        {
            return "no JSON: " + e.Message + " " + Encoding.UTF8.GetString(json.AsSpan(0, Math.Min(json.Length, 200)));
        }
    }

    private static string? FaultIn(JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty property in element.EnumerateObject())
                {
                    if (FaultIn(property.Value) is { } fault) return $"{property.Name}: {fault}";
                    if (property.Name.EndsWith("_c", StringComparison.Ordinal) && property.Value.ValueKind == JsonValueKind.Number && property.Value.GetDouble() <= -200)
                        return $"{property.Name} is {property.Value}";
                }

                return null;
            case JsonValueKind.Array:
                return element.EnumerateArray().Select(FaultIn).FirstOrDefault(f => f is not null);
            case JsonValueKind.Number:
                return double.IsFinite(element.GetDouble()) ? null : $"{element} is not finite";
            case JsonValueKind.String:
                return element.GetString() is "NaN" or "Infinity" or "-Infinity" ? $"{element} is no number" : null;
            default:
                return null;
        }
    }
}
