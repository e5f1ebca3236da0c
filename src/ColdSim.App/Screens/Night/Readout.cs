using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>One value at the time cursor.</summary>
/// <param name="Name">The name in full.</param>
/// <param name="Brief">The same where room is short.</param>
/// <param name="Value">With its unit.</param>
internal sealed record ReadoutValue(string Name, string Brief, string Value)
{
    /// <summary>Every value at the cursor in three rows of four: around, cylinder, gas as gross heat.</summary>
    public static IReadOnlyList<IReadOnlyList<ReadoutValue>> At(NightView view)
    {
        RunSeries s = view.Report.Series;
        UnitStyle u = view.Units;
        int i = view.Minute;
        string left = $"{CylinderWords.Gas(view.Report.Scenario.Rig)} left";
        return
        [
            [
                Of("outside", "outside", s.Outside_K[i], u.Temperature),
                Of("inside", "inside", s.Inside_K[i], u.Temperature),
                Of("set point", "set point", s.SetPoint_K[i], u.Temperature),
                Of("wind", "wind", s.Wind_m_s[i], u.Speed),
            ],
            [
                Of("liquid and shell", "liquid", s.Liquid_K[i], u.Temperature),
                Of("cylinder pressure", "cylinder", s.CylinderPressure_Pa[i], u.Pressure),
                Of("delivery pressure", "delivery", s.DeliveryPressure_Pa[i], u.Delivery),
                Of(left, left, s.Propane_kg[i], u.Mass),
            ],
            [
                Of("demand", "demand", s.Asked_W[i], u.PowerNumber),
                Of("given", "given", s.Given_W[i], u.PowerNumber),
                Of("can give now", "can give now", s.CanGiveNow_W[i], u.PowerNumber),
                Of("can be kept up", "kept up", s.CanGiveWithoutEnd_W[i], u.Power),
            ],
        ];
    }

    private static ReadoutValue Of(string name, string brief, double value, Func<double, string> say)
        => new(name, brief, double.IsNaN(value) ? "none" : say(value));
}

/// <summary>Each cylinder's own values at the time cursor, where there are several or a blanket.</summary>
/// <param name="Name">What the cylinder is called.</param>
/// <param name="Left">Gas in it.</param>
/// <param name="Liquid">Temperature of its liquid and shell.</param>
/// <param name="Pressure">Its own pressure.</param>
/// <param name="State">Whether it feeds, and its blanket.</param>
internal sealed record CylinderReadout(string Name, string Left, string Liquid, string Pressure, string State)
{
    /// <summary>One a cylinder, in their order; none for a single cylinder without a blanket.</summary>
    public static IReadOnlyList<CylinderReadout> At(NightView view)
    {
        Rig rig = view.Report.Scenario.Rig;
        RunSeries s = view.Report.Series;
        if (!Applies(view))
            return [];
        UnitStyle u = view.Units;
        int i = view.Minute, blankets = rig.Cylinders.Count(c => c.Blanket is not null);
        List<CylinderReadout> all = [];
        for (int c = 0; c < rig.Cylinders.Count; c++)
        {
            CylinderSeries own = s.Cylinders[c];
            List<string> state = [];
            if (rig.Cylinders.Count > 1 && rig.Arrangement is OpenTogether)
                state.Add("open");
            else if (rig.Cylinders.Count > 1)
                state.Add(s.InUse[i] == c ? "in use" : "waits");
            // Only the power of all blankets together is known.
            if (rig.Cylinders[c].Blanket is not null)
                state.Add(blankets == 1 ? $"blanket {UnitStyle.Number(s.Blanket_W[i], 0)} W" : $"blankets {UnitStyle.Number(s.Blanket_W[i], 0)} W in all");
            all.Add(new(CellText.SingleWidth(rig.NameOf(c)), u.Mass(own.Propane_kg[i]), u.Temperature(own.Liquid_K[i]), u.Pressure(own.Pressure_Pa[i]), string.Join(", ", state)));
        }

        return all;
    }

    /// <summary>How many rows they take below the curves.</summary>
    public static int Rows(NightView view) => Applies(view) ? view.Report.Scenario.Rig.Cylinders.Count : 0;

    private static bool Applies(NightView view)
    {
        IReadOnlyList<CylinderSpecification> cylinders = view.Report.Scenario.Rig.Cylinders;
        return (cylinders.Count > 1 || cylinders.Any(c => c.Blanket is not null)) && view.Report.Series.Cylinders.Count == cylinders.Count;
    }
}

