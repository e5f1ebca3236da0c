using System.Text.Json;
using ColdSim.App.Commands;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Services;
using ColdSim.Tests.Files.Weather;
using ColdSim.Tests.Files.Weather.Services;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public sealed class ForecastCommandTests : IAsyncLifetime, IDisposable
{
    private static readonly DateTimeOffset Now = ServiceAnswers.Start.AddMinutes(10);

    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-forecast-").FullName;
    private ReplayServer _server = null!;

    public async Task InitializeAsync() => _server = await ReplayServer.StartAsync();

    public async Task DisposeAsync() => await _server.DisposeAsync();

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string File(string name) => Path.Combine(_folder, name);

    private Shell Run(int code, DateTimeOffset? now, params string[] words)
    {
        Shell shell = new() { Clock = new FixedClock(now ?? Now), Cache = File("cache"), Settings = File("settings") };
        int ended = shell.Run(["forecast", "--out", File("f.csv"), "--address", _server.Address.ToString(), .. words]);
        Assert.True(code == ended, shell.Error);
        return shell;
    }

    private string Shown(string text) => text.Replace(_folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal)
        .Replace(_server.Address.Authority, "127.0.0.1:PORT", StringComparison.Ordinal);

    private ReplayServer Nws() => _server
        .On("/points/46.2,-94.1", ReplayServer.Json(ServiceAnswers.NwsPoint(_server.Address), ("Cache-Control", "max-age=7200")))
        .On("/gridpoints/XYZ/57,101/forecast/hourly", ReplayServer.Json(ServiceAnswers.NwsHourly(), ("Cache-Control", "max-age=1800")));

    private static readonly string[] AskNws = ["--at", "46.2,-94.1", "--from", "nws", "--contact", "you@example.org"];

    [Fact]
    public void An_answer_and_its_file_look_like_this()
    {
        Nws();
        Shell shell = Run(0, null, AskNws);
        string[] csv = System.IO.File.ReadAllLines(File("f.csv"));
        Snapshot.Match(Shown(shell.Error + "-----\n" + shell.Out + "-----\n" + string.Join('\n', csv.Take(16)) + "\n"));
        Assert.All(shell.Out.Split('\n'), l => Assert.True(l.Length <= 80, l));
        Assert.Equal(156, Samples.Good(System.IO.File.ReadAllText(File("f.csv"))).Rows.Count);
    }

    [Fact]
    public void What_is_sent_is_said_first_and_only_if_it_is_sent()
    {
        Nws();
        string sent = $"sending the position 46.2, -94.1 to {_server.Address.Authority} (US National Weather Service), with the contact you@example.org\n";
        Assert.StartsWith(sent, Run(0, null, AskNws).Error, StringComparison.Ordinal);
        Shell again = Run(0, Now.AddMinutes(20), AskNws);
        Assert.DoesNotContain("sending", again.Error, StringComparison.Ordinal);
        Assert.Contains("It was fetched 20 min ago; there is nothing newer yet, so the service was not asked again.", Unbroken(again.Out), StringComparison.Ordinal);
        Assert.Equal(2, _server.Received.Count);
        Assert.Equal(["coldsim/0.1.0 (you@example.org)"], _server.Received.Select(r => r.Headers["User-Agent"]).Distinct());
    }

    [Fact]
    public async Task Without_a_network_the_kept_forecast_is_written_with_its_age()
    {
        Nws();
        Run(0, null, AskNws);
        System.IO.File.Delete(File("f.csv"));
        await _server.DisposeAsync();
        Shell shell = Run(0, Now.AddHours(5), AskNws);
        Assert.Contains("It is not new: it was fetched 5 h ago.", Unbroken(shell.Out), StringComparison.Ordinal);
        Assert.Contains(
            "warning: no new forecast: 127.0.0.1 cannot be reached; there is no network, or it blocks the way; this one was fetched 5 h ago\n", shell.Error, StringComparison.Ordinal);
        Assert.Contains("# Fetched: 2031-01-14T22:10+00:00", System.IO.File.ReadAllText(File("f.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_network_and_without_a_kept_one_nothing_is_written()
    {
        await _server.DisposeAsync();
        Shell shell = Run(2, null, AskNws);
        Assert.EndsWith(
            "coldsim: no forecast: 127.0.0.1 cannot be reached; there is no network, or it blocks the way\n"
            + "coldsim: nothing was written; a weather file of your own goes with --weather FILE\n",
            shell.Error,
            StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
        Assert.False(System.IO.File.Exists(File("f.csv")));
    }

    [Fact]
    public async Task An_interrupt_ends_it_and_leaves_the_file_that_was_there()
    {
        string before = "# From a.json, US weather service hourly forecast, JSON.\ntime,air [°C]\n2031-01-14T16:00-06:00,-1\n2031-01-14T17:00-06:00,-1\n";
        await System.IO.File.WriteAllTextAsync(File("f.csv"), before);
        using CancellationTokenSource source = new();
        _server.On("/points/46.2,-94.1", context =>
        {
            source.Cancel();
            return ReplayServer.Never(context);
        });
        Shell shell = new() { Clock = new FixedClock(Now) };
        Assert.Equal(130, await shell.RunAsync(["forecast", "--out", File("f.csv"), "--address", _server.Address.ToString(), .. AskNws], source.Token));
        Assert.EndsWith("coldsim: interrupted\n", shell.Error, StringComparison.Ordinal);
        Assert.Equal(before, await System.IO.File.ReadAllTextAsync(File("f.csv")));
    }

    [Fact]
    public void A_file_of_somebody_else_is_refused_before_anything_is_sent()
    {
        Nws();
        System.IO.File.WriteAllText(File("f.csv"), "mine\n");
        Assert.Contains("does not look like weather that coldsim wrote", Run(2, null, AskNws).Error, StringComparison.Ordinal);
        Assert.Empty(_server.Received);
        Run(0, null, [.. AskNws, "--force"]);
        Run(0, null, AskNws);
    }

    [Theory]
    [InlineData("--at: '46.2' is not a position; accepted: latitude and longitude in degrees with a comma between", "--at", "46.2")]
    [InlineData("--at: 'Brainerd' is not a position", "--at", "Brainerd")]
    [InlineData("--at: '46,2,-94,1' has decimal commas; write decimals with a point: 46.2,-94.1", "--at", "46,2,-94,1")]
    [InlineData("--at: '-94.1,46.2' has no such latitude; latitude comes first, so perhaps 46.2,-94.1", "--at", "-94.1,46.2")]
    [InlineData("--at: '46.2,194.1' has no such longitude; accepted: -180 to 180", "--at", "46.2,194.1")]
    [InlineData("--from: there is no service 'openmeteo'; did you mean 'open-meteo'?", "--at", "46.2,-94.1", "--from", "openmeteo")]
    [InlineData("--days takes a whole number from 1 to 16, not '17'", "--at", "46.2,-94.1", "--days", "17")]
    [InlineData(
        "--past-days: MET Norway gives no past days; open-meteo does (--from open-meteo)",
        "--at", "46.2,-94.1", "--from", "met-norway", "--past-days", "1", "--contact", "you@example.org")]
    [InlineData("MET Norway asks everybody for a contact, an e-mail address or a web page; give --contact you@example.org, or write under [forecast] in ", "--at", "46.2,-94.1", "--from", "met-norway")]
    [InlineData("--contact: 'you there' cannot be sent; accepted: an e-mail address or a web page", "--at", "46.2,-94.1", "--contact", "you there")]
    [InlineData("--contact: 'a@b.c␍␊X: 1' cannot be sent", "--at", "46.2,-94.1", "--contact", "a@b.c\r\nX: 1")]
    [InlineData("--address: 'weather' is not the address of a server", "--at", "46.2,-94.1", "--address", "weather")]
    [InlineData("--address: 'file:///etc' is not the address of a server", "--at", "46.2,-94.1", "--address", "file:///etc")]
    [InlineData("--offset takes an offset from UTC such as \"-06:00\" or Z, not 'noon'", "--at", "46.2,-94.1", "--offset", "noon")]
    [InlineData("--at", "--days", "3")]
    public void What_is_wrong_is_reported_and_nothing_is_sent(string message, params string[] words)
    {
        Shell shell = new() { Clock = new FixedClock(Now), Settings = File("settings") };
        Assert.Equal(2, shell.Run(["forecast", "--out", File("f.csv"), .. words]));
        Assert.Contains(message, shell.Error, StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
        Assert.False(System.IO.File.Exists(File("f.csv")));
    }

    [Fact]
    public void Contact_and_service_may_be_in_the_settings()
    {
        Nws();
        Directory.CreateDirectory(File("settings/coldsim"));
        System.IO.File.WriteAllText(File("settings/coldsim/settings.toml"), "[forecast]\ncontact = \"https://example.org/me\"\nfrom = \"nws\"\n");
        Run(0, null, "--at", "46.2 N, 94.1 W");
        Assert.Equal("coldsim/0.1.0 (https://example.org/me)", _server.Received[0].Headers["User-Agent"]);
    }

    [Theory]
    [InlineData("[forecast]\ncontakt = \"a@b.c\"\n", ":2:1: unknown key 'contakt' in [forecast]; did you mean 'contact'?")]
    [InlineData("[forecast]\ncontact = \"a b\"\n", ":2:1: 'contact' is \"a b\"; accepted: an e-mail address or a web page")]
    [InlineData("[forecast]\nfrom = \"metno\"\n", "from in your settings: there is no service 'metno'")]
    [InlineData("[forecast\n", "settings.toml:1:")]
    public void Wrong_settings_are_reported_with_their_place(string text, string message)
    {
        Directory.CreateDirectory(File("settings/coldsim"));
        System.IO.File.WriteAllText(File("settings/coldsim/settings.toml"), text);
        Assert.Contains(message, Run(2, null, "--at", "46.2,-94.1").Error, StringComparison.Ordinal);
        Assert.Empty(_server.Received);
    }

    [Fact]
    public void What_is_past_is_not_the_coldest_to_come()
    {
        _server.On("/v1/forecast", ReplayServer.Json(ServiceAnswers.OpenMeteo(2).Replace("[-21.1,", "[-60.0,", StringComparison.Ordinal)));
        Assert.StartsWith("COLDEST: -20 °F on Wed 15 Jan 07:00.\n", Run(0, null, "--at", "46.2,-94.1").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "Next: coldsim tonight --weather ")]
    [InlineData(5, "Next: coldsim tonight --now --weather ")]
    [InlineData(13, "Next: coldsim tonight --now --weather ")]
    [InlineData(16, "Next: coldsim tonight --weather ")]
    public void In_the_night_a_forecast_without_past_hours_is_for_now(int hour, string next)
    {
        _server.On("/points/46.2,-94.1", ReplayServer.Json(ServiceAnswers.NwsPoint(_server.Address)))
            .On("/gridpoints/XYZ/57,101/forecast/hourly", ReplayServer.Json(ServiceAnswers.NwsHourly(100, first: hour)));
        Assert.Contains(next, Run(0, ServiceAnswers.Start.AddHours(hour).AddMinutes(20), AskNws).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task While_it_waits_it_says_for_whom()
    {
        _server.On("/points/46.2,-94.1", ReplayServer.Never);
        using CancellationTokenSource source = new();
        Shell shell = new() { Terminal = true, Clock = new HastyClock { Later = TimeSpan.FromMilliseconds(20) } };
        shell.WhileWaiting = () =>
        {
            if (shell.ErrorSoFar.Contains(" s, asking 127.0.0.1", StringComparison.Ordinal))
                source.Cancel();
        };
        string[] words = ["forecast", "--out", File("f.csv"), "--address", _server.Address.ToString(), .. AskNws];
        Assert.Equal(130, await shell.RunAsync(words, source.Token));
        Assert.EndsWith("coldsim: interrupted\n", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_service_that_will_end_is_warned_of()
    {
        _server.On("/v1/forecast", ReplayServer.Text(203, "application/json", ServiceAnswers.OpenMeteo()));
        Assert.Contains("warning: Open-Meteo says that it will end this kind of answer soon", Run(0, null, "--at", "46.2,-94.1").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_one_document()
    {
        Nws();
        using JsonDocument json = JsonDocument.Parse(Run(0, null, [.. AskNws, "--json"]).Out);
        Assert.Equal("nws", json.RootElement.GetProperty("format").GetString());
    }

    [Fact]
    public void The_words_of_the_option_are_the_services() => Assert.Equal(ForecastServices.All.Select(s => s.Name), ForecastOptions.Services);

    private static string Unbroken(string text) => text.ReplaceLineEndings(" ");
}
