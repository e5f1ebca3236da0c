using ColdSim.Files.Disk;
using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Nodes;
using ColdSim.Planning.Nights;
using CsvHelper;

namespace ColdSim.Files.Results;

/// <summary>The curves of a run as CSV, one row a minute, units in the headings.</summary>
public static class SeriesCsv
{
    private sealed record Curve(string Name, CurveUnit Unit, Func<RunSeries, int, double> Value);

    private static readonly Curve[] Before =
    [
        new("outside", CurveUnit.Temperature, (s, i) => s.Outside_K[i]),
        new("wind", CurveUnit.Speed, (s, i) => s.Wind_m_s[i]),
        new("inside", CurveUnit.Temperature, (s, i) => s.Inside_K[i]),
        new("set point", CurveUnit.Temperature, (s, i) => s.SetPoint_K[i]),
        new("liquid", CurveUnit.Temperature, (s, i) => s.Liquid_K[i]),
        new("cylinder pressure", CurveUnit.CylinderPressure, (s, i) => s.CylinderPressure_Pa[i]),
        new("delivery pressure", CurveUnit.DeliveryPressure, (s, i) => s.DeliveryPressure_Pa[i]),
    ];

    private static readonly Curve[] After =
    [
        new("asked", CurveUnit.Heat, (s, i) => s.Asked_W[i]),
        new("given", CurveUnit.Heat, (s, i) => s.Given_W[i]),
        new("can give now", CurveUnit.Heat, (s, i) => s.CanGiveNow_W[i]),
        new("can give without end", CurveUnit.Heat, (s, i) => s.CanGiveWithoutEnd_W[i]),
        new("heat into cylinder", CurveUnit.Heat, (s, i) => s.HeatIntoCylinder_W[i]),
        new("burner", CurveUnit.Percent, (s, i) => s.Burner_frac[i]),
    ];

    /// <summary>The file, known by the headings that every run has.</summary>
    public static OutputKind Kind => new("the curves of a run", text => CsvForm.All.Any(form => CsvHeadings.Match(
        text,
        form.Separator,
        [
            new("time"), new(CsvForm.OffsetHeading), .. Before.Select(c => new HeadingPattern(HeadingOf(c, form))),
            new(CurveUnit.Mass.Heading("propane", form.IsUs), IsOptional: true), new(CurveUnit.Mass.Heading("gas in cylinder", form.IsUs), IsOptional: true),
            .. After.Select(c => new HeadingPattern(HeadingOf(c, form))), new("{name}", IsOptional: true, IsRepeated: true),
        ])));

    /// <summary>Writes the curves; a cell is empty where a curve does not apply.</summary>
    /// <param name="report">The run.</param>
    /// <param name="output">Takes the text; stays open.</param>
    /// <param name="form">The units and the separator; metric and a comma unless given.</param>
    /// <param name="from">The first time written; the run's start unless given.</param>
    /// <param name="to">The time before which the last row is; the run's end unless given.</param>
    public static void Write(RunReport report, TextWriter output, CsvForm? form = null, DateTimeOffset? from = null, DateTimeOffset? to = null)
    {
        form ??= CsvForm.Metric;
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = form.Separator, NewLine = "\n" }, leaveOpen: true);
        Curve[] curves = [.. Before, Left(report.Scenario.Rig), .. After, .. Several(report), .. Takers(report.Scenario.Rig, report.Series), .. Power(report.Series)];
        csv.WriteField("time");
        csv.WriteField(CsvForm.OffsetHeading);
        foreach (Curve curve in curves)
            csv.WriteField(CsvText.Of(HeadingOf(curve, form)));
        csv.EndRecord();
        for (int i = 0; i < report.Series.Count; i++)
        {
            DateTimeOffset time = report.Scenario.Start.AddSeconds(i * RunSeries.Spacing_s);
            if (time < from || time >= to)
                continue;
            csv.WriteField(CsvForm.Time(time));
            csv.WriteField(CsvForm.Offset(time));
            foreach (Curve curve in curves)
                csv.WriteField(curve.Unit.Cell(curve.Value(report.Series, i), form));
            csv.EndRecord();
        }
    }

    private static string HeadingOf(Curve curve, CsvForm form) => curve.Unit.Heading(curve.Name, form.IsUs);

    // A mixed gas is not called propane; the heading for propane alone stays as programs know it.
    private static Curve Left(Rig rig) => new(rig.Gas.IsMixed ? "gas in cylinder" : "propane", CurveUnit.Mass, (s, i) => s.Propane_kg[i]);

    // Each cylinder's own curves, where there are several; blankets and butanes, where there are any.
    private static IEnumerable<Curve> Several(RunReport report)
    {
        if (report.Scenario.Rig.Cylinders.Any(c => c.Blanket is not null))
            yield return new("blankets", CurveUnit.Electric, (s, i) => s.Blanket_W[i]);
        int count = report.Series.Cylinders.Count;
        for (int k = 0; report.Scenario.Rig.Gas.IsMixed && k < count; k++)
        {
            int c = k;
            string of = count < 2 ? "" : report.Scenario.Rig.NameOf(c) + " ";
            yield return new($"{of}n-butane", CurveUnit.Mass, (s, i) => s.Cylinders[c].NormalButane_kg[i]);
            yield return new($"{of}isobutane", CurveUnit.Mass, (s, i) => s.Cylinders[c].Isobutane_kg[i]);
        }

        if (count < 2)
            yield break;
        yield return new("cylinder in use", CurveUnit.Count, (s, i) => s.InUse[i] + 1);
        for (int k = 0; k < count; k++)
        {
            int c = k;
            string name = report.Scenario.Rig.NameOf(c);
            yield return new($"{name} {(report.Scenario.Rig.Gas.IsMixed ? "gas" : "propane")}", CurveUnit.Mass, (s, i) => s.Cylinders[c].Propane_kg[i]);
            yield return new($"{name} liquid", CurveUnit.Temperature, (s, i) => s.Cylinders[c].Liquid_K[i]);
            yield return new($"{name} pressure", CurveUnit.CylinderPressure, (s, i) => s.Cylinders[c].Pressure_Pa[i]);
        }
    }

    // Who took what gas, where there is more than one; how warm boxes, tanks and pipes are, where there are any.
    private static IEnumerable<Curve> Takers(Rig rig, RunSeries series)
    {
        int first = rig.Furnace is null ? 1 : 0;
        for (int k = first; rig.GasPlaces - first > 1 && k < series.Gas_W.Count; k++)
        {
            int place = k;
            yield return new($"{rig.GasConsumerOf(place)} gas", CurveUnit.Heat, (s, i) => s.Gas_W[place][i]);
        }
        IReadOnlyList<ThermalNode> nodes = rig.Nodes();
        for (int k = 0; k < series.Node_K.Count; k++)
        {
            int place = k;
            yield return new($"{nodes[place].Name}", CurveUnit.Temperature, (s, i) => s.Node_K[place][i]);
        }
    }

    // The 12 V side, where there is a battery.
    private static IEnumerable<Curve> Power(RunSeries series)
    {
        if (series.Power is null)
            yield break;
        yield return new("charge", CurveUnit.Percent, (s, i) => s.Power!.Charge_frac[i]);
        yield return new("12 V drawn", CurveUnit.Electric, (s, i) => s.Power!.Drawn_W[i]);
        yield return new("solar", CurveUnit.Electric, (s, i) => s.Power!.Solar_W[i]);
        yield return new("shore", CurveUnit.Electric, (s, i) => s.Power!.Shore_W[i]);
        yield return new("generator", CurveUnit.Electric, (s, i) => s.Power!.Generator_W[i]);
    }
}
