using System.Globalization;
using ColdSim.Planning.Trips;
using CsvHelper;
using UnitsNet;

namespace ColdSim.Files.Results;

/// <summary>A trip as CSV, one row a night, units in the headings.</summary>
public static class TripCsv
{
    private static readonly (string Heading, Func<TripReport, TripNight, string> Cell)[] Columns =
    [
        ("night from", (_, n) => Time(n.Night.From)),
        ("night to", (_, n) => Time(n.Night.To)),
        ("stop", (t, n) => n.Stop is { } stop ? t.Trip.Stops[stop].Name : ""),
        ("verdict", (_, n) => WireNames.Of(n.Night.Verdict)),
        ("outside low [°C]", (_, n) => Number(n.Night.OutsideLow.DegreesCelsius, 2)),
        ("inside low [°C]", (_, n) => n.Night.InsideLow is { } low ? Number(low.DegreesCelsius, 2) : ""),
        ("gas used [kg]", (_, n) => Number(n.Night.GasUsed.Kilograms, 3)),
        ("margin [W]", (_, n) => n.Margin is { } margin ? Number((double)margin.Surplus.Watts, 0) : ""),
        ("changes", (_, n) => n.Changes.ToString(CultureInfo.InvariantCulture)),
        ("blankets [Wh]", (_, n) => Number(n.Night.BlanketEnergy.WattHours, 1)),
        ("refills", (_, n) => string.Join(' ', n.Refills.Select(r => (r + 1).ToString(CultureInfo.InvariantCulture)))),
    ];

    /// <summary>Writes the nights; a cell is empty where something does not apply.</summary>
    /// <param name="report">What the trip says.</param>
    /// <param name="output">Takes the text; stays open.</param>
    public static void Write(TripReport report, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = ',', NewLine = "\n" }, leaveOpen: true);
        int cylinders = report.Run.Scenario.Rig.Cylinders.Count;
        foreach ((string heading, _) in Columns)
            csv.WriteField(heading);
        for (int i = 0; i < cylinders; i++)
            csv.WriteField($"{report.Run.Scenario.Rig.NameOf(i)} left at dawn [kg]");
        csv.EndRecord();
        foreach (TripNight night in report.Nights)
        {
            foreach ((_, Func<TripReport, TripNight, string> cell) in Columns)
                csv.WriteField(cell(report, night));
            IReadOnlyList<Mass> left = night.Night.EachLeftAtDawn;
            for (int i = 0; i < cylinders; i++)
                csv.WriteField(i < left.Count ? Number(left[i].Kilograms, 3) : "");
            csv.EndRecord();
        }
    }

    private static string Time(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    // Rounded first, so that a hair below zero is not written as minus nothing.
    private static string Number(double value, int digits)
        => (Math.Round(value, digits) + 0.0).ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
