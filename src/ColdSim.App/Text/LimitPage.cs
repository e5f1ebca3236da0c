using System.Globalization;
using ColdSim.Model;
using ColdSim.Planning.Limits;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>The limits on one page to be taped inside a cupboard door: at most <see cref="MostLines"/> lines of <see cref="Columns"/>.</summary>
internal static class LimitPage
{
    public const int Columns = 78;
    public const int MostLines = 60;

    /// <summary>Who decides.</summary>
    public const string Deciding = "The code in force, the makers' plates and a licensed technician decide.";

    /// <summary>What to do when gas runs short.</summary>
    public static IReadOnlyList<string> WhenShort { get; } =
    [
        "Thermostat down at once: every degree less is gas that the cylinder need not boil off.",
        "Open or change to the fuller cylinder; the cold one gives again when it has rested.",
        "Other gas appliances off. Brush loose snow off the cylinder; never cover it, never heat it.",
        "If inside keeps falling: leave, or go where there is heat, while that is easy.",
    ];

    /// <summary>How a shortage shows.</summary>
    public static IReadOnlyList<string> Signs { get; } =
    [
        "Furnace fan runs, clicks, no heat, stops (lockout); stove flame low or lazy: pressure is gone.",
        "Frost on the cylinder up to the liquid: it is working hard. Weigh it; a gauge of pressure tells temperature, not how much is left.",
    ];

    /// <summary>What always holds.</summary>
    public static IReadOnlyList<string> Warnings { get; } =
    [
        "No flame, torch or unlisted heater on a cylinder. Cylinders outside, upright, below 125 °F (52 °C).",
        "CO or propane alarm, or smell of gas: everybody out, gas off from outside, call for help.",
        "No ventless heater, stove or oven for heat while anybody sleeps.",
    ];

    public static IReadOnlyList<string> Lines(LimitChart chart, UnitStyle units, DateTimeOffset today)
    {
        List<string> lines = [.. Wrap.Lines(Short(chart.Scenario.Title, 50).ToUpperInvariant() + ": HOW COLD MAY IT GET?", Columns)];
        lines.Add($"Made {today.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)} by coldsim: estimates of a model, not measurements.");
        lines.AddRange(Paragraph(Rig(chart, units)));
        lines.Add("");
        lines.AddRange(Paragraph("The coldest night's low at which the furnace is fed until dawn:"));
        lines.AddRange(LimitTable.Lines(chart, units, withNow: false));
        lines.AddRange(Points([.. LimitWords.SetUps(chart, units).Skip(1).Take(2), .. LimitWords.Signs(chart)]));
        lines.AddRange(Paragraph(Night(chart, units)));
        lines.Add("");
        lines.Add("SIGNS OF RUNNING SHORT");
        lines.AddRange(Points(Signs));
        lines.Add("WHEN SHORT");
        lines.AddRange(Points(WhenShort));
        lines.Add("ALWAYS");
        lines.AddRange(Points(units.InOwn(Warnings)));
        lines.AddRange(Paragraph(Deciding));
        return lines;
    }

    /// <summary>The night of the numbers, and how far to stay off them.</summary>
    public static string Night(LimitChart chart, UnitStyle units)
        => $"Night: {ClockText.Clock(chart.Night.From)} to {ClockText.Clock(chart.Night.To)}, day {units.Difference(StandardNight.Swing_K)} warmer, wind "
            + $"{units.Speed(chart.Night.Air.Wind_m_s)}, to {LimitWords.Tolerance(chart, units)}. Stay {units.Difference(5)} or more on the warm side; more in wind.";

    /// <summary>Which rig the numbers are of.</summary>
    public static string Rig(LimitChart chart, UnitStyle units)
    {
        Rig rig = chart.Scenario.Rig;
        double inside_K = rig.Thermostat!.NightSetPoint_K;
        string cylinders = Short(CylinderWords.Names(rig), 60);
        string shelter = string.Join(" and ", rig.Cylinders.Select(c => LimitWords.Percent(c.Surroundings.WindExposure_frac)).Distinct());
        return $"For: {cylinders}; furnace {units.Power(rig.Furnace!.Input_W)} on its plate; thermostat "
            + $"{units.Temperature(rig.Thermostat.DaySetPoint_K)}, at night {units.Temperature(inside_K)}; {Height(rig.Site.Elevation_m, units)} above "
            + $"the sea; {shelter} of the wind at the cylinder. Other rigs: other numbers.";
    }

    private static string Height(double height_m, UnitStyle units)
        => units.IsUs ? $"{UnitStyle.Number(height_m / Foot_m, 0)} ft" : $"{UnitStyle.Number(height_m, 0)} m";

    private static string Short(string text, int most) => text.Length <= most ? text : text[..(most - 3)] + "...";

    private static IEnumerable<string> Paragraph(string text) => Wrap.Lines(text, Columns);

    private static IEnumerable<string> Points(IEnumerable<string> texts) => texts.SelectMany(t => Wrap.Lines(t, Columns, first: "- ", rest: "  "));
}
