using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files;
using ColdSim.Tests.Files.Weather.Services;
using Xunit;

namespace ColdSim.Tests.Docs;

/// <summary>What docs/forecast.md and the README show of <c>coldsim forecast</c>, from a server on this computer.</summary>
[Trait("Category", "Docs")]
public sealed class ForecastPageTests : IAsyncLifetime, IDisposable
{
    private const int ShownRows = 3;
    private static readonly DateTimeOffset Now = ServiceAnswers.Start.AddMinutes(10);

    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-forecast-page-").FullName;
    private ReplayServer _server = null!;

    public async Task InitializeAsync()
    {
        _server = await ReplayServer.StartAsync();
        _server.On("/v1/forecast", ReplayServer.Json(ServiceAnswers.OpenMeteo()));
    }

    public async Task DisposeAsync() => await _server.DisposeAsync();

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Csv => Path.Combine(_folder, "forecast.csv");

    private static Shell Run(params string[] words)
    {
        Shell shell = new() { Clock = new FixedClock(Now) };
        int code = shell.Run(words);
        Assert.True(code is 0 or 1, shell.Error);
        return shell;
    }

    private Shell Fetch() => Run("forecast", "--at", "46.2,-94.1", "--address", _server.Address.ToString(), "--out", Csv);

    private string Shown(string text) => text.Replace(_folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal)
        .Replace($"http://{_server.Address.Authority}", "https://api.open-meteo.com", StringComparison.Ordinal)
        .Replace(_server.Address.Authority, "api.open-meteo.com", StringComparison.Ordinal).Replace("127.0.0.1", "api.open-meteo.com", StringComparison.Ordinal);

    private static string Block(string text) => $"```\n{text.TrimEnd('\n')}\n```";

    [Fact]
    public void The_page_shows_what_the_command_prints_and_writes()
    {
        Shell shell = Fetch();
        string[] said = shell.Error.Split('\n', 2);
        string[] csv = File.ReadAllLines(Csv);
        int rows = Array.FindIndex(csv, l => !l.StartsWith('#')) + 1 + ShownRows;
        GeneratedPage.AssertCurrent("forecast.md", new Dictionary<string, string>
        {
            ["forecast answer"] = Block(Shown($"$ coldsim forecast --at 46.2,-94.1\n{said[0]}\n{shell.Out}{said[1]}")),
            ["forecast file"] = Block(Shown(string.Join('\n', csv.Take(rows)))),
        });
    }

    [Fact]
    public void The_readmes_two_commands_answer_for_a_position()
    {
        string readme = File.ReadAllText(Path.Combine(DocPage.Scenarios, "..", "README.md"));
        const string first = "forecast --at 46.2,-94.1", second = "tonight --rig scenarios/cold-snap.toml --weather forecast.csv";
        Assert.Contains($"\n    coldsim {first}\n    coldsim {second}\n", readme, StringComparison.Ordinal);
        Run([.. DocsCommand.Words(first), "--address", _server.Address.ToString(), "--out", Csv]);
        string[] words = [.. DocsCommand.Words(second).Select(w => w == "forecast.csv" ? Csv : w)];
        Assert.Matches("^(HOLDS|FAILS) Tuesday night, 14 to 15 January", Run(words).Out);
        Assert.Matches(@"\nTue 14 Jan\s+-20 ", Run([.. words, "--full"]).Out);
    }
}
