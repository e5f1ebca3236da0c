using System.Globalization;

namespace ColdSim.Fuzz;

/// <summary>How much is tried, from where on, and where what failed is kept: by environment variables, so that one test run can be made as long as wanted.</summary>
internal static class FuzzOptions
{
    /// <summary>Every draw follows from this and a number.</summary>
    public const int Seed = 20_270_112;

    /// <summary>How many random rigs are run: <c>COLDSIM_FUZZ_RIGS</c>.</summary>
    public static int Rigs { get; } = Number("COLDSIM_FUZZ_RIGS", 300);

    /// <summary>How many damaged files are read: <c>COLDSIM_FUZZ_FILES</c>.</summary>
    public static int Files { get; } = Number("COLDSIM_FUZZ_FILES", 2000);

    /// <summary>The number of the first one: <c>COLDSIM_FUZZ_FIRST</c>. With one rig or file, that one alone.</summary>
    public static int First { get; } = Number("COLDSIM_FUZZ_FIRST", 0);

    /// <summary>The folder in which what failed is kept: <c>COLDSIM_FUZZ_KEEP</c>.</summary>
    public static string Keep { get; } = Environment.GetEnvironmentVariable("COLDSIM_FUZZ_KEEP") ?? Path.Combine(AppContext.BaseDirectory, "failed");

    /// <summary>A file to which the summary is written as well: <c>COLDSIM_FUZZ_REPORT</c>; null for none.</summary>
    public static string? Report { get; } = Environment.GetEnvironmentVariable("COLDSIM_FUZZ_REPORT");

    /// <summary>The random numbers of one case, the same whatever else is tried.</summary>
    public static Random RandomOf(int number) => new(unchecked(Seed * 397 ^ number * 7919));

    private static int Number(string name, int otherwise)
        => int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : otherwise;
}
