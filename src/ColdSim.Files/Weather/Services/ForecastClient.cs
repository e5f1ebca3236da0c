using System.Globalization;
using System.Net;
using Polly;
using Polly.Retry;
using Polly.Timeout;

namespace ColdSim.Files.Weather.Services;

/// <summary>
/// Asks services over the network: with time-outs, again after a failure, and no oftener than they allow. The only code of the program that
/// sends anything anywhere.
/// </summary>
internal sealed class ForecastClient : IDisposable
{
    private readonly ClientPolicy _policy;
    private readonly AnswerCache? _cache;
    private readonly TimeProvider _clock;
    private readonly HttpClient _http;
    private readonly ResiliencePipeline<WebAnswer> _pipeline;
    private string _progress = "";
    private int _attempt;

    /// <summary>A client.</summary>
    /// <param name="policy">How patient it is.</param>
    /// <param name="cache">Answers of earlier times; null keeps none.</param>
    /// <param name="clock">Tells whether a kept answer is still the newest.</param>
    /// <param name="userAgent">Who asks, as the services' terms want to know.</param>
    public ForecastClient(ClientPolicy policy, AnswerCache? cache, TimeProvider clock, string userAgent)
    {
        ArgumentNullException.ThrowIfNull(policy);
        _policy = policy;
        _cache = cache;
        _clock = clock;

        // Redirects are followed here, and only within the service: anybody else would learn the position too.
        SocketsHttpHandler handler = new()
        {
            AllowAutoRedirect = false,
            UseCookies = false,
            AutomaticDecompression = DecompressionMethods.All,
            ConnectTimeout = policy.AttemptTimeout,
        };
        _http = new HttpClient(handler) { Timeout = Timeout.InfiniteTimeSpan, MaxResponseContentBufferSize = policy.LargestAnswer };
        _http.DefaultRequestHeaders.TryAddWithoutValidation("User-Agent", userAgent);
        _pipeline = Pipeline();
    }

    /// <summary>What it is doing, in a few words; may be asked from another thread.</summary>
    public string Progress => Volatile.Read(ref _progress);

    /// <summary>Called once for each server, before anything is sent to it.</summary>
    public Action<Uri> BeforeSending { get; set; } = _ => { };

    /// <summary>The document at an address: the one kept where it is still the newest, else the service's, else the one kept.</summary>
    /// <exception cref="ForecastFaultException">There is none.</exception>
    public async Task<WebAnswer> GetAsync(Uri address, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(address);
        WebAnswer? kept = _cache?.Find(address);
        DateTimeOffset now = _clock.GetUtcNow();
        if (kept is not null && kept.CheckedAt <= now && now < kept.ExpiresAt)
            return kept with { Origin = AnswerOrigin.KeptFresh };
        BeforeSending(address);
        _attempt = 0;
        try
        {
            return await _pipeline.ExecuteAsync(attempt => new ValueTask<WebAnswer>(AttemptAsync(address, kept, attempt)), cancel).ConfigureAwait(false);
        }
        catch (TimeoutRejectedException e)
        {
            string within = string.Create(CultureInfo.InvariantCulture, $"{_policy.AttemptTimeout.TotalSeconds:0.#} s");
            return Instead(kept, ForecastFaultException.NoAnswer($"{address.Host} did not answer within {within}; asked {Times(_policy.Attempts)}", e));
        }
        catch (ForecastFaultException fault) when (fault.IsTemporary)
        {
            return Instead(kept, fault);
        }
    }

    /// <summary>Keeps answers that turned out to be good. What cannot be written is no failure: the next time asks again.</summary>
    /// <param name="answer">What was answered.</param>
    /// <returns>Why it could not be kept; null where it was, or need not be.</returns>
    public string? Keep(ServiceAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        try
        {
            foreach (WebAnswer one in answer.Others.Append(answer.Forecast))
            {
                if (one.Origin is AnswerOrigin.Service or AnswerOrigin.Unchanged)
                    _cache?.Keep(one);
            }

            return null;
        }
        catch (Disk.FileFaultException e)
        {
            return e.Message;
        }
    }

    public void Dispose() => _http.Dispose();

    private static WebAnswer Instead(WebAnswer? kept, ForecastFaultException fault)
        => kept is null ? throw fault : kept with { Origin = AnswerOrigin.KeptInsteadOfNew, Trouble = fault.Message };

    private ResiliencePipeline<WebAnswer> Pipeline()
    {
        ResiliencePipelineBuilder<WebAnswer> builder = new();
        if (_policy.Attempts > 1)
        {
            builder.AddRetry(new RetryStrategyOptions<WebAnswer>
            {
                ShouldHandle = args => ValueTask.FromResult(
                    args.Outcome.Exception is TimeoutRejectedException or ForecastFaultException { MayRetry: true }),
                MaxRetryAttempts = _policy.Attempts - 1,
                BackoffType = DelayBackoffType.Exponential,
                Delay = _policy.FirstDelay,
                DelayGenerator = args => ValueTask.FromResult((args.Outcome.Exception as ForecastFaultException)?.RetryAfter),
                OnRetry = args =>
                {
                    Say(string.Create(CultureInfo.InvariantCulture, $"asking again in {args.RetryDelay.TotalSeconds:0} s"));
                    return ValueTask.CompletedTask;
                },
            });
        }

        return builder.AddTimeout(_policy.AttemptTimeout).Build();
    }

    private async Task<WebAnswer> AttemptAsync(Uri address, WebAnswer? kept, CancellationToken cancel)
    {
        _attempt++;
        string again = _attempt == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $", attempt {_attempt} of {_policy.Attempts}");
        Say($"asking {address.Host}{again}");
        try
        {
            Uri at = address;
            for (int hop = 0; ; hop++)
            {
                using HttpRequestMessage request = Request(at, kept);
                using HttpResponseMessage response = await _http.SendAsync(request, cancel).ConfigureAwait(false);
                if (ServiceResponse.RedirectOf(response, at) is not { } next)
                    return await ServiceResponse.ReadAsync(response, address, kept, _policy, _clock.GetUtcNow(), cancel).ConfigureAwait(false);
                CheckRedirect(at, next, hop);
                at = next;
            }
        }
        catch (HttpRequestException e)
        {
            throw NetworkTrouble.Fault(e, address, _policy);
        }
    }

    private void CheckRedirect(Uri from, Uri to, int hop)
    {
        if (to.Scheme != from.Scheme || to.Authority != from.Authority)
        {
            throw ForecastFaultException.NotTheService(
                $"{from.Host} sends us on to {Quote.Of(to.Authority)}, which is not the service; {ServiceResponse.LogIn}");
        }

        if (hop == _policy.Redirects)
        {
            throw ForecastFaultException.NotTheService(string.Create(
                CultureInfo.InvariantCulture, $"{from.Host} sends us on more than {_policy.Redirects} times; try another service with --from"));
        }
    }

    private static HttpRequestMessage Request(Uri address, WebAnswer? kept)
    {
        HttpRequestMessage request = new(HttpMethod.Get, address);
        request.Headers.TryAddWithoutValidation("Accept", "application/geo+json, application/json");

        // Word for word, because some services compare the text and not the time.
        if (kept?.LastModified is { } modified)
            request.Headers.TryAddWithoutValidation("If-Modified-Since", modified);
        if (kept?.EntityTag is { } tag)
            request.Headers.TryAddWithoutValidation("If-None-Match", tag);
        return request;
    }

    private void Say(string what) => Volatile.Write(ref _progress, what);

    private static string Times(int attempts) => attempts == 1 ? "once" : string.Create(CultureInfo.InvariantCulture, $"{attempts} times");
}
