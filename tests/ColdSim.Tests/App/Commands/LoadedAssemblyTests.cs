using System.Diagnostics;
using System.Text;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>What the real program loads, by the runtime's own record: nothing of the network but for the command that asks it.</summary>
public sealed class LoadedAssemblyTests : IDisposable
{
    private const string Loader = "Microsoft-Windows-DotNETRuntime:0x8:4";

    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-loaded-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [Trait("Category", "Slow")]
    [InlineData(false, "run", "COLD-SNAP", "--brief")]
    [InlineData(false, "forecast", "--help")]
    [InlineData(true, "forecast", "--at", "46.2,-94.1", "--address", "http://127.0.0.1:1", "--out", "OUT")]
    public void Only_a_command_that_asks_the_network_loads_it(bool asks, params string[] words)
    {
        string loaded = Loaded([.. words.Select(w => w switch { "COLD-SNAP" => Shell.ColdSnap, "OUT" => Path.Combine(_folder, "f.csv"), _ => w })]);
        Assert.Contains("ColdSim.Files", loaded, StringComparison.Ordinal);
        Assert.Equal(asks, loaded.Contains("Polly.Core", StringComparison.Ordinal));
        Assert.Equal(asks, loaded.Contains("System.Net.Http", StringComparison.Ordinal));
    }

    private string Loaded(string[] words)
    {
        string record = Path.Combine(_folder, "record");
        ProcessStartInfo start = new("dotnet", [Path.Combine(AppContext.BaseDirectory, "coldsim.dll"), .. words])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["DOTNET_EnableEventPipe"] = "1";
        start.Environment["DOTNET_EventPipeConfig"] = Loader;
        start.Environment["DOTNET_EventPipeOutputPath"] = record;
        start.Environment["XDG_CACHE_HOME"] = _folder;
        using Process program = Process.Start(start)!;
        program.StandardOutput.ReadToEnd();
        program.StandardError.ReadToEnd();
        program.WaitForExit();
        return Encoding.Unicode.GetString(Even(File.ReadAllBytes(record), 0)) + Encoding.Unicode.GetString(Even(File.ReadAllBytes(record), 1));
    }

    // A text in the record may begin at an odd byte.
    private static byte[] Even(byte[] bytes, int from) => bytes[from..(from + ((bytes.Length - from) / 2 * 2))];
}
