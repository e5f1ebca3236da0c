using System.CommandLine;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Services;

namespace ColdSim.App.Commands;

/// <summary>What <c>forecast</c> is asked.</summary>
/// <param name="Service">Who is asked.</param>
/// <param name="Question">What is asked.</param>
/// <param name="Contact">How the service can reach the person; null where it is not sent.</param>
/// <param name="Policy">How patient the client is.</param>
internal sealed record ForecastInquiry(IForecastService Service, ForecastQuestion Question, string? Contact, ClientPolicy Policy);

/// <summary>Reads the options of <c>forecast</c> and the person's settings; all faults are reported together.</summary>
internal sealed class ForecastInput(ParseResult parsed, ForecastOptions o, Host host) : OptionInput(parsed)
{
    /// <summary>What is asked.</summary>
    /// <exception cref="CommandFault">Something is wrong with the options or the settings.</exception>
    public ForecastInquiry Inquiry()
    {
        ForecastSettings settings = Settings();
        string? wrong = PositionText.Read(Parsed.GetRequiredValue(o.At)!, out double latitude, out double longitude);
        if (wrong is not null)
            Faults.Add($"--at: {wrong}");
        IForecastService? service = Service(settings);
        int past = (int)(Parsed.GetValue(o.PastDays) ?? 0);
        if (service is not null && past > service.MostPastDays)
            Faults.Add($"--past-days: {service.Title} gives no past days; open-meteo does (--from open-meteo)");
        string? contact = Contact(service, settings);
        ForecastQuestion question = new()
        {
            Latitude_deg = latitude,
            Longitude_deg = longitude,
            Days = (int)(Parsed.GetValue(o.Days) ?? 7),
            PastDays = past,
            Address = Address(),
            Offset = Offset(),
        };
        if (Faults.Count > 0)
            throw CommandFault.Input([.. Faults.Select(f => $"coldsim: {f}"), "See 'coldsim forecast --help'."]);
        ClientPolicy policy = new();
        if (Parsed.GetValue(o.Timeout) is { } seconds)
            policy = policy with { AttemptTimeout = TimeSpan.FromSeconds(seconds) };
        return new(service!, question, contact, policy);
    }

    private ForecastSettings Settings()
    {
        if (UserSettings.Find(host) is not { } path)
            return new(null, null);
        (ForecastSettings? settings, IReadOnlyList<FileProblem> problems) = SettingsFile.Read(path, host.Files.Open);
        return settings ?? throw CommandFault.Input([.. problems.Select(p => p.ToString())]);
    }

    private IForecastService? Service(ForecastSettings settings)
    {
        string? given = Parsed.GetValue(o.From);
        string name = given ?? settings.From ?? ForecastOptions.Services[0];
        if (ForecastServices.Find(name) is { } service)
            return service;
        string hint = NearestName.Of(name, ForecastOptions.Services) is { } nearest ? $"did you mean '{nearest}'?"
            : $"there are {string.Join(", ", ForecastOptions.Services)}";
        Faults.Add($"{(given is null ? "from in your settings" : "--from")}: there is no service '{Quote.Of(name)}'; {hint}");
        return null;
    }

    private string? Contact(IForecastService? service, ForecastSettings settings)
    {
        string? given = Parsed.GetValue(o.Contact)?.Trim();
        if (given is not null && !SettingsFile.IsContact(given))
            Faults.Add($"--contact: '{Quote.Of(given)}' cannot be sent; accepted: {SettingsFile.ContactAccepted}");
        string? contact = given ?? settings.Contact;
        if (service is not { NeedsContact: true })
            return null;
        if (contact is null)
        {
            Faults.Add($"{service.Title} asks everybody for a contact, an e-mail address or a web page; "
                + $"give --contact you@example.org, or write under [forecast] in {UserSettings.PathIn(host) ?? "your settings"}: "
                + "contact = \"you@example.org\"");
        }

        return contact;
    }

    private Uri? Address()
    {
        if (Parsed.GetValue(o.Address) is not { } text)
            return null;
        string whole = text.EndsWith('/') ? text : text + "/";
        if (Uri.TryCreate(whole, UriKind.Absolute, out Uri? address) && address.Scheme is "http" or "https"
            && address.Query.Length + address.UserInfo.Length + address.Fragment.Length == 0)
        {
            return address;
        }

        Faults.Add($"--address: '{Quote.Of(text)}' is not the address of a server; accepted: such as https://weather.example.org");
        return null;
    }

    private TimeSpan? Offset()
    {
        if (Parsed.GetValue(o.Offset) is not { } text)
            return null;
        if (InstantText.TryOffset(text, out TimeSpan offset))
            return offset;
        Faults.Add($"--offset takes an offset from UTC such as \"-06:00\" or Z, not '{Quote.Of(text)}'");
        return null;
    }
}
