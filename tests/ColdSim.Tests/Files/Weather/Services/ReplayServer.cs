using System.Collections.Concurrent;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace ColdSim.Tests.Files.Weather.Services;

/// <summary>A request as it arrived.</summary>
internal sealed record ReceivedRequest(string Path, string Query, IReadOnlyDictionary<string, string> Headers);

/// <summary>A web server on this computer that gives the answers it was given, one after the other; the last is repeated.</summary>
internal sealed class ReplayServer : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly ConcurrentDictionary<string, ConcurrentQueue<RequestDelegate>> _answers = new(StringComparer.Ordinal);
    private readonly ConcurrentQueue<ReceivedRequest> _received = [];

    private ReplayServer(WebApplication app) => _app = app;

    /// <summary>Where it listens.</summary>
    public Uri Address { get; private set; } = null!;

    /// <summary>What was asked so far.</summary>
    public IReadOnlyList<ReceivedRequest> Received => [.. _received];

    public static async Task<ReplayServer> StartAsync()
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        ReplayServer server = new(builder.Build());
        server._app.Run(server.AnswerAsync);
        await server._app.StartAsync();
        server.Address = new Uri(server._app.Urls.First() + "/");
        return server;
    }

    /// <summary>Adds answers to a path.</summary>
    public ReplayServer On(string path, params RequestDelegate[] answers)
    {
        ConcurrentQueue<RequestDelegate> queue = _answers.GetOrAdd(path, _ => []);
        foreach (RequestDelegate answer in answers)
            queue.Enqueue(answer);
        return this;
    }

    /// <summary>A document in JSON.</summary>
    public static RequestDelegate Json(string text, params (string Name, string Value)[] headers) => Text(200, "application/json; charset=utf-8", text, headers);

    /// <summary>Any text with any status.</summary>
    public static RequestDelegate Text(int status, string type, string text, params (string Name, string Value)[] headers) => async context =>
    {
        Head(context, status, type, headers);
        await context.Response.WriteAsync(text);
    };

    /// <summary>A status without a body.</summary>
    public static RequestDelegate Status(int status, params (string Name, string Value)[] headers) => context =>
    {
        Head(context, status, null, headers);
        return Task.CompletedTask;
    };

    /// <summary>Half of a document whose length was announced, then the end of the connection.</summary>
    public static RequestDelegate Half(string text) => async context =>
    {
        Head(context, 200, "application/json", []);
        context.Response.ContentLength = text.Length;
        await context.Response.WriteAsync(text[..(text.Length / 2)]);
        await context.Response.Body.FlushAsync();
        context.Abort();
    };

    /// <summary>Nothing, for as long as anybody waits.</summary>
    public static async Task Never(HttpContext context)
    {
        try
        {
            await Task.Delay(Timeout.Infinite, context.RequestAborted);
        }
        catch (OperationCanceledException)
        {
            // The client gave up.
        }
    }

    public ValueTask DisposeAsync() => _app.DisposeAsync();

    private static void Head(HttpContext context, int status, string? type, (string Name, string Value)[] headers)
    {
        context.Response.StatusCode = status;
        if (type is not null)
            context.Response.ContentType = type;
        foreach ((string name, string value) in headers)
            context.Response.Headers[name] = value;
    }

    private Task AnswerAsync(HttpContext context)
    {
        _received.Enqueue(new(
            context.Request.Path, context.Request.QueryString.Value ?? "", context.Request.Headers.ToDictionary(h => h.Key, h => h.Value.ToString(), StringComparer.OrdinalIgnoreCase)));
        if (!_answers.TryGetValue(context.Request.Path, out ConcurrentQueue<RequestDelegate>? queue))
            return Status(404)(context);
        bool more = queue.Count > 1;
        return more && queue.TryDequeue(out RequestDelegate? next) ? next(context) : queue.TryPeek(out RequestDelegate? last) ? last(context) : Status(404)(context);
    }
}
