using ColdSim.Model;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Text.Answers;

/// <summary>A chart of limits as an answer: how cold a night this rig is fed through as it is now, what would move that, and the limits by fill.</summary>
internal static class LimitAnswer
{
    // Of the rows those matter most that are near to what is in the cylinders.
    private const int MostRows = 9;

    /// <summary>The answer.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="units">The units to print.</param>
    public static Answer Of(LimitChart chart, UnitStyle units)
    {
        LimitColumn own = LimitWords.Own(chart);
        return new()
        {
            Brief = Wrap.Cut($"{Down(own.Now, chart, units)} ({Contents(chart, units)}{Bare(own)})", Wrap.Columns),
            Verdict = $"As it is now ({Contents(chart, units)}{Bare(own)}), this rig holds {Down(own.Now, chart, units)}.",
            Consequences = [.. Comfort(own), .. BelowMinimum(own, chart, units)],
            ToDo = "To get through a colder night:",
            Actions = [.. chart.Columns.Where(c => c != own).Select(c => $"{With(c.RigVariant, chart.Scenario.Rig)}: {Down(c.Now, chart, units)}.")],
            Table = Table(chart, own, units),
            Caution = $"Caution: edges, not plans. Stay {units.WholeDifference(5)} or more on the warm side; more in wind.",
        };
    }

    private static string Bare(LimitColumn own) => own.RigVariant.AsItIs ? "" : ", but without its blanket";

    private static string Contents(LimitChart chart, UnitStyle units)
        => string.Join(" and ", chart.Scenario.Rig.Cylinders.Select(c => units.RoundMass(c.Contents_kg)));

    private static IEnumerable<string> Comfort(LimitColumn own)
    {
        if (own.Now is { FurnaceTooSmall: true })
            yield return "One step colder it is the furnace that is too small, not the cylinder.";
    }

    private static IEnumerable<string> BelowMinimum(LimitColumn own, LimitChart chart, UnitStyle units)
    {
        if (own.NowShutting is { } cell)
            yield return $"If the regulator gives nothing below {units.Pressure(own.RigVariant.Rig.MinimumInlet_Pa)}, its minimum inlet: {Down(cell, chart, units)}.";
    }

    private static string With(RigVariant setUp, Rig rig) => setUp.Kind switch
    {
        RigVariantKind.Bare => "Without the blanket",
        RigVariantKind.Blanket => $"{UnitStyle.Number(setUp.Blanket!.Power_W, 0)} W blanket{(rig.Cylinders.Count > 1 ? " on each" : "")}{(setUp.Powered ? "" : " without power")}",
        RigVariantKind.SecondCylinder => rig.Cylinders.Count == 1 ? "Second cylinder, as full, both open" : "One more cylinder, as full, all open",
        _ => "Both of these",
    };

    private static string Down(LimitCell cell, LimitChart chart, UnitStyle units) => cell.Kind switch
    {
        LimitKind.HoldsAtColdest => $"down to {units.WholeTemperature(chart.Axis.Coldest_K)}, the coldest tried",
        LimitKind.NotAtWarmest => $"not even at {units.WholeTemperature(chart.Axis.Warmest_K)}, the warmest tried",
        _ => $"down to a low of {units.Temperature(cell.Low_K)}",
    };

    private static AnswerTable Table(LimitChart chart, LimitColumn own, UnitStyle units)
    {
        IReadOnlyList<string> lines = LimitTable.Lines(chart, units);
        int rows = chart.Fills.Count + 1, head = lines.Count - rows;
        string signs = string.Concat(chart.Cells.Any(c => c.Kind != LimitKind.NotAtWarmest && c.FurnaceTooSmall) ? " *: one step colder the furnace is too small." : "",
            chart.Cells.Any(c => c.Emptied && c.Kind != LimitKind.HoldsAtColdest) ? " d: then it is empty." : "");
        return new([.. lines.Take(head)], [.. lines.Skip(head).Select((line, i) => new AnswerRow(line, Importance(chart, own, i - 1)))], hidden => $"{hidden.Count} more fills with --full.")
        {
            Title = $"The low down to which it holds for a night, {ClockText.Clock(chart.Night.From)} to {ClockText.Clock(chart.Night.To)}.{signs}",
            Most = MostRows,
        };
    }

    private static double Importance(LimitChart chart, LimitColumn own, int fill) => fill < 0 ? 1 : -Math.Abs(chart.Fills[fill] - own.Now.Fill_frac);
}
