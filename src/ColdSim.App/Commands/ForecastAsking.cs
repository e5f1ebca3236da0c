using ColdSim.App.Text.Answers;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Services;
using ColdSim.Model.Weather;
using ColdSim.Physics.Units;

namespace ColdSim.App.Commands;

/// <summary>Asks a weather service for an answer, and says first what is sent to whom.</summary>
/// <param name="inquiry">What is asked.</param>
/// <param name="output">The file that is written.</param>
/// <param name="host">Where the command runs.</param>
internal sealed class ForecastAsking(ForecastInquiry inquiry, string output, Host host)
{
    private ForecastClient? _client;

    /// <summary>What goes behind the time waited; may be asked from another thread.</summary>
    public string Progress => Volatile.Read(ref _client)?.Progress is { Length: > 0 } progress ? $", {progress}" : "";

    /// <summary>The forecast.</summary>
    /// <exception cref="CommandFault">There is none to be had.</exception>
    public ForecastReport Answer(CancellationToken cancel)
    {
        AnswerCache? cache = host.Cache() is { } folder ? new(Path.Combine(folder, "coldsim")) : null;
        HashSet<string> announced = [];
        using ForecastClient client = new(inquiry.Policy, cache, host.Clock, UserAgent())
        {
            BeforeSending = address =>
            {
                if (announced.Add(address.Authority))
                    host.Error.WriteLine(Sends(address));
            },
        };
        Volatile.Write(ref _client, client);
        try
        {
            FetchedForecast forecast = ForecastFetch.AskAsync(inquiry.Service, inquiry.Question, client, host.Clock, cancel)
                .GetAwaiter().GetResult();
            ForecastReport report = Report(forecast);
            if (forecast.Answer.IsDeprecated)
            {
                host.Notices.Add(
                    $"warning: {forecast.Service.Title} says that it will end this kind of answer soon; look for a newer version of coldsim");
            }

            if (forecast.Answer.Trouble is { } trouble)
                host.Notices.Add($"warning: no new forecast: {trouble}; this one was fetched {ForecastAnswer.Ago(report)}");
            return report;
        }
        catch (ForecastFaultException fault)
        {
            throw CommandFault.Input(
                $"coldsim: no forecast: {fault.Message}", "coldsim: nothing was written; a weather file of your own goes with --weather FILE");
        }
    }

    private string UserAgent()
    {
        string agent = $"coldsim/{typeof(ForecastAsking).Assembly.GetName().Version?.ToString(3)}";
        return inquiry.Contact is { } contact ? $"{agent} ({contact})" : agent;
    }

    private string Sends(Uri address)
        => $"sending the position {inquiry.Question.Position} to {address.Authority} ({inquiry.Service.Title})"
            + (inquiry.Contact is { } contact ? $", with the contact {contact}" : "");

    private ForecastReport Report(FetchedForecast forecast)
    {
        WeatherLook look = new(ConversionFactors.ZeroCelsius_K, nights: false);
        TimeSpan clock = forecast.Rows[0].Time.Offset;
        foreach (WeatherRow row in forecast.Rows)
            look.Take(row, clock);
        return new(
            forecast,
            new WeatherFileReport
            {
                File = output,
                Weather = forecast.Weather,
                Counts = look.Has,
                Air = look.Air.Slices,
                Clock = clock,
                Digest = look.Digest,
                Notes = forecast.Notes,
            },
            ForecastComment.Of(forecast),
            host.Clock.GetUtcNow());
    }
}
