using ColdSim.App.Text.Markup;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Text.Pictures;

/// <summary>The limits drawn: fill along, the night's low upwards, a mark a fill and a line a set-up.</summary>
/// <param name="chart">The limits.</param>
/// <param name="units">The person's units.</param>
/// <param name="plot">The height of the plot. [px]</param>
internal sealed class LimitPicture(LimitChart chart, UnitStyle units, int plot = LimitPicture.UsualPlot) : IPicture
{
    private const int UsualPlot = 240, Top = 24, Foot = 44;

    public string Name => "limits";

    public string Title => $"The coldest low that holds, {units.TemperatureUnit}, by fill";

    public string Description
        => $"{Title}: the night holds at a mark and above it, and does not below it. {LimitText.Sentence(chart, units)}";

    public int Height => Top + plot + Foot;

    public void Draw(MarkupWriter to, PictureFrame frame)
    {
        ValueAxis axis = LimitScale.Axis(chart, units);
        Legend(to);
        to.Start("rect", "frame").With("x", 0).With("y", Top).With("width", frame.Along(1)).With("height", plot).Empty();
        foreach (double tick in axis.Ticks(ValueAxis.MostTicks))
        {
            to.Start("line", "grid").With("x1", 0).With("x2", frame.Along(1)).With("y1", Y(axis, tick)).With("y2", Y(axis, tick)).Empty();
            to.Start("text", "scale").With("x", 0).With("dx", -5).With("y", Y(axis, tick) + 3.5).Text(ValueAxis.Label(tick)).End();
        }

        for (int tenth = 0; tenth <= 10; tenth += 2)
        {
            string x = frame.Along(tenth / 10.0);
            to.Start("line", "grid").With("x1", x).With("x2", x).With("y1", Top).With("y2", Top + plot).Empty();
            to.Start("text", "clock").With("x", x).With("y", Top + plot + 16).Text(UnitStyle.Number(tenth * 10, 0)).End();
        }

        to.Start("text", "clock").With("x", frame.Along(0.5)).With("y", Top + plot + 34)
            .Text("fill of each cylinder, % of its legal filling").End();
        for (int i = 0; i < chart.Columns.Count; i++)
            Column(to, frame, axis, chart.Columns[i], i);
        to.Line();
    }

    private void Legend(MarkupWriter to)
    {
        to.Start("text", "legend").With("x", -PictureFrame.Left + 2).With("y", 14).Start("tspan", "name").Text(units.TemperatureUnit).End();
        for (int i = 0; i < chart.Columns.Count; i++)
        {
            RigVariantKind kind = chart.Columns[i].RigVariant.Kind;
            to.Text("  ").Start("tspan", $"k{i}").With("dx", 6).Text(LimitWords.Mark(kind).ToString()).End();
            to.Text($" {LimitWords.Name(kind, chart.Scenario.Rig)}");
        }

        to.End().Line();
    }

    private void Column(MarkupWriter to, PictureFrame frame, ValueAxis axis, LimitColumn column, int place)
    {
        LimitCell[] cells = [.. LimitScale.Found(column.Cells)];
        for (int i = 1; i < cells.Length; i++)
        {
            to.Start("line", $"c{place} thin")
                .With("x1", frame.Along(cells[i - 1].Fill_frac)).With("y1", Y(axis, Degrees(cells[i - 1].Low_K)))
                .With("x2", frame.Along(cells[i].Fill_frac)).With("y2", Y(axis, Degrees(cells[i].Low_K))).Empty();
        }

        foreach (LimitCell cell in cells)
        {
            string name = LimitWords.Name(column.RigVariant.Kind, chart.Scenario.Rig), limit = LimitWords.Limit(cell, chart, units);
            to.Start("text", $"point k{place}").With("x", frame.Along(cell.Fill_frac)).With("y", Y(axis, Degrees(cell.Low_K)) + 4.5)
                .Element("title", $"{name}, {LimitWords.Percent(cell.Fill_frac)} full: {limit}")
                .Text(LimitWords.Mark(column.RigVariant.Kind).ToString()).End();
        }
    }

    private double Degrees(double kelvin) => units.TemperatureIn(kelvin);

    private double Y(ValueAxis axis, double value) => Math.Round(Top + (axis.High - value) / (axis.High - axis.Low) * plot, 1);
}
