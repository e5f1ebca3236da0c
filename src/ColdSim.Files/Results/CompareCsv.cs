using System.Globalization;
using ColdSim.Planning.Compare;
using CsvHelper;

namespace ColdSim.Files.Results;

/// <summary>A comparison as CSV, one row an option, the best first, units in the headings.</summary>
public static class CompareCsv
{
    private static readonly (string Heading, Func<ComparedRow, string> Cell)[] Columns =
    [
        ("rank", r => r.Rank.ToString(CultureInfo.InvariantCulture)),
        ("option", r => r.Option.Name),
        ("cylinders", r => string.Join(" + ", Enumerable.Range(0, r.Option.Scenario.Rig.Cylinders.Count).Select(r.Option.Scenario.Rig.NameOf))),
        ("holds", r => r.Holds ? "yes" : "no"),
        ("verdict", r => WireNames.Of(r.Summary.Verdict)),
        ("end", r => WireNames.Of(r.End)),
        ("nights", r => r.Summary.Nights.ToString(CultureInfo.InvariantCulture)),
        ("nights held", r => r.Summary.NightsHeld.ToString(CultureInfo.InvariantCulture)),
        ("first short", r => Time(r.Summary.FirstShort)),
        ("short [min]", r => Number(r.Summary.ShortTime.Minutes, 1)),
        ("dry at", r => Time(r.Summary.DryAt)),
        ("inside low [°C]", r => r.Summary.InsideLow is { } low ? Number(low.DegreesCelsius, 2) : ""),
        ("gas used [kg]", r => Number(r.Summary.GasUsed.Kilograms, 3)),
        ("gas used [MJ]", r => Number(r.Summary.GasHeat.Megajoules, 1)),
        ("cylinder changes", r => r.Summary.CylinderChanges.ToString(CultureInfo.InvariantCulture)),
        ("blanket [Wh]", r => Number(r.Summary.BlanketEnergy.WattHours, 1)),
        ("left at start [kg]", r => Number(r.Summary.LeftAtStart.Kilograms, 3)),
        ("left at end [kg]", r => Number(r.Summary.LeftAtEnd.Kilograms, 3)),
        ("cost", r => r.Cost is { } cost ? Number(cost, 2) : ""),
        ("first out", r => WireNames.Of(r.Summary.FirstOut)),
        ("flat at", r => Time(r.Summary.FlatAt)),
        ("voltage gone [min]", r => r.Summary.ChargeLow is null ? "" : Number(r.Summary.VoltageGone.Minutes, 1)),
        ("charge low [%]", r => r.Summary.ChargeLow is { } low ? Number(low.Percent, 1) : ""),
        ("water freezes at", r => Time(r.Summary.WaterFreezesAt)),
    ];

    /// <summary>Writes the comparison; a cell is empty where something did not happen.</summary>
    /// <param name="comparison">What it says.</param>
    /// <param name="output">Takes the text; stays open.</param>
    public static void Write(Comparison comparison, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(output);
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = ',', NewLine = "\n" }, leaveOpen: true);
        foreach ((string heading, _) in Columns)
            csv.WriteField(heading);
        csv.EndRecord();
        foreach (ComparedRow row in comparison.Rows)
        {
            foreach ((_, Func<ComparedRow, string> cell) in Columns)
                csv.WriteField(cell(row));
            csv.EndRecord();
        }
    }

    private static string Time(DateTimeOffset? time) => time?.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture) ?? "";

    // Rounded first, so that a hair below zero is not written as minus nothing.
    private static string Number(double value, int digits)
        => (Math.Round(value, digits) + 0.0).ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
