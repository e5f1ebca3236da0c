using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using UnitsNet;

namespace ColdSim.App.Screens.Readings;

/// <summary>Draws the form, and what the reading typed so far means.</summary>
internal static class EntrySheet
{
    private const int Top = 4;
    private const int TextAt = 16;

    public static void Draw(Sheet sheet, ReadingsPage page)
    {
        EntryForm form = page.Form;
        int y = Top;
        foreach (FormField field in form.Fields(page.Scenario.Rig))
        {
            bool here = field == form.Field;
            sheet.Put(0, y, here ? ">" : " ", CellStyle.Strong);
            sheet.Put(2, y, Name(field), here ? CellStyle.Strong : CellStyle.Plain);
            int room = Math.Max(4, sheet.Width - TextAt - 1);
            if (form.Text(field) is { } text)
            {
                // A long text shows its end, where it is typed.
                string shown = CellText.SingleWidth(text);
                shown = shown.Length <= room ? shown : "…" + shown[^(room - 1)..];
                sheet.Put(TextAt, y, shown, CellStyle.Strong);
                if (here)
                    sheet.Put(TextAt + shown.Length, y, ' ', CellStyle.Pointer);
                if (text.Length == 0)
                    sheet.Put(TextAt + 2, y, CellText.Cut(Hint(field, page), room - 2));
            }
            else
            {
                string chosen = Chosen(field, page);
                sheet.Put(TextAt, y, chosen, here ? CellStyle.Pointer : CellStyle.Strong);
                string others = Others(field, page);
                if (here && TextAt + chosen.Length + 2 + others.Length < sheet.Width)
                    sheet.Put(TextAt + chosen.Length + 2, y, others);
            }

            y++;
        }

        foreach ((string text, CellStyle style) in Answer(page).SelectMany(l => CellText.Wrap(l.Text, sheet.Width).Select(t => (t, l.Style))))
        {
            if (++y < sheet.Height - 2)
                sheet.Put(0, y, CellText.SingleWidth(text), style);
        }

        sheet.Put(0, sheet.Height - 1, CellText.Join([.. page.Keys.Select(k => k.Brief), "Ctrl-Q quit"], "  ", sheet.Width));
    }

    private static string Name(FormField field) => field switch
    {
        FormField.At => "read at",
        FormField.Filled => "filled since",
        FormField.Rested => "at rest",
        _ => field.ToString().ToLowerInvariant(),
    };

    private static string Hint(FormField field, ReadingsPage page) => field switch
    {
        FormField.Reading => $"what was read, such as {page.Form.Sample}",
        FormField.Temperature => "of the liquid, such as 10 °F",
        FormField.Tare => $"as stamped; empty takes the scenario's, {page.Units.Mass(page.Scenario.Rig.Cylinders[page.Form.Cylinder].Tare_kg)}",
        FormField.At => $"now, {ClockText.DayClock(page.Now)}; or such as {ClockText.Typed(page.Now)}",
        _ => "a few words, or none",
    };

    private static string Chosen(FormField field, ReadingsPage page) => field switch
    {
        FormField.Cylinder => LogCylinders.NameOf(page.Scenario.Rig, page.Form.Cylinder),
        FormField.Method => page.Form.Method,
        FormField.Rested => page.Form.Rested ? "yes" : "no",
        _ => page.Form.Filled ? "yes" : "no",
    };

    private static string Others(FormField field, ReadingsPage page) => field switch
    {
        FormField.Cylinder => $"of {string.Join(", ", LogCylinders.NamesOf(page.Scenario.Rig))}",
        FormField.Method => $"of {string.Join(", ", LogMethods.All)}",
        FormField.Rested => "yes where nothing was drawn or charged for hours",
        _ => "yes where it was filled or changed",
    };

    private static IEnumerable<(string Text, CellStyle Style)> Answer(ReadingsPage page)
    {
        EntryForm form = page.Form;
        if (page.Notice.Length > 0)
            yield return (page.Notice, CellStyle.Strong);
        if (form.Reading.Trim().Length == 0)
            yield break;
        (LogEntry? entry, LogReading? reading, IReadOnlyList<string> faults) = form.Read(page.Scenario.Rig, page.Now);
        if (entry is not null && reading is null)
        {
            yield return (LogText.Entry(entry, page.Scenario.Rig, page.Units), CellStyle.Strong);
            yield break;
        }

        if (entry is null || reading is null)
        {
            yield return ("Cannot be read yet:", CellStyle.Strong);
            foreach (string fault in faults)
                yield return (fault, CellStyle.Plain);
            yield break;
        }

        ContentsEstimate held = reading.Contents(page.Scenario.Rig);
        Mass mass = held.Mass, error = held.StandardUncertainty;
        double legal_kg = page.Scenario.Rig.Cylinders[reading.Cylinder].LegalFill_kg;
        yield return ($"holds {Number(mass.Pounds, 1)} ± {Number(error.Pounds, 1)} lb of propane", CellStyle.Strong);
        yield return (
            $"that is {Number(mass.Kilograms, 2)} ± {Number(error.Kilograms, 2)} kg, {Number(100 * mass.Kilograms / legal_kg, 0)} % of the legal fill; ± is one standard uncertainty", CellStyle.Plain);
        if (page.Scenario.Legs.Count == 0 && (reading.Time < page.Scenario.Weather.First || reading.Time > page.Scenario.Weather.Last))
        {
            yield return (
                $"outside the scenario's weather, {ClockText.DayClock(page.Scenario.Weather.First)} to {ClockText.DayClock(page.Scenario.Weather.Last)}: "
                + "it is kept, but not predicted or fitted", CellStyle.Plain);
        }

        if (page.Log?.Use.LatestOf(reading.Cylinder) is { } last && !reading.Filled && last.Reading.Time < reading.Time)
        {
            double used_kg = (last.Contents.Mass - held.Mass).Kilograms;
            string since = ClockText.DayClock(last.Reading.Time.ToOffset(page.Scenario.Start.Offset));
            yield return (
                used_kg >= 0 ? $"used since {since}: {page.Units.Mass(used_kg)}"
                    : $"{page.Units.Mass(-used_kg)} more than {since}: filled since?", CellStyle.Plain);
        }
    }

    private static string Number(double value, int decimals) => UnitStyle.Number(value, decimals);
}
