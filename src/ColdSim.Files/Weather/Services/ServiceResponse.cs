using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using ColdSim.Files.Weather.Formats;

namespace ColdSim.Files.Weather.Services;

/// <summary>Reads a response of HTTP: a document, nothing newer, or why there is none.</summary>
internal static class ServiceResponse
{
    public const string LogIn = "a network that asks for a log-in first answers so: open a browser, log in, ask again";

    // However long a service says an answer is good, a forecast is asked for anew after a day.
    private static readonly TimeSpan LongestFresh = TimeSpan.FromDays(1);

    /// <summary>The address that a response sends on to; null for any other response.</summary>
    public static Uri? RedirectOf(HttpResponseMessage response, Uri address)
        => (int)response.StatusCode is 301 or 302 or 303 or 307 or 308
            && response.Headers.Location is { } location && Uri.TryCreate(address, location, out Uri? next) ? next : null;

    /// <summary>The document.</summary>
    /// <exception cref="ForecastFaultException">There is none.</exception>
    public static async Task<WebAnswer> ReadAsync(
        HttpResponseMessage response, Uri address, WebAnswer? kept, ClientPolicy policy, DateTimeOffset now, CancellationToken cancel)
    {
        DateTimeOffset expires = Expiry(response, policy, now);
        if (response.StatusCode == HttpStatusCode.NotModified && kept is not null)
        {
            return kept with
            {
                CheckedAt = now,
                ExpiresAt = expires,
                LastModified = Header(response, "Last-Modified") ?? kept.LastModified,
                EntityTag = Header(response, "ETag") ?? kept.EntityTag,
                Origin = AnswerOrigin.Unchanged,
            };
        }

        byte[] body = await response.Content.ReadAsByteArrayAsync(cancel).ConfigureAwait(false);
        if (response.StatusCode is not (HttpStatusCode.OK or HttpStatusCode.NonAuthoritativeInformation))
            throw Refusal(response, address, body, policy, now);
        return new()
        {
            Address = address,
            Body = Document(response, address, body),
            CheckedAt = now,
            ExpiresAt = expires,
            LastModified = Header(response, "Last-Modified"),
            EntityTag = Header(response, "ETag"),
            Origin = AnswerOrigin.Service,
            IsDeprecated = response.StatusCode == HttpStatusCode.NonAuthoritativeInformation,
        };
    }

    private static byte[] Document(HttpResponseMessage response, Uri address, byte[] body)
    {
        ReadOnlySpan<byte> text = body.AsSpan().TrimStart(" \t\r\n\uFEFF"u8);
        if (text.Length == 0)
            throw ForecastFaultException.NoAnswer($"the answer of {address.Host} is empty");
        if (text[0] == '<')
            throw ForecastFaultException.NotTheService($"{address.Host} answers with a web page instead of a forecast; {LogIn}");
        if (text[0] != '{')
        {
            throw ForecastFaultException.NotTheService(
                $"{address.Host} answers with {Kind(response)} instead of a forecast in JSON; try another service with --from");
        }

        if (!IsWhole(text))
            throw ForecastFaultException.NoAnswer($"the answer of {address.Host} broke off");
        return text.ToArray();
    }

    private static bool IsWhole(ReadOnlySpan<byte> json)
    {
        try
        {
            Utf8JsonReader reader = new(json);
            while (reader.Read())
            {
            }

            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static string Kind(HttpResponseMessage response)
        => response.Content.Headers.ContentType?.MediaType is { Length: > 0 } type ? $"'{Quote.Of(type)}'" : "something else";

    private static ForecastFaultException Refusal(
        HttpResponseMessage response, Uri address, byte[] body, ClientPolicy policy, DateTimeOffset now)
    {
        int status = (int)response.StatusCode;
        string why = Reason(body) is { } reason ? $": \"{Quote.Of(reason)}\"" : "";
        string said = string.Create(CultureInfo.InvariantCulture, $"{address.Host} answers {status}{why}");
        TimeSpan? wait = Wait(response.Headers.RetryAfter, now);
        if (status is 408 or >= 500)
        {
            return ForecastFaultException.Busy(
                $"{said}; the service is out of order, ask again later or another one with --from{After(wait)}", wait, policy.LongestWait);
        }

        return status switch
        {
            429 => ForecastFaultException.Busy($"{said}; it was asked too often{After(wait)}", wait, policy.LongestWait),
            407 or 511 => ForecastFaultException.NotTheService($"{said}; {LogIn}"),
            403 => ForecastFaultException.Refused($"{said}; it refuses who asks, perhaps for the contact, or the network it comes from"),
            404 => ForecastFaultException.Refused($"{said}; it has no forecast for this position"),
            _ => ForecastFaultException.Refused($"{said}; it refuses the question"),
        };
    }

    private static string After(TimeSpan? wait)
        => wait is not { } span ? ""
            : span < TimeSpan.FromMinutes(2) ? string.Create(CultureInfo.InvariantCulture, $"; it says to wait {span.TotalSeconds:0} s")
            : string.Create(CultureInfo.InvariantCulture, $"; it says to wait {span.TotalMinutes:0} min");

    // The services say why in a member of a JSON object.
    private static string? Reason(byte[] body)
    {
        try
        {
            using JsonDocument json = JsonDocument.Parse(body);
            foreach (string name in (string[])["detail", "reason", "title", "message"])
            {
                if (json.RootElement.Text(name) is { } text)
                    return text.ReplaceLineEndings(" ").Trim();
            }

            return null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static TimeSpan? Wait(RetryConditionHeaderValue? header, DateTimeOffset now)
        => header?.Delta ?? (header?.Date is { } date ? date > now ? date - now : TimeSpan.Zero : null);

    private static DateTimeOffset Expiry(HttpResponseMessage response, ClientPolicy policy, DateTimeOffset now)
    {
        // By the service's own clock, because this computer's may be wrong.
        CacheControlHeaderValue? control = response.Headers.CacheControl;
        TimeSpan fresh = control?.MaxAge is { } age ? age - (response.Headers.Age ?? TimeSpan.Zero)
            : response.Content.Headers.Expires is { } expires ? expires - (response.Headers.Date ?? now)
            : policy.FreshUnlessTold;
        if (control is { NoCache: true } or { NoStore: true } || fresh < TimeSpan.Zero)
            fresh = TimeSpan.Zero;
        return now + (fresh < LongestFresh ? fresh : LongestFresh);
    }

    private static string? Header(HttpResponseMessage response, string name)
        => response.Headers.NonValidated.TryGetValues(name, out HeaderStringValues values)
            || response.Content.Headers.NonValidated.TryGetValues(name, out values) ? values.ToString() : null;
}
