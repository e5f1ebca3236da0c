using System.Globalization;
using ColdSim.Files;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Nights;
using UnitsNet;
using UnitsNet.Units;

namespace ColdSim.App.Text;

/// <summary>Sets rows of figures under their headings, in a person's units; the same for text and screen.</summary>
/// <param name="table">Which table, and so which columns.</param>
/// <param name="units">The units to print.</param>
internal sealed class FigureTable(ReportTable table, UnitStyle units)
{
    private const int LongestText = 46;

    /// <summary>What headings need to know of the scenario.</summary>
    public FigureContext Context { get; init; } = FigureContext.None;

    /// <summary>How the name of one of several, such as a cylinder, is set into a heading's lines.</summary>
    public Func<string, IEnumerable<string>> NameLines { get; init; } = name => [name];

    /// <summary>The clock that times are shown by; each one's own where null.</summary>
    public TimeSpan? Offset { get; init; }

    /// <summary>Columns between.</summary>
    public int Gap { get; init; } = 1;

    /// <summary>Where texts are cut.</summary>
    public int WidestText { get; init; } = int.MaxValue;

    /// <summary>The heading's lines, then a line a row; a cell of several lines makes its row as high.</summary>
    /// <param name="figures">The rows' figures.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="own">Columns that the rows' figures do not have, such as a pointer.</param>
    public IReadOnlyList<string> Lines<TRow>(IEnumerable<Figure<TRow>> figures, IReadOnlyList<TRow> rows, params IEnumerable<Cells<TRow>> own)
    {
        TextGrid grid = Grid(figures, rows, own);
        return TextTable.Lines(grid.Columns, [.. grid.Rows.SelectMany(Split)], Gap);
    }

    /// <summary>The same before it is set into lines, for formats that have tables of their own.</summary>
    /// <param name="figures">The rows' figures.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="own">Columns that the rows' figures do not have.</param>
    public TextGrid Grid<TRow>(IEnumerable<Figure<TRow>> figures, IReadOnlyList<TRow> rows, params IEnumerable<Cells<TRow>> own)
    {
        Cells<TRow>[] columns = [.. own.Concat(Columns(figures, rows)).OrderBy(c => c.Order)];
        return new([.. columns.Select(c => c.Heading)], [.. rows.Select((row, place) => (IReadOnlyList<string>)[.. columns.Select(c => c.Of(row, place))])]);
    }

    /// <summary>The columns that the figures have for these rows.</summary>
    public IEnumerable<Cells<TRow>> Columns<TRow>(IEnumerable<Figure<TRow>> figures, IReadOnlyList<TRow> rows)
        => figures.ColumnsIn(table).Where(c => c.Shown?.Invoke(rows) ?? true).SelectMany(Each);

    /// <summary>A value as a table shows it; "-" for none.</summary>
    /// <param name="value">The value.</param>
    /// <param name="display">How the value is shown.</param>
    /// <param name="units">The units to print.</param>
    public static string Cell(object? value, Display display, UnitStyle units) => value switch
    {
        null => "-",
        string text => Text(VisibleText.Of(text), display),
        Word word => word.Text,
        bool flag => flag ? "yes" : "no",
        int count => UnitStyle.Number(count, 0),
        double number when !double.IsFinite(number) => "-",
        double number => display switch
        {
            Display.Chance => ChanceSentence.Figure(number),
            Display.Share => ChanceSentence.Share(number),
            Display.Money or Display.TwoDecimals => UnitStyle.Number(number, 2),
            Display.OneDecimal => UnitStyle.Number(number, 1),
            _ => UnitStyle.Number(number, 0),
        },
        StatedError error => GaugeText.Size(error, error.Uncertainty, units),
        Proportion chance => $"{ChanceSentence.Figure(chance.Low_frac)}-{ChanceSentence.Figure(chance.High_frac)}",
        Temperature t when display == Display.WithUnit => units.Temperature(t.Kelvins),
        Pressure p when display == Display.WithUnit => units.Pressure(p.Pascals),
        ElectricPotential v => display == Display.WithUnit ? UnitStyle.Volts(v.Volts) : UnitStyle.Number(v.Volts, 2),
        Temperature t => display == Display.WholeDegrees ? UnitStyle.Number(units.TemperatureIn(t.Kelvins), 0) : units.TemperatureNumber(t.Kelvins),
        TemperatureDelta d => UnitStyle.Number(units.DifferenceIn(d.Kelvins), 1),
        Mass m => display == Display.FineMass ? UnitStyle.Number(units.MassIn(m.Kilograms), 2) : units.MassNumber(m.Kilograms),
        Pressure p when display == Display.GaugePressure => units.GaugePressureNumber(p.Pascals),
        Pressure p => units.PressureNumber(p.Pascals),
        Power p when display == Display.ShortPower => ShortPower((double)p.Watts, units),
        Power p => units.PowerNumber((double)p.Watts),
        Energy e => display == Display.WattHours ? UnitStyle.Number(e.WattHours, 0) : units.Energy(e.Joules).Split(' ')[0],
        Length l => units.IsUs ? UnitStyle.Number(l.Inches, display == Display.OneDecimal ? 1 : 2) : UnitStyle.Number(l.Millimeters, 0),
        Duration d when display == Display.Microseconds => UnitStyle.Number(d.Microseconds, 0),
        Duration d => display == Display.Hours ? UnitStyle.Number(d.Hours, 1) : ClockText.SpanShort(d),
        Ratio r => UnitStyle.Number(r.Percent, display == Display.FinePercent ? 1 : 0) + (display == Display.PercentSign ? " %" : ""),
        DateTimeOffset t => display switch
        {
            Display.DayClock => ClockText.DayClock(t),
            Display.DateClock => ClockText.DateClock(t),
            _ => ClockText.Clock(t),
        },
        DateOnly day => day.ToString("ddd dd MMM", CultureInfo.InvariantCulture),
        _ => throw new ArgumentException($"a value of {value.GetType().Name} cannot be shown"),
    };