/// <summary>Draws the values at the cursor.</summary>
internal static class Readout
{
    private static readonly int[] FourAcross = [0, 17, 37, 58];
    private static readonly int[] TwoAcross = [0, 30];

    /// <summary>The values in a few rows below the curves.</summary>
    public static void DrawBelow(Sheet sheet, NightLayout layout, NightView view)
    {
        int y = layout.ReadoutRow;
        string time = CursorWords.Time(view);
        sheet.Put(0, y, time, CellStyle.Pointer);
        sheet.Put(time.Length + 2, y, CellText.Cut(CursorWords.NearestEvent(view), sheet.Width - time.Length - 2));
        int[] lefts = layout.ReadoutColumns == 4 ? FourAcross : TwoAcross;
        int count = 0;
        foreach (ReadoutValue value in ReadoutValue.At(view).SelectMany(r => r))
        {
            int x = lefts[count % lefts.Length], row = y + 1 + count++ / lefts.Length;
            sheet.Put(x, row, value.Brief);
            sheet.Put(x + value.Brief.Length + 1, row, value.Value, CellStyle.Strong);
        }

        int below = y + 1 + count / lefts.Length;
        IReadOnlyList<CylinderReadout> each = CylinderReadout.At(view);
        for (int c = 0; c < Math.Min(layout.CylinderRows, each.Count); c++)
            sheet.Put(0, below++, CellText.Cut(CylinderLine(each, c), sheet.Width));
    }

    private static string CylinderLine(IReadOnlyList<CylinderReadout> each, int place)
    {
        int name = each.Max(c => c.Name.Length);
        CylinderReadout own = each[place];
        return $"{own.Name.PadRight(Math.Min(name, 24))} {own.Left,9} left, liquid {own.Liquid,7}, {own.Pressure,8}{(own.State.Length > 0 ? ", " : "")}{own.State}";
    }

    /// <summary>The values one below the other, beside the curves.</summary>
    public static void DrawBeside(Sheet sheet, int left, NightView view)
    {
        for (int row = NightLayout.FirstStrip; row < sheet.Height - 1; row++)
            sheet.Put(left, row, '│');
        left += 2;
        int width = sheet.Width - left, y = NightLayout.FirstStrip;
        sheet.Put(left, y, CursorWords.Time(view), CellStyle.Pointer);
        y += 2;
        IReadOnlyList<IReadOnlyList<ReadoutValue>> groups = ReadoutValue.At(view);
        for (int g = 0; g < groups.Count; g++, y++)
        {
            if (g == groups.Count - 1)
                sheet.Put(left, y++, $"gas as gross heat, {view.Units.PowerUnit}");
            foreach (ReadoutValue value in groups[g])
            {
                string number = value.Value.Replace(" " + view.Units.PowerUnit, "", StringComparison.Ordinal);
                sheet.Put(left, y, value.Name);
                sheet.PutBefore(sheet.Width, y++, number, CellStyle.Strong);
            }
        }

        IReadOnlyList<CylinderReadout> each = CylinderReadout.At(view);
        y = Lines(sheet, left, y, each.SelectMany(c => (IEnumerable<string>)
            [CellText.Cut($"{c.Name}{(c.State.Length > 0 ? ": " : "")}{c.State}", width), $" {c.Left,9} {c.Liquid,9} {c.Pressure,10}"])) + (each.Count > 0 ? 1 : 0);
        y = Lines(sheet, left, y, CellText.Wrap(CursorWords.NearestEvent(view), width)) + 1;
        y = Lines(sheet, left, y, Legend(view));
        string[] cautions = [.. view.Units.InOwn(Cautions.Short).SelectMany(c => CellText.Wrap(c, width))];
        if (y + 1 + cautions.Length < sheet.Height - 1)
            Lines(sheet, left, sheet.Height - 1 - cautions.Length, cautions);
    }

    private static int Lines(Sheet sheet, int left, int y, IEnumerable<string> lines)
    {
        foreach (string line in lines.Take(Math.Max(0, sheet.Height - 1 - y)))
            sheet.Put(left, y++, line);
        return y;
    }

    private static IEnumerable<string> Legend(NightView view)
    {
        EventKindWords[] present = [.. view.Marks.Select(m => m.Words).Distinct().OrderByDescending(w => w.Rank)];
        return present.Length == 0 ? ["no events this night"] : ["events this night", .. present.Select(w => view.Units.InOwn(w.Sentence))];
    }
}
