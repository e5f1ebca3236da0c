using System.CommandLine;

namespace ColdSim.App.Commands;

/// <summary>Everything that <c>forecast</c> takes.</summary>
/// <remarks>The services are named as words, so that making the command loads nothing of the network; a test holds them to the services.</remarks>
internal sealed class ForecastOptions
{
    /// <summary>The names of the services.</summary>
    public static readonly string[] Services = ["open-meteo", "nws", "met-norway"];

    public Option<string?> At { get; } = new("--at")
    {
        HelpName = "LAT,LON",
        Description = "The position in degrees, north and east positive, such as 46.2,-94.1. It is sent to the service. "
            + "Names of places are not looked up.",
        Required = true,
    };

    public Option<double?> Days { get; } = CommonOptions.Number(
        "--days", "N", "Days ahead, 1 to 16; services give from 6 to 16. [7]", 1, 16, whole: true);

    public Option<double?> PastDays { get; } = CommonOptions.Number(
        "--past-days", "N", "Days before today as well, up to 14; only open-meteo has them. [0]", 0, 14, whole: true);

    public Option<string?> From { get; } = new Option<string?>("--from")
    {
        HelpName = string.Join('|', Services),
        Description = "Who is asked: Open-Meteo (world), the US National Weather Service, or MET Norway (world). "
            + "[open-meteo, or what your settings say]",
    }.Offering(Services);

    public OutputOption Output { get; } = new(
        CommonOptions.Quantity("--out", "FILE", "The file to write, in our own CSV. [forecast.csv]"), CommonOptions.Force());

    public Option<string?> Offset { get; } = CommonOptions.Quantity(
        "--offset", "HH:MM", "The clock to show as its offset from UTC: \"-06:00\". [the service's; this computer's where it gives UTC]");

    public Option<string?> Contact { get; } = CommonOptions.Quantity(
        "--contact", "TEXT", "How the service can reach you, which nws and met-norway ask for. [what your settings say]");

    public Option<string?> Address { get; } = CommonOptions.Quantity(
        "--address", "URL", "Ask this server instead of the service's own, such as a mirror of it.");

    public Option<double?> Timeout { get; } = CommonOptions.Number(
        "--timeout", "SECONDS", "How long to wait for each of three attempts, 1 to 300. [20]", 1, 300, whole: true);

    public IEnumerable<Option> All => [At, Days, PastDays, From, Output.Path, Output.Force, Offset, Contact, Address, Timeout];
}