    private static string Text(string text, Display display)
        => display == Display.ShortText && text.Length > LongestText ? text[..(LongestText - 3)] + "..." : text;

    private object? Local(object? value) => value is DateTimeOffset time && Offset is { } offset ? time.ToOffset(offset) : value;

    private static string ShortPower(double watt, UnitStyle units)
        => units.IsUs ? UnitStyle.Number(UnitStyle.Hundreds(units.PowerIn(watt)), 0) : UnitStyle.Number(units.PowerIn(watt), 1);

    private static IEnumerable<IReadOnlyList<string>> Split(IReadOnlyList<string> cells)
    {
        string[][] lines = [.. cells.Select(c => c.Split('\n'))];
        for (int i = 0; i < lines.Max(l => l.Length); i++)
            yield return [.. lines.Select(l => l.ElementAtOrDefault(i) ?? "")];
    }

    private IEnumerable<Cells<TRow>> Each<TRow>(FigureColumn<TRow> column)
    {
        if (column.Names is null)
        {
            yield return new(new TextColumn([.. Heading(column, null)], column.Left), column.Order, (row, _) => Cut(Cell(Local(column.Value(row)), column.Display, units)));
            yield break;
        }

        IReadOnlyList<string> names = column.Names(Context);
        for (int i = 0; i < names.Count; i++)
        {
            int place = i;
            yield return new(new TextColumn([.. Heading(column, names[i])], column.Left), column.Order,
                (row, _) => column.Value(row) is IReadOnlyList<object?> all && place < all.Count ? Cell(all[place], column.Display, units) : "-");
        }
    }

    private string Cut(string cell) => cell.Length > WidestText ? cell[..WidestText] : cell;

    private IEnumerable<string> Heading<TRow>(FigureColumn<TRow> column, string? name) => column.Heading.Split('|').SelectMany(line => line == "{name}"
        ? NameLines(VisibleText.Of(name!))
        : [line.Replace("{unit}", UnitOf(column.Unit, column.Display), StringComparison.Ordinal)
            .Replace("{dawn}", Context.Dawn, StringComparison.Ordinal)
            .Replace("{currency}", VisibleText.Of(Context.Currency), StringComparison.Ordinal)
            .Replace("{fifty}", units.WholeTemperature(CoolDown.Fifty_K), StringComparison.Ordinal)]);

    private string UnitOf(Enum? unit, Display display) => unit switch
    {
        TemperatureUnit or TemperatureDeltaUnit => units.TemperatureUnit,
        MassUnit => units.MassUnit,
        PressureUnit => units.PressureUnit,
        PowerUnit => units.PowerUnit,
        EnergyUnit => display == Display.WattHours ? "Wh" : units.EnergyUnit,
        DurationUnit => display == Display.Hours ? "h" : "h:mm",
        RatioUnit => "%",
        LengthUnit => units.IsUs ? "in" : "mm",
        _ => "",
    };

    /// <summary>A column's heading, where it comes among the others, and its cell in a row, given the row and its place.</summary>
    internal sealed record Cells<TRow>(TextColumn Heading, int Order, Func<TRow, int, string> Of);
}
