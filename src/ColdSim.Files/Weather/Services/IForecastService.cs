namespace ColdSim.Files.Weather.Services;

/// <summary>A public service that gives an hourly forecast for a position without a key.</summary>
internal interface IForecastService
{
    /// <summary>Its name on the command line.</summary>
    string Name { get; }

    /// <summary>Its name for people.</summary>
    string Title { get; }

    /// <summary>Its own address.</summary>
    Uri Address { get; }

    /// <summary>The credit and licence that go with its data, in one line.</summary>
    string Licence { get; }

    /// <summary>Whether its terms ask for a way to reach the person who asks.</summary>
    bool NeedsContact { get; }

    /// <summary>The most past days it gives; 0 for a service that begins with the present hour.</summary>
    int MostPastDays { get; }

    /// <summary>Whether it gives sunlight.</summary>
    bool HasSun { get; }

    /// <summary>Whether its times are in UTC and say nothing of the clock at the place.</summary>
    bool IsInUtc { get; }

    /// <summary>Asks for a forecast.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="client">Asks over the network.</param>
    /// <param name="cancel">Ends the asking.</param>
    /// <exception cref="ForecastFaultException">There is no forecast to be had.</exception>
    Task<ServiceAnswer> AskAsync(ForecastQuestion question, ForecastClient client, CancellationToken cancel);
}
