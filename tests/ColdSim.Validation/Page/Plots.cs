using ColdSim.Validation.ClosedForms;
using ColdSim.Validation.DegreeDays;
using ColdSim.Validation.Durations;
using ColdSim.Validation.Furnace;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Legends;
using OxyPlot.Series;

namespace ColdSim.Validation.Page;

/// <summary>The plots of docs/validation.md, as SVG.</summary>
internal static class Plots
{
    /// <summary>Each plot's file below docs, with its text.</summary>
    public static IEnumerable<(string File, string Svg)> All()
    {
        yield return ("validation/furnace-load.svg", Svg(FurnaceLoad()));
        yield return ("validation/furnace-cold-days.svg", Svg(ColdDays()));
        yield return ("validation/degree-days.svg", Svg(DegreeDayLine()));
        yield return ("validation/trade-table.svg", Svg(TradeRatios()));
        yield return ("validation/draw.svg", Svg(Curves("Liquid while vapour is drawn", "draw", ClosedForm.Draw)));
        yield return ("validation/cooling.svg", Svg(Curves("Inside of a coach without heat", "cooling", ClosedForm.Cooling)));
        yield return ("validation/duty.svg", Svg(Diagonal("Part of the time that the furnace burns", "load over output", "run", "duty", ClosedForm.Duty)));
        yield return ("validation/week.svg", Svg(Diagonal("Energy of a week, MJ", "lost and stored", "put in", "week", ClosedForm.Week)));
    }

    private static string Svg(PlotModel model) => new SvgExporter { Width = 720, Height = 420 }.ExportToString(model).ReplaceLineEndings("\n") + "\n";

    // Rounded, so that the last digits of a run do not change the file.
    private static DataPoint Point(double x, double y) => new(Math.Round(x, 3), Math.Round(y, 3));

