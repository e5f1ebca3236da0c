using System.Globalization;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace ColdSim.Benchmarks;

/// <summary>What one run of something cost.</summary>
/// <param name="WallMilliseconds">The least of all samples, which others on the machine disturb least.</param>
/// <param name="ProcessorMilliseconds">The mean of all samples, over all threads; null where it was not measured.</param>
/// <param name="AllocatedBytes">The mean of all samples; null where it was not measured.</param>
internal sealed record Cost(double WallMilliseconds, double? ProcessorMilliseconds, double? AllocatedBytes);

/// <summary>The figures kept beside the benchmarks, and the machine they were measured on.</summary>
internal sealed record Baseline(string Machine, string Date, SortedDictionary<string, Cost> Figures)
{
    private static readonly JsonSerializerOptions Format = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static Baseline? Read() => File.Exists(Path()) ? JsonSerializer.Deserialize<Baseline>(File.ReadAllText(Path()), Format) : null;

    public static Baseline Of(SortedDictionary<string, Cost> figures)
        => new(ThisMachine(), DateTimeOffset.Now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), figures);

    public void Write() => File.WriteAllText(Path(), JsonSerializer.Serialize(this, Format) + "\n");

    private static string ThisMachine()
    {
        const string Processors = "/proc/cpuinfo";
        string? model = File.Exists(Processors)
            ? File.ReadLines(Processors).FirstOrDefault(l => l.StartsWith("model name", StringComparison.Ordinal))?.Split(':', 2)[1].Trim()
            : null;
        double memory_GiB = GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / (1024.0 * 1024 * 1024);
        return FormattableString.Invariant(
            $"{Environment.ProcessorCount} cores of {model ?? RuntimeInformation.ProcessArchitecture.ToString()}, {memory_GiB:0} GiB, {RuntimeInformation.OSDescription}, {RuntimeInformation.FrameworkDescription}");
    }

    private static string Path([CallerFilePath] string here = "") => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(here)!, "baseline.json");
}
