using System.Globalization;

namespace ColdSim.Files.Weather.Services;

/// <summary>What a failure of the network means, in words.</summary>
internal static class NetworkTrouble
{
    /// <summary>The fault of a request that got no whole answer.</summary>
    public static ForecastFaultException Fault(HttpRequestException e, Uri address, ClientPolicy policy) => e.HttpRequestError switch
    {
        HttpRequestError.NameResolutionError => No(
            $"the name {address.Host} cannot be looked up; there is no network, or it has no name server", e),
        HttpRequestError.ConnectionError => No($"{address.Host} cannot be reached; there is no network, or it blocks the way", e),
        HttpRequestError.SecureConnectionError => No(
            $"no secure connection to {address.Host}: a network that asks for a log-in first does that (open a browser, log in), "
            + "or a wrong date on this computer",
            e),
        HttpRequestError.ProxyTunnelError => No($"the proxy that this computer is set to does not lead to {address.Host}", e),
        HttpRequestError.ConfigurationLimitExceeded => ForecastFaultException.NotTheService(string.Create(
            CultureInfo.InvariantCulture,
            $"{address.Host} sends more than {policy.LargestAnswer >> 20} MB, which is no forecast; try another service with --from")),
        HttpRequestError.ResponseEnded or HttpRequestError.InvalidResponse => No($"the answer of {address.Host} broke off", e),

        // A connection that is reset while the answer comes has no kind of its own.
        _ when e.InnerException is IOException => No($"the answer of {address.Host} broke off", e),
        _ => No($"{address.Host} could not be asked: the connection failed", e),
    };

    private static ForecastFaultException No(string message, Exception e) => ForecastFaultException.NoAnswer(message, e);
}
