using System.Globalization;
using System.Text;
using ColdSim.Files.Weather.Services;
using ColdSim.Tests.App.Commands;
using Xunit;

namespace ColdSim.Tests.Files.Weather.Services;

/// <summary>How the client asks: again after a failure, no oftener than it may, and with the kept answer where there is no other.</summary>
public sealed class ForecastClientTests : IAsyncLifetime, IDisposable
{
    private const string Good = "{\"good\":true}";
    private static readonly DateTimeOffset Now = ServiceAnswers.Start;

    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-cache-").FullName;
    private ReplayServer _server = null!;

    public async Task InitializeAsync() => _server = await ReplayServer.StartAsync();

    public async Task DisposeAsync() => await _server.DisposeAsync();

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static readonly ClientPolicy Hasty = new() { FirstDelay = TimeSpan.FromMilliseconds(1) };

    private async Task<WebAnswer> GetAsync(DateTimeOffset? now = null, ClientPolicy? policy = null, bool keep = true, CancellationToken cancel = default)
    {
        using ForecastClient client = new(policy ?? Hasty, new AnswerCache(Path.Combine(_folder, "cache")), new FixedClock(now ?? Now), "coldsim/1.2.3 (you@example.org)");
        WebAnswer answer = await client.GetAsync(new Uri(_server.Address, "f?x=1"), cancel);
        if (keep)
            Assert.Null(client.Keep(new ServiceAnswer(answer)));
        return answer;
    }

    private async Task<string> FaultAsync(ClientPolicy? policy = null)
        => (await Assert.ThrowsAsync<ForecastFaultException>(() => GetAsync(policy: policy))).Message;

    private static string Rfc(DateTimeOffset time) => time.ToUniversalTime().ToString("R", CultureInfo.InvariantCulture);

