using System.Globalization;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using CsvHelper;

namespace ColdSim.Files.Results;

/// <summary>The curves of a run as CSV, one row a minute, units in the headings.</summary>
public static class SeriesCsv
{
    private const double Zero_K = 273.15;

    private sealed record Curve(string Heading, int Digits, Func<RunSeries, int, double> Value);

    private static readonly Curve[] Curves =
    [
        new("outside [°C]", 2, (s, i) => s.Outside_K[i] - Zero_K),
        new("wind [m/s]", 2, (s, i) => s.Wind_m_s[i]),
        new("inside [°C]", 2, (s, i) => s.Inside_K[i] - Zero_K),
        new("set point [°C]", 2, (s, i) => s.SetPoint_K[i] - Zero_K),
        new("liquid [°C]", 2, (s, i) => s.Liquid_K[i] - Zero_K),
        new("cylinder pressure [kPa gauge]", 3, (s, i) => s.CylinderPressure_Pa[i] / 1000),
        new("delivery pressure [kPa gauge]", 4, (s, i) => s.DeliveryPressure_Pa[i] / 1000),
        new("propane [kg]", 5, (s, i) => s.Propane_kg[i]),
        new("asked [W]", 1, (s, i) => s.Asked_W[i]),
        new("given [W]", 1, (s, i) => s.Given_W[i]),
        new("can give now [W]", 1, (s, i) => s.CanGiveNow_W[i]),
        new("can keep giving [W]", 1, (s, i) => s.CanKeepGiving_W[i]),
        new("heat into cylinder [W]", 2, (s, i) => s.HeatIntoCylinder_W[i]),
        new("burner [%]", 1, (s, i) => s.Burner_frac[i] * 100),
    ];

    /// <summary>Writes the curves; a cell is empty where a curve does not apply.</summary>
    /// <param name="report">The run.</param>
    /// <param name="output">Takes the text; stays open.</param>
    public static void Write(RunReport report, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = ',', NewLine = "\n" }, leaveOpen: true);
        csv.WriteField("time");
        foreach (Curve curve in Curves)
            csv.WriteField(curve.Heading);
        csv.EndRecord();
        for (int i = 0; i < report.Series.Count; i++)
        {
            DateTimeOffset time = report.Scenario.Start.AddSeconds(i * RunSeries.Spacing_s);
            csv.WriteField(time.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture));
            foreach (Curve curve in Curves)
                csv.WriteField(Cell(curve, curve.Value(report.Series, i)));
            csv.EndRecord();
        }
    }

    // Rounded first, so that a hair below zero is not written as minus nothing.
    private static string Cell(Curve curve, double value)
        => double.IsFinite(value)
            ? (Math.Round(value, curve.Digits) + 0.0).ToString("F" + curve.Digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : "";
}
