using ColdSim.Files.Disk;
using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Nodes;
using ColdSim.Planning.Nights;
using CsvHelper;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Files.Results;

/// <summary>The curves of a run as CSV, one row a minute, units in the headings.</summary>
public static class SeriesCsv
{
    private sealed record Curve(string Heading, int Digits, Func<RunSeries, int, double> Value);

    private static readonly Curve[] Before =
    [
        new("outside [°C]", 2, (s, i) => s.Outside_K[i] - ZeroCelsius_K),
        new("wind [m/s]", 2, (s, i) => s.Wind_m_s[i]),
        new("inside [°C]", 2, (s, i) => s.Inside_K[i] - ZeroCelsius_K),
        new("set point [°C]", 2, (s, i) => s.SetPoint_K[i] - ZeroCelsius_K),
        new("liquid [°C]", 2, (s, i) => s.Liquid_K[i] - ZeroCelsius_K),
        new("cylinder pressure [kPa gauge]", 3, (s, i) => s.CylinderPressure_Pa[i] / 1000),
        new("delivery pressure [kPa gauge]", 4, (s, i) => s.DeliveryPressure_Pa[i] / 1000),
    ];

    private static readonly Curve[] After =
    [
        new("asked [W]", 1, (s, i) => s.Asked_W[i]),
        new("given [W]", 1, (s, i) => s.Given_W[i]),
        new("can give now [W]", 1, (s, i) => s.CanGiveNow_W[i]),
        new("can keep giving [W]", 1, (s, i) => s.CanKeepGiving_W[i]),
        new("heat into cylinder [W]", 2, (s, i) => s.HeatIntoCylinder_W[i]),
        new("burner [%]", 1, (s, i) => s.Burner_frac[i] * 100),
    ];

    /// <summary>The file, known by the headings that every run has.</summary>
    public static OutputKind Kind => new("the curves of a run", text => CsvHeadings.Match(
        text,
        [
            new("time"), .. Before.Select(c => new HeadingPattern(c.Heading)),
            new("propane [kg]", IsOptional: true), new("gas in cylinder [kg]", IsOptional: true), .. After.Select(c => new HeadingPattern(c.Heading)),
            new("{name}", IsOptional: true, IsRepeated: true),
        ]));

    /// <summary>Writes the curves; a cell is empty where a curve does not apply.</summary>
    /// <param name="report">The run.</param>
    /// <param name="output">Takes the text; stays open.</param>
    public static void Write(RunReport report, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = ',', NewLine = "\n" }, leaveOpen: true);
        Curve[] curves = [.. Before, Left(report.Scenario.Rig), .. After, .. Several(report), .. Takers(report.Scenario.Rig, report.Series), .. Power(report.Series)];
        csv.WriteField("time");
        foreach (Curve curve in curves)
            csv.WriteField(CsvText.Of(curve.Heading));
        csv.EndRecord();
        for (int i = 0; i < report.Series.Count; i++)
        {
            DateTimeOffset time = report.Scenario.Start.AddSeconds(i * RunSeries.Spacing_s);
            csv.WriteField(FigureJson.Instant(time));
            foreach (Curve curve in curves)
                csv.WriteField(FigureCsv.Number(curve.Value(report.Series, i), curve.Digits));
            csv.EndRecord();
        }
    }

    // A mixed gas is not called propane; the heading for propane alone stays as programs know it.
    private static Curve Left(Rig rig) => new(rig.Gas.IsMixed ? "gas in cylinder [kg]" : "propane [kg]", 5, (s, i) => s.Propane_kg[i]);

    // Each cylinder's own curves, where there are several; blankets and butanes, where there are any.
    private static IEnumerable<Curve> Several(RunReport report)
    {
        if (report.Scenario.Rig.Cylinders.Any(c => c.Blanket is not null))
            yield return new("blankets [W]", 1, (s, i) => s.Blanket_W[i]);
        int count = report.Series.Cylinders.Count;
        for (int k = 0; report.Scenario.Rig.Gas.IsMixed && k < count; k++)
        {
            int c = k;
            string of = count < 2 ? "" : report.Scenario.Rig.NameOf(c) + " ";
            yield return new($"{of}n-butane [kg]", 5, (s, i) => s.Cylinders[c].NormalButane_kg[i]);
            yield return new($"{of}isobutane [kg]", 5, (s, i) => s.Cylinders[c].Isobutane_kg[i]);
        }

        if (count < 2)
            yield break;
        yield return new("cylinder in use", 0, (s, i) => s.InUse[i] + 1);
        for (int k = 0; k < count; k++)
        {
            int c = k;
            string name = report.Scenario.Rig.NameOf(c);
            yield return new($"{name} {(report.Scenario.Rig.Gas.IsMixed ? "gas" : "propane")} [kg]", 5, (s, i) => s.Cylinders[c].Propane_kg[i]);
            yield return new($"{name} liquid [°C]", 2, (s, i) => s.Cylinders[c].Liquid_K[i] - ZeroCelsius_K);
            yield return new($"{name} pressure [kPa gauge]", 3, (s, i) => s.Cylinders[c].Pressure_Pa[i] / 1000);
        }
    }

    // Who took what gas, where there is more than one; how warm boxes, tanks and pipes are, where there are any.
    private static IEnumerable<Curve> Takers(Rig rig, RunSeries series)
    {
        int first = rig.Furnace is null ? 1 : 0;
        for (int k = first; rig.GasPlaces - first > 1 && k < series.Gas_W.Count; k++)
        {
            int place = k;
            yield return new($"{rig.GasConsumerOf(place)} gas [W]", 1, (s, i) => s.Gas_W[place][i]);
        }
        IReadOnlyList<ThermalNode> nodes = rig.Nodes();
        for (int k = 0; k < series.Node_K.Count; k++)
        {
            int place = k;
            yield return new($"{nodes[place].Name} [°C]", 2, (s, i) => s.Node_K[place][i] - ZeroCelsius_K);
        }
    }

    // The 12 V side, where there is a battery.
    private static IEnumerable<Curve> Power(RunSeries series)
    {
        if (series.Power is null)
            yield break;
        yield return new("charge [%]", 2, (s, i) => s.Power!.Charge_frac[i] * 100);
        yield return new("12 V drawn [W]", 1, (s, i) => s.Power!.Drawn_W[i]);
        yield return new("solar [W]", 1, (s, i) => s.Power!.Solar_W[i]);
        yield return new("shore [W]", 1, (s, i) => s.Power!.Shore_W[i]);
        yield return new("generator [W]", 1, (s, i) => s.Power!.Generator_W[i]);
    }
}
