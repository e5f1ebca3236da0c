using ColdSim.Planning.Freezing;

namespace ColdSim.App.Text;

/// <summary>The next hour of a run that starts now, in a few sentences.</summary>
internal static class NextHourText
{
    public static TextSection Section(NextHour hour, UnitStyle units)
        => new($"The next hour, from {ClockText.Clock(hour.From)}", [.. Sentences(hour, units).SelectMany(s => Wrap.Lines(s, rest: "  "))]);

    public static IEnumerable<string> Sentences(NextHour hour, UnitStyle units)
    {
        string to = ClockText.Clock(hour.To);
        yield return hour.FirstShort is { } at
            ? at <= hour.From.AddMinutes(1) ? "Gas is short already." : $"Gas runs short at {ClockText.Clock(at)}."
            : $"The furnace gets all its gas until {to}: {units.Mass(hour.GasUsed.Kilograms)} burnt, {units.Mass(hour.LeftAtEnd.Kilograms)} left.";
        if (hour.InsideAtEnd is { } inside)
            yield return $"Inside is at {units.Temperature(inside.Kelvins)} at {to}{(hour.InsideIfOut is { } without ? $"; if the furnace stays out, at {units.Temperature(without.Kelvins)}" : "")}.";
        if (hour.IfOut is { } stop)
            yield return FreezeSentence.If(stop, units);
    }
}
