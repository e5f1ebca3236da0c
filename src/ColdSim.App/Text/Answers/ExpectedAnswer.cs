using ColdSim.Planning.Gauges;

namespace ColdSim.App.Text.Answers;

/// <summary>What the instruments of a cylinder should show at a time, as an answer: scale and level first, then what warming changes.</summary>
internal static class ExpectedAnswer
{
    // What fits beside the sentences on a terminal of 24 rows.
    private const int MostRows = 14;

    // A level that differs by less reads the same.
    private const double SamePoints = 0.5;

    /// <summary>The answer.</summary>
    public static Answer Of(ExpectedReadings expected, UnitStyle units)
    {
        string shows = Shows(expected.Chosen, expected, units);
        string usual = expected.IsUsualInstant ? ", when its liquid is coldest that night" : "";
        return new()
        {
            Brief = OneLine.Of($"{ClockText.ShortDayClock(expected.At)}: {shows}."),
            Verdict = $"{ClockText.DayClock(expected.At)}{usual}: {shows}.",
            Consequences = Consequences(expected, units),
            Table = Table(expected, units),
            Caution = CautionLine.Reading,
        };
    }

    private static string Shows(ExpectedCylinder cylinder, ExpectedReadings expected, UnitStyle units)
    {
        string scale = $"{Called(cylinder, expected)} should weigh {units.Mass(cylinder.Then.Scale.Kilograms)}";
        return !cylinder.Then.HasLiquid ? $"{scale}, with no level: no liquid is left"
            : cylinder.Then.IsLiquidFull ? $"{scale}, full of liquid"
            : $"{scale}, with its level at {Percent(cylinder.Then.OfHeight)} % of the height";
    }

    // A size alone is no name.
    private static string Called(ExpectedCylinder cylinder, ExpectedReadings expected)
        => expected.Run.Scenario.Rig.Cylinders[cylinder.Place].Label is { } label ? label : $"the {cylinder.Name} cylinder";

    private static List<string> Consequences(ExpectedReadings expected, UnitStyle units)
    {
        ExpectedCylinder cylinder = expected.Chosen;
        List<string> all = [];
        if (cylinder.Then.HasLiquid && !cylinder.Then.IsLiquidFull)
            all.Add(Warming(cylinder, units));
        if (expected.Cylinders.Count > 1)
            all.Add(string.Join(" ", expected.Cylinders.Where(c => c.Place != cylinder.Place).Select(c => ExpectedTable.Brief(c, units))));

        return all;
    }

    private static string Warming(ExpectedCylinder cylinder, UnitStyle units)
    {
        InstrumentReadings then = cylinder.Then, other = cylinder.Warmed;
        double points = other.OfHeight.Percent - then.OfHeight.Percent;
        double heard = (other.EchoOfHeight?.Percent ?? 0) - (then.EchoOfHeight?.Percent ?? 0);
        string liquid = units.WholeTemperature(then.Liquid.Kelvins), air = units.WholeTemperature(other.Liquid.Kelvins);
        string at = $"The liquid is at {liquid}, the air at {air}";
        if (Math.Abs(points) < SamePoints && Math.Abs(heard) < SamePoints)
            return $"{at}: as warm as the air it reads the same.";
        if (!other.HasLiquid)
            return $"{at}. Warmed to that, all that is left is vapour, and there is no level.";
        string change = other.Liquid < then.Liquid ? "Cooled to that, with nothing used" : "Warmed to that, with nothing filled";
        string echo = then.EchoOfHeight is { } shown && other.EchoOfHeight is { } later
            ? $" and an echo {Percent(later)} % instead of {Percent(shown)} %" : "";
        return $"{at}. {change}, its level reads {Percent(other.OfHeight)} %{echo}.";
    }

    private static AnswerTable Table(ExpectedReadings expected, UnitStyle units)
    {
        IReadOnlyList<string> lines = ExpectedTable.Lines(expected.Chosen, expected, units);
        AnswerRow[] rows = [.. lines.Skip(1).Select((line, i) => new AnswerRow(line, -i))];
        return new([lines[0]], rows, hidden => $"{hidden.Count} more with --full.")
        {
            Title = $"{ExpectedTable.Title(expected.Chosen, expected, units)}:",
            Most = MostRows,
        };
    }

    private static string Percent(UnitsNet.Ratio ratio) => UnitStyle.Number(ratio.Percent, 0);
}