    [Fact]
    public async Task Who_asks_is_said_to_the_service_and_nothing_else_is()
    {
        _server.On("/f", ReplayServer.Json(Good));
        WebAnswer answer = await GetAsync();
        Assert.Equal(Good, Encoding.UTF8.GetString(answer.Body));
        ReceivedRequest request = Assert.Single(_server.Received);
        Assert.Equal("?x=1", request.Query);
        Assert.Equal("coldsim/1.2.3 (you@example.org)", request.Headers["User-Agent"]);
        Assert.Equal(["Accept", "Accept-Encoding", "Host", "User-Agent"], request.Headers.Keys.Order());
        Assert.Contains("gzip", request.Headers["Accept-Encoding"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(500)]
    [InlineData(503)]
    [InlineData(429)]
    [InlineData(408)]
    public async Task A_service_out_of_order_is_asked_again(int status)
    {
        _server.On("/f", ReplayServer.Status(status), ReplayServer.Status(status), ReplayServer.Json(Good));
        await GetAsync();
        Assert.Equal(3, _server.Received.Count);
    }

    [Fact]
    public async Task It_is_asked_three_times_and_no_more()
    {
        _server.On("/f", ReplayServer.Text(500, "application/problem+json", "{\"title\":\"Unexpected Problem\"}"));
        Assert.Equal("127.0.0.1 answers 500: \"Unexpected Problem\"; the service is out of order, ask again later or another one with --from", await FaultAsync());
        Assert.Equal(3, _server.Received.Count);
    }

    [Fact]
    public async Task A_short_wait_that_the_service_asks_for_is_waited()
    {
        _server.On("/f", ReplayServer.Status(429, ("Retry-After", "1")), ReplayServer.Json(Good));
        long begun = TimeProvider.System.GetTimestamp();
        await GetAsync();
        Assert.InRange(TimeProvider.System.GetElapsedTime(begun).TotalSeconds, 0.9, 60);
    }

    [Fact]
    public async Task A_long_wait_is_said_and_not_waited()
    {
        _server.On("/f", ReplayServer.Status(429, ("Retry-After", "600")));
        Assert.Equal("127.0.0.1 answers 429; it was asked too often; it says to wait 10 min", await FaultAsync());
        Assert.Single(_server.Received);
    }

    [Fact]
    public async Task A_refused_question_is_not_asked_again()
    {
        _server.On("/f", ReplayServer.Text(400, "application/json", ServiceAnswers.OpenMeteoRefusal));
        Assert.Equal("127.0.0.1 answers 400: \"Latitude must be in range of -90 to 90°. Given: 100.0.\"; it refuses the question", await FaultAsync());
        Assert.Single(_server.Received);
    }

    [Fact]
    public async Task Half_an_answer_is_asked_for_again_and_never_kept()
    {
        _server.On("/f", ReplayServer.Half(Good), ReplayServer.Json("{\"good\":"), ReplayServer.Half(Good));
        Assert.Equal("the answer of 127.0.0.1 broke off", await FaultAsync());
        Assert.Equal(3, _server.Received.Count);
        Assert.False(Directory.Exists(Path.Combine(_folder, "cache")));
    }

    [Fact]
    public async Task A_service_that_does_not_answer_is_given_up()
    {
        _server.On("/f", ReplayServer.Never);
        Assert.Equal("127.0.0.1 did not answer within 0.2 s; asked 2 times", await FaultAsync(Hasty with { AttemptTimeout = TimeSpan.FromSeconds(0.2), Attempts = 2 }));
    }

    [Fact]
    public async Task An_interrupt_ends_the_asking_at_once()
    {
        using CancellationTokenSource source = new();
        _server.On("/f", context =>
        {
            source.Cancel();
            return ReplayServer.Never(context);
        });
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => GetAsync(cancel: source.Token));
        Assert.Single(_server.Received);
    }

    [Fact]
    public async Task A_log_in_page_is_named_and_not_kept()
    {
        _server.On("/f", ReplayServer.Text(200, "text/html", ServiceAnswers.Portal));
        Assert.Equal(
            "127.0.0.1 answers with a web page instead of a forecast; a network that asks for a log-in first answers so: open a browser, log in, ask again", await FaultAsync());
        Assert.Single(_server.Received);
    }

    [Theory]
    [InlineData("text/csv", "time,air\n", "127.0.0.1 answers with 'text/csv' instead of a forecast in JSON; try another service with --from")]
    [InlineData("application/json", "[1]", "127.0.0.1 answers with 'application/json' instead of a forecast in JSON; try another service with --from")]
    [InlineData("application/json", "", "the answer of 127.0.0.1 is empty")]
    public async Task An_answer_of_another_kind_is_refused(string type, string text, string message)
    {
        _server.On("/f", ReplayServer.Text(200, type, text));
        Assert.Equal(message, await FaultAsync());
    }

    [Fact]
    public async Task A_redirect_within_the_service_is_followed()
    {
        _server.On("/f", ReplayServer.Status(301, ("Location", "/g"))).On("/g", ReplayServer.Json(Good));
        await GetAsync();
        Assert.Equal(["/f", "/g"], _server.Received.Select(r => r.Path));
    }

    [Fact]
    public async Task A_redirect_to_somebody_else_is_not_followed()
    {
        await using ReplayServer other = await ReplayServer.StartAsync();
        other.On("/f", ReplayServer.Json(Good));
        _server.On("/f", ReplayServer.Status(302, ("Location", $"{other.Address}f")));
        Assert.StartsWith($"127.0.0.1 sends us on to {other.Address.Authority}, which is not the service; a network that asks for a log-in", await FaultAsync(), StringComparison.Ordinal);
        Assert.Empty(other.Received);
    }

    [Fact]
    public async Task Redirects_without_end_are_given_up()
    {
        _server.On("/f", ReplayServer.Status(302, ("Location", "/f")));
        Assert.Equal("127.0.0.1 sends us on more than 3 times; try another service with --from", await FaultAsync());
        Assert.Equal(4, _server.Received.Count);
    }

    [Fact]
    public async Task An_endless_answer_is_cut_off()
    {
        _server.On("/f", ReplayServer.Json("{\"a\":\"" + new string('x', 3 << 20) + "\"}"));
        Assert.Equal("127.0.0.1 sends more than 1 MB, which is no forecast; try another service with --from", await FaultAsync(Hasty with { LargestAnswer = 1 << 20 }));
    }

    [Fact]
    public async Task Without_a_network_it_says_so()
    {
        await _server.DisposeAsync();
        Assert.Equal("127.0.0.1 cannot be reached; there is no network, or it blocks the way", await FaultAsync());
    }

    [Fact]
    public async Task A_name_that_cannot_be_looked_up_means_no_network()
    {
        using ForecastClient client = new(Hasty, null, new FixedClock(Now), "coldsim/1.2.3");
        ForecastFaultException fault = await Assert.ThrowsAsync<ForecastFaultException>(() => client.GetAsync(new Uri("http://no-such-host.invalid/"), default));
        Assert.Contains("no-such-host.invalid", fault.Message, StringComparison.Ordinal);
        Assert.True(fault.IsTemporary);
    }

    [Fact]
    public async Task An_answer_that_is_still_the_newest_is_not_asked_for_again()
    {
        // The service's clock is an hour ahead.
        _server.On("/f", ReplayServer.Json(Good, ("Date", Rfc(Now.AddHours(1))), ("Expires", Rfc(Now.AddMinutes(90)))));
        Assert.Equal(AnswerOrigin.Service, (await GetAsync()).Origin);
        Assert.Equal(AnswerOrigin.KeptFresh, (await GetAsync(Now.AddMinutes(29))).Origin);
        Assert.Single(_server.Received);
        await GetAsync(Now.AddMinutes(31));
        Assert.Equal(2, _server.Received.Count);
    }

    [Theory]
    [InlineData("max-age=120", 2, 1.9, 2.1)]
    [InlineData(null, 10, 9.9, 10.1)]
    [InlineData("no-cache", 0, -1, 0.1)]
    public async Task How_long_an_answer_is_new_is_what_the_service_says(string? control, double minutes, double before, double after)
    {
        _server.On("/f", control is null ? ReplayServer.Json(Good) : ReplayServer.Json(Good, ("Cache-Control", control)));
        Assert.Equal(Now.AddMinutes(minutes), (await GetAsync()).ExpiresAt);
        if (before > 0)
            Assert.Equal(AnswerOrigin.KeptFresh, (await GetAsync(Now.AddMinutes(before))).Origin);
        Assert.Equal(AnswerOrigin.Service, (await GetAsync(Now.AddMinutes(after))).Origin);
    }

    [Fact]
    public async Task An_older_answer_is_asked_for_only_if_it_changed_word_for_word_as_the_service_dated_it()
    {
        string modified = Rfc(Now.AddMinutes(-7));
        _server.On(
            "/f",
            ReplayServer.Json(Good, ("Last-Modified", modified), ("ETag", "\"v1\""), ("Cache-Control", "max-age=60")),
            ReplayServer.Status(304, ("Cache-Control", "max-age=600")));
        await GetAsync();
        WebAnswer again = await GetAsync(Now.AddHours(1));
        Assert.Equal((AnswerOrigin.Unchanged, Now.AddHours(1), Now.AddMinutes(70)), (again.Origin, again.CheckedAt, again.ExpiresAt));
        Assert.Equal(Good, Encoding.UTF8.GetString(again.Body));
        Assert.Equal((modified, "\"v1\""), (_server.Received[1].Headers["If-Modified-Since"], _server.Received[1].Headers["If-None-Match"]));
        Assert.Equal(AnswerOrigin.KeptFresh, (await GetAsync(Now.AddMinutes(69))).Origin);
        Assert.Equal(2, _server.Received.Count);
    }

    [Fact]
    public async Task Without_a_network_the_kept_answer_is_given_with_the_reason()
    {
        _server.On("/f", ReplayServer.Json(Good));
        await GetAsync();
        Uri address = new(_server.Address, "f?x=1");
        await _server.DisposeAsync();
        using ForecastClient client = new(Hasty, new AnswerCache(Path.Combine(_folder, "cache")), new FixedClock(Now.AddHours(5)), "coldsim/1.2.3");
        WebAnswer kept = await client.GetAsync(address, default);
        Assert.Equal(
            (AnswerOrigin.KeptInsteadOfNew, Now, "127.0.0.1 cannot be reached; there is no network, or it blocks the way"), (kept.Origin, kept.CheckedAt, kept.Trouble));
    }

    [Fact]
    public async Task A_refused_question_is_not_answered_by_a_kept_answer()
    {
        _server.On("/f", ReplayServer.Json(Good, ("Cache-Control", "max-age=0")), ReplayServer.Status(403));
        await GetAsync();
        Assert.Equal("127.0.0.1 answers 403; it refuses who asks, perhaps for the contact, or the network it comes from", await FaultAsync());
    }

    [Theory]
    [InlineData("not ours")]
    [InlineData("coldsim forecast answer, format 1\naddress: ")]
    [InlineData("")]
    public async Task A_damaged_kept_answer_is_asked_for_anew(string text)
    {
        _server.On("/f", ReplayServer.Json(Good, ("Cache-Control", "max-age=600")));
        await GetAsync();
        string file = Assert.Single(Directory.GetFiles(Path.Combine(_folder, "cache")));
        string whole = await File.ReadAllTextAsync(file);
        foreach (string damaged in (string[])[text, whole[..^3]])
        {
            await File.WriteAllTextAsync(file, damaged);
            Assert.Equal(AnswerOrigin.Service, (await GetAsync()).Origin);
        }

        Assert.Equal(whole, await File.ReadAllTextAsync(file));
    }

    [Fact]
    public async Task A_folder_that_cannot_be_written_is_no_failure()
    {
        _server.On("/f", ReplayServer.Json(Good));
        string file = Path.Combine(_folder, "file");
        await File.WriteAllTextAsync(file, "");
        using ForecastClient client = new(Hasty, new AnswerCache(Path.Combine(file, "cache")), new FixedClock(Now), "coldsim/1.2.3");
        WebAnswer answer = await client.GetAsync(new Uri(_server.Address, "f"), default);
        Assert.NotNull(client.Keep(new ServiceAnswer(answer)));
    }

    [Fact]
    public async Task An_answer_from_the_future_is_not_new_for_ever()
    {
        _server.On("/f", ReplayServer.Json(Good, ("Cache-Control", "max-age=99999999")));
        Assert.Equal(Now.AddDays(1), (await GetAsync()).ExpiresAt);
        Assert.Equal(AnswerOrigin.Service, (await GetAsync(Now.AddHours(-1))).Origin);
    }
}
