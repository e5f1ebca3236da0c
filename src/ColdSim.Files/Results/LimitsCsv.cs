using System.Globalization;
using ColdSim.Planning.Limits;
using CsvHelper;

namespace ColdSim.Files.Results;

/// <summary>A limits chart as CSV, one row a cell, units in the headings; empty where nothing holds.</summary>
public static class LimitsCsv
{
    private const double Zero_K = 273.15;

    private static readonly (string Heading, Func<LimitColumn, LimitCell, string> Cell)[] Columns =
    [
        ("set-up", (u, _) => WireNames.Of(u.SetUp.Kind)),
        ("as it is", (u, _) => u.SetUp.AsItIs ? "yes" : "no"),
        ("fill [%]", (_, c) => Number(100 * c.Fill_frac, 1)),
        ("contents [kg]", (_, c) => Number(c.Contents_kg, 3)),
        ("kind", (_, c) => WireNames.Of(c.Kind)),
        ("limit [°C]", (_, c) => Number(c.Low_K - Zero_K, 2)),
        ("emptied one step colder", (_, c) => c.Emptied ? "yes" : "no"),
        ("furnace too small", (_, c) => c.FurnaceTooSmall ? "yes" : "no"),
        ("inside low [°C]", (_, c) => Number(c.InsideLow_K - Zero_K, 2)),
        ("gas used [kg]", (_, c) => Number(c.Used_kg, 3)),
        ("blanket [Wh]", (_, c) => Number(c.Blanket_J / 3600, 1)),
    ];

    /// <summary>Writes the chart.</summary>
    /// <param name="chart">What it says.</param>
    /// <param name="output">Takes the text; stays open.</param>
    public static void Write(LimitChart chart, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(chart);
        ArgumentNullException.ThrowIfNull(output);
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = ',', NewLine = "\n" }, leaveOpen: true);
        foreach ((string heading, _) in Columns)
            csv.WriteField(heading);
        csv.EndRecord();
        foreach (LimitColumn column in chart.Columns)
        {
            foreach (LimitCell cell in column.Cells)
            {
                foreach ((_, Func<LimitColumn, LimitCell, string> text) in Columns)
                    csv.WriteField(text(column, cell));
                csv.EndRecord();
            }
        }
    }

    // Rounded first, so that a hair below zero is not written as minus nothing.
    private static string Number(double value, int digits) => !double.IsFinite(value) ? ""
        : (Math.Round(value, digits) + 0.0).ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
