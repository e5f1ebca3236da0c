using System.CommandLine;
using ColdSim.Files.Weather;

namespace ColdSim.App.Commands;

/// <summary>Everything that <c>weather</c> takes.</summary>
internal sealed class WeatherOptions
{
    private const int MostNights = 30;

    // How the file is read.
    public Option<string?> From { get; } = CommonOptions.Quantity("--from", "TIME", "Leave out what is before: a date, or a date and time such as 2025-01-14T16:00.");

    public Option<string?> To { get; } = CommonOptions.Quantity("--to", "TIME", "Leave out what is after; a date alone means its end.");

    public Option<string?> Format { get; } = new Option<string?>("--format")
    {
        Description = "Read it as this layout instead of looking.",
        HelpName = string.Join('|', WeatherFormatNames.Choices.Select(c => c.Name)),
    }.Offering(WeatherFormatNames.Choices.Select(c => c.Name));

    public Option<string?> Columns { get; } = CommonOptions.Quantity("--columns", "FILE", "Read a table of no known layout by this file, which says which heading is what.");

    public Option<string?> Map { get; } = new("--map")
    {
        Description = "Propose such a file from the headings, show three rows by it, and write it. [NAME.columns.toml]",
        HelpName = "PATH",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public Option<string?> Offset { get; } = CommonOptions.Quantity("--offset", "HH:MM", "Offset from UTC of times without one, and the clock to show: \"-07:00\".");

    public Option<string?> Bridge { get; } = CommonOptions.Quantity("--bridge", "SPAN", "The longest gap to bridge by a straight line, 3 h to 31 d. [3 h]");

    public Option<double?> Year { get; } = CommonOptions.Number("--year", "YEAR", "The year to put a typical year on.", 1900, 2200, whole: true);

    // What is reported and written.
    public Option<string?> Below { get; } = CommonOptions.Quantity("--below", "T", "Count hours and degree-hours below this. [32 °F]");

    public Option<string?> Night { get; } = CommonOptions.Quantity("--night", "NIGHT", "Pick a night: p99 (99 % are warmer), worst, or 1-in-10 (winters).").Offering("p99", "worst", "1-in-10");

    public Option<double?> Coldest { get; } = CommonOptions.Number("--coldest", "N", "Find the coldest spells of so many nights in a row, 1 to 30.", 1, MostNights, whole: true);

    public Option<string?> Spell { get; } = CommonOptions.Quantity("--spell", "SPELL", "Pick several nights in a row with their own wind and sun: p95, worst, or 1-in-10.").Offering("p95", "worst", "1-in-10");

    public Option<double?> Nights { get; } = CommonOptions.Number("--nights", "N", "How many nights the spell has, 2 to 30. [3]", 2, MostNights, whole: true);

    public Option<string?> Against { get; } = CommonOptions.Quantity("--against", "OBSERVED", "FILE is a folder of forecasts: compare them with this file of what was observed.");

    public OutputOption Output { get; } = new(CommonOptions.Quantity("--out", "PATH", "Write it, or the nights picked, as our CSV to this file."), CommonOptions.Force());

    // From where it was measured to the place of the coach.
    public Option<string?> Elevation { get; } = CommonOptions.Quantity("--elevation", "H", "The place's elevation: shifts the temperature from the station's.");

    public Option<string?> StationElevation { get; } = CommonOptions.Quantity("--station-elevation", "H", "The station's elevation. [what the file says]");

    public Option<double?> Lapse { get; } = CommonOptions.Number("--lapse", "K/KM", "How much colder it is a kilometre up, in kelvins. [6.5]", -10, 15, whole: false);

    public Option<string?> WindHeight { get; } = CommonOptions.Quantity("--wind-height", "H", "Height at which the wind was measured. [10 m]");

    public Option<string> WindTerrain { get; } = CommonOptions.Choice("--wind-terrain", "The country round the anemometer.", ["open", "water", "wooded", "city"], "open");

    public Option<string?> Hollow { get; } = CommonOptions.Quantity("--hollow", "DT", "How much colder the place is from sunset to sunrise of calm nights.");

    public Option<string?> HollowCalm { get; } = CommonOptions.Quantity("--hollow-calm", "SPEED", "The night's mean wind up to which it is calm. [2 m/s]");

    public Option<double?> Latitude { get; } = CommonOptions.Number("--latitude", "DEGREES", "For sunset, where the file does not say; north positive.", -90, 90, whole: false);

    public Option<double?> Longitude { get; } = CommonOptions.Number("--longitude", "DEGREES", "For sunset and noon likewise; east positive.", -180, 180, whole: false);

    public IEnumerable<Option> All =>
    [
        From, To, Format, Columns, Map, Offset, Bridge, Year, Below, Night, Coldest, Spell, Nights, Against, Output.Path, Output.Force, Elevation, StationElevation, Lapse, WindHeight, WindTerrain, Hollow, HollowCalm, Latitude, Longitude,
    ];
}
