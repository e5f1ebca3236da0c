using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Nights;

namespace ColdSim.Validation;

/// <summary>The run of a scenario file, read and run as <c>coldsim run</c> does; each file is run once, whoever asks.</summary>
internal sealed class CaseRun
{
    private static readonly ConcurrentDictionary<string, Lazy<CaseRun>> Runs = new();

    private CaseRun(string file)
    {
        ReadResult read = ScenarioReader.Read(Path.Combine(Folder, file));
        Scenario = read.Scenario ?? throw new InvalidOperationException(string.Join('\n', read.Problems));
        Report = NightRun.Of(Scenario);
    }

    /// <summary>The folder of the scenario files.</summary>
    public static string Folder => Path.Combine(Here(), "Scenarios");

    public Scenario Scenario { get; }

    public RunReport Report { get; }

    /// <summary>The run of a file.</summary>
    /// <param name="file">Its path below <see cref="Folder"/>.</param>
    public static CaseRun Of(string file) => Runs.GetOrAdd(file, f => new(() => new CaseRun(f))).Value;

    /// <summary>The sample of the curves at so many seconds after the start.</summary>
    public static int Sample(double seconds) => (int)Math.Round(seconds / RunSeries.Spacing_s);

    /// <summary>Gas that left the cylinders between two samples. [kg]</summary>
    public double Gas_kg(int from, int to) => Report.Series.Propane_kg[from] - Report.Series.Propane_kg[to];

    /// <summary>Mean inside temperature of each whole hour from the start on. [°C]</summary>
    public double[] HourlyInside_C(int hours)
        => [.. Enumerable.Range(0, hours).Select(h => Mean(Report.Series.Inside_K, 60 * h, 60 * (h + 1)) - 273.15)];

    /// <summary>Mean of a curve between two samples, by the trapezoidal rule.</summary>
    public static double Mean(double[] curve, int from, int to)
    {
        double sum = (curve[from] + curve[to]) / 2;
        for (int i = from + 1; i < to; i++) sum += curve[i];
        return sum / (to - from);
    }

    private static string Here([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;
}
