using System.Globalization;
using ColdSim.Model;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using CsvHelper;

namespace ColdSim.Files.Results;

/// <summary>A trip as CSV, one row a night, units in the headings.</summary>
public static class TripCsv
{
    private sealed record Column(string Heading, Func<TripReport, TripNight, string> Cell);

    private static readonly Column[] Columns =
    [
        new("night from", (_, n) => Time(n.Night.From)),
        new("night to", (_, n) => Time(n.Night.To)),
        new("stop", (t, n) => n.Stop is { } stop ? t.Trip.Stops[stop].Name : ""),
        new("verdict", (_, n) => WireNames.Of(n.Night.Verdict)),
        new("outside low [°C]", (_, n) => Number(n.Night.OutsideLow.DegreesCelsius, 2)),
        new("inside low [°C]", (_, n) => n.Night.InsideLow is { } low ? Number(low.DegreesCelsius, 2) : ""),
        new("gas used [kg]", (_, n) => Number(n.Night.GasUsed.Kilograms, 3)),
        new("margin [W]", (_, n) => n.Margin is { } margin ? Number((double)margin.Surplus.Watts, 0) : ""),
        new("changes", (_, n) => n.Changes.ToString(CultureInfo.InvariantCulture)),
        new("blankets [Wh]", (_, n) => Number(n.Night.BlanketEnergy.WattHours, 1)),
        new("refills", (_, n) => string.Join(' ', n.Refills.Select(r => (r + 1).ToString(CultureInfo.InvariantCulture)))),
    ];

    /// <summary>Writes the nights; a cell is empty where something does not apply.</summary>
    /// <param name="report">What the trip says.</param>
    /// <param name="output">Takes the text; stays open.</param>
    public static void Write(TripReport report, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = ',', NewLine = "\n" }, leaveOpen: true);
        Column[] columns = [.. Columns, .. Cylinders(report.Run.Scenario.Rig), .. Takers(report.Run.Summary.GasByAppliance), .. Power(report.Run.Scenario.Rig)];
        foreach (Column column in columns)
            csv.WriteField(column.Heading);
        csv.EndRecord();
        foreach (TripNight night in report.Nights)
        {
            foreach (Column column in columns)
                csv.WriteField(column.Cell(report, night));
            csv.EndRecord();
        }
    }

    private static IEnumerable<Column> Cylinders(Rig rig) => Enumerable.Range(0, rig.Cylinders.Count).Select(i => new Column(
        $"{rig.NameOf(i)} left at dawn [kg]", (_, n) => n.Night.EachLeftAtDawn is var left && i < left.Count ? Number(left[i].Kilograms, 3) : ""));

    // Of one alone it is the gas used.
    private static IEnumerable<Column> Takers(IReadOnlyList<ApplianceGas> takers) => takers.Count < 2 ? [] : takers.Select((taker, i) => new Column(
        $"{taker.Name} gas [kg]", (_, n) => n.Night.GasByAppliance is var gas && i < gas.Count ? Number(gas[i].Gas.Kilograms, 3) : ""));

    // Without a battery only gas can run out, and the verdict tells that.
    private static IEnumerable<Column> Power(Rig rig) => rig.Power is null ? [] :
    [
        new("first out", (_, n) => WireNames.Of(n.Night.FirstOut)),
        new("voltage gone [min]", (_, n) => n.Night.Power is { } power ? Number(power.VoltageGone.Minutes, 1) : ""),
        new("charge low [%]", (_, n) => n.Night.Power is { } power ? Number(power.ChargeLow.Percent, 1) : ""),
    ];

    private static string Time(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    // Rounded first, so that a hair below zero is not written as minus nothing.
    private static string Number(double value, int digits)
        => (Math.Round(value, digits) + 0.0).ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