    private static PlotModel Model(string title, string x, string y)
    {
        PlotModel model = new() { Title = title };
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Bottom, Title = x });
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Left, Title = y, MajorGridlineStyle = LineStyle.Dot });
        model.Legends.Add(new Legend { LegendPosition = LegendPosition.TopRight });
        return model;
    }

    // Printed results as a line from the lowest to the highest, ours as a dot.
    private static PlotModel FurnaceLoad()
    {
        PlotModel model = new() { Title = "Furnace load of ninety days" };
        CategoryAxis cases = new() { Position = AxisPosition.Bottom };
        cases.Labels.AddRange(FurnaceCase.All.Select(c => c.Name));
        model.Axes.Add(cases);
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Left, Title = "GJ", MajorGridlineStyle = LineStyle.Dot });
        model.Legends.Add(new Legend { LegendPosition = LegendPosition.TopRight });
        ScatterSeries ours = new() { Title = "ours", MarkerType = MarkerType.Circle, MarkerSize = 4 };
        LineSeries Range(FurnaceCase c, int i)
        {
            LineSeries line = new() { Color = OxyColors.Gray, StrokeThickness = 12, Title = i == 0 ? "printed" : null };
            line.Points.Add(Point(i, c.LoadLow_GJ - 0.3));
            line.Points.Add(Point(i, c.LoadHigh_GJ + 0.3));
            return line;
        }

        for (int i = 0; i < FurnaceCase.All.Count; i++)
        {
            model.Series.Add(Range(FurnaceCase.All[i], i));
            ours.Points.Add(new ScatterPoint(i, Math.Round(FurnaceResult.Of(FurnaceCase.All[i]).Load_GJ, 2)));
        }

        model.Series.Add(ours);
        return model;
    }

    // The ten days around the coldest hour of the furnace that is too small.
    private static PlotModel ColdDays()
    {
        PlotModel model = Model("Mean inside of each hour in the coldest days", "day of the year", "°C");
        FurnaceResult[] results = [.. FurnaceCase.All.Where(c => c.Minimum_C is not null).Select(FurnaceResult.Of)];
        IReadOnlyList<double> worst = results[^1].Hourly_C;
        int middle = worst.Select((t, i) => (t, i)).MinBy(p => p.t).i, from = Math.Max(0, middle - 120), to = Math.Min(worst.Count, middle + 120);
        foreach (FurnaceResult result in results)
        {
            LineSeries line = new() { Title = result.Case.Name };
            for (int h = from; h < to; h++) line.Points.Add(Point(1 + (h + 1.5) / 24, result.Hourly_C[h]));
            model.Series.Add(line);
        }

        (double low, double high) = results[^1].Case.Minimum_C!.Value;
        LineSeries printed = new() { Title = "printed least of HE230", Color = OxyColors.Gray, StrokeThickness = 6 };
        printed.Points.Add(Point(1 + (middle + 1.5) / 24, low));
        printed.Points.Add(Point(1 + (middle + 1.5) / 24, high));
        model.Series.Add(printed);
        return model;
    }

    private static PlotModel DegreeDayLine()
    {
        PlotModel model = Model("Gas of a week", "degree days below the balance point, K·d", "kg");
        ScatterSeries ours = new() { Title = "ours", MarkerType = MarkerType.Circle, MarkerSize = 4 };
        LineSeries law = new() { Title = "loss × degree days over heating value and efficiency", Color = OxyColors.Gray };
        foreach (WinterWeek week in WinterWeek.All().OrderBy(w => w.DegreeDays))
        {
            ours.Points.Add(new ScatterPoint(Math.Round(week.DegreeDays, 2), Math.Round(week.Ours_kg, 2)));
            law.Points.Add(Point(week.DegreeDays, week.ByDegreeDays_kg));
        }

        model.Legends[0].LegendPosition = LegendPosition.TopLeft;
        model.Series.Add(law);
        model.Series.Add(ours);
        return model;
    }

    private static PlotModel TradeRatios()
    {
        PlotModel model = Model("A 100 lb cylinder: ours over the trade's table", "in it, lb", "ratio");
        string[] times = ["1 h", "4 h", "8 h", "without end"];
        var rows = TradeTable.Rows().Where(r => r.Air_F == 0).OrderBy(r => r.Pounds).ToArray();
        for (int i = 0; i < times.Length; i++)
        {
            LineSeries line = new() { Title = times[i], MarkerType = MarkerType.Circle, MarkerSize = 3 };
            foreach (var row in rows) line.Points.Add(Point(row.Pounds, row.Ours[i] / row.Printed));
            model.Series.Add(line);
        }

        return model;
    }

    // The closed forms as lines, the runs as dots each other hour.
    private static PlotModel Curves(string title, string kind, Func<string, ClosedForm> of)
    {
        PlotModel model = Model(title, "hours", "°C");
        bool first = true;
        foreach (ClosedForm form in DrawnCases.Files(kind).Select(of))
        {
            LineSeries line = new() { Color = OxyColors.Gray, Title = first ? "closed form" : null };
            ScatterSeries dots = new() { MarkerType = MarkerType.Circle, MarkerSize = 2, MarkerFill = OxyColors.Green, Title = first ? "run" : null };
            for (int h = 0; h < form.Exact.Count; h++) line.Points.Add(Point(h, form.Exact[h]));
            for (int h = 0; h < form.Ours.Count; h += 2) dots.Points.Add(new ScatterPoint(h, Math.Round(form.Ours[h], 2)));
            model.Series.Add(line);
            model.Series.Add(dots);
            first = false;
        }

        return model;
    }

    private static PlotModel Diagonal(string title, string x, string y, string kind, Func<string, ClosedForm> of)
    {
        PlotModel model = Model(title, x, y);
        ScatterSeries dots = new() { MarkerType = MarkerType.Circle, MarkerSize = 3, Title = "runs" };
        double most = 0;
        foreach (ClosedForm form in DrawnCases.Files(kind).Select(of))
        {
            dots.Points.Add(new ScatterPoint(Math.Round(form.Exact[0], 3), Math.Round(form.Ours[0], 3)));
            most = Math.Max(most, Math.Round(form.Exact[0], 3));
        }

        LineSeries equal = new() { Color = OxyColors.Gray, Title = "equal" };
        equal.Points.Add(new DataPoint(0, 0));
        equal.Points.Add(new DataPoint(most, most));
        model.Legends[0].LegendPosition = LegendPosition.TopLeft;
        model.Series.Add(equal);
        model.Series.Add(dots);
        return model;
    }
}
