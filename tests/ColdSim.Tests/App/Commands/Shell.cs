using System.Text;
using ColdSim.App.Commands;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Physics.Propane;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Text;
using ColdSim.Tests.Planning.Compare;
using ColdSim.Tests.Planning.Ensemble;
using ColdSim.Tests.Planning.Limits;

namespace ColdSim.Tests.App.Commands;

/// <summary>Runs command lines in this process, with captured output and stand-ins for the rest of the program.</summary>
internal sealed class Shell
{
    private StringWriter? _error;

    public const string Document = "{\"invented\":true}\n";

    /// <summary>A file that exists, because the commands look before they read.</summary>
    public static string AnyFile { get; } = typeof(Shell).Assembly.Location;

    public Parts Parts { get; set; } = AlgebraicState;

    public TimeProvider Clock { get; set; } = TimeProvider.System;

    public bool Terminal { get; set; }

    public string Out { get; private set; } = "";

    public string Error { get; private set; } = "";

    /// <summary>Whether a run that is still going has put something on standard error.</summary>
    public bool HasComplained => _error?.GetStringBuilder().Length > 0;

    public static Parts AlgebraicState { get; } = new()
    {
        ReadScenario = _ => new(InventedRuns.Scenario, [], []),
        ReadDemo = () => new(InventedRuns.Scenario with { Title = "Demo" }, [], []),
        ReadWeather = (_, _, _) => throw new NotSupportedException(),
        Run = (scenario, _) => InventedRuns.Report([InventedRuns.Holds], [], scenario),
        Compare = (_, _, _, _) => HandRows.Several,
        RunTrip = (scenario, finished, cancel) => ColdSim.Planning.Trips.TripRun.Of(scenario, finished, cancel: cancel),
        WriteTripJson = (_, stream) => stream.Write(Encoding.UTF8.GetBytes(Document)),
        WriteTripCsv = (_, writer) => writer.WriteLine("night,invented"),
        Chance = (_, _, _, _, _) => HandChances.Report,
        WriteChanceJson = (_, stream) => stream.Write(Encoding.UTF8.GetBytes(Document)),
        WriteCompareJson = (_, stream) => stream.Write(Encoding.UTF8.GetBytes(Document)),
        WriteCompareCsv = (_, writer) => writer.WriteLine("rank,invented"),
        Limits = (_, _, _, _, _) => HandLimits.Chart,
        WriteLimitsJson = (_, stream) => stream.Write(Encoding.UTF8.GetBytes(Document)),
        WriteLimitsCsv = (_, writer) => writer.WriteLine("limits,invented"),
        Freeze = ColdSim.Planning.Freezing.FreezeOutlook.Of,
        WriteFreezeJson = (_, stream) => stream.Write(Encoding.UTF8.GetBytes(Document)),
        Explain = (scenario, at, _, _) => ColdSim.Planning.Explain.Explanation.Of(scenario, at),
        WriteExplainJson = (_, stream) => stream.Write(Encoding.UTF8.GetBytes(Document)),
        WriteJson = (_, stream) => stream.Write(Encoding.UTF8.GetBytes(Document)),
        WriteCsv = (_, writer) => writer.WriteLine("time,invented"),
        WriteFile = AtomicFile.Write,
        WriteStarter = path =>
        {
            File.WriteAllText(path, "# invented starter\n");
            return "beside.csv";
        },
        FindCylinder = name => name is "20 lb" or "20lb" ? InventedRuns.Rig.Cylinders[0] : null,
        CylinderNames = () => ["20 lb"],
        Propane = t_K => new(
            PropaneSaturation.Pressure_Pa(t_K), PropaneSaturation.LiquidDensity_kg_m3(t_K),
            PropaneSaturation.VapourDensity_kg_m3(t_K), PropaneSaturation.LatentHeat_J_kg(t_K)),
        Show = (_, _, _) => 0,
        Cautions = () => ["An invented caution."],
    };

    public int Run(params string[] words) => RunAsync(words, CancellationToken.None).GetAwaiter().GetResult();

    public async Task<int> RunAsync(string[] words, CancellationToken cancel)
    {
        using MemoryStream output = new();
        using StringWriter error = new() { NewLine = "\n" };
        _error = error;
        int code;
        using (Host host = new(output, error, Parts)
        {
            Clock = Clock,
            OutIsTerminal = Terminal,
            ErrorIsTerminal = Terminal,
            CanShow = Terminal,
            Color = Terminal,
        })
        {
            code = await CommandLine.RunAsync(words, host, cancel);
        }

        Out = Encoding.UTF8.GetString(output.ToArray());
        Error = error.ToString();
        return code;
    }

    /// <summary>A shell whose runs end in this report, whatever is asked.</summary>
    public static Shell Ending(RunReport report) => new() { Parts = AlgebraicState with { Run = (_, _) => report } };

    /// <summary>A shell that keeps the scenario it was asked to run.</summary>
    public static Shell Keeping(Action<Scenario> keep) => new()
    {
        Parts = AlgebraicState with
        {
            Run = (scenario, _) =>
            {
                keep(scenario);
                return InventedRuns.Report([InventedRuns.Holds], [], scenario);
            },
        },
    };
}
