using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Planning.Freezing;

/// <summary>The first hour of a run that starts at the present moment.</summary>
internal sealed record NextHour
{
    private static readonly TimeSpan Hour = TimeSpan.FromHours(1);

    /// <summary>The present moment.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>The end of the hour, or of the run.</summary>
    public required DateTimeOffset To { get; init; }

    /// <summary>Inside air at its end; null without a coach.</summary>
    public required Temperature? InsideAtEnd { get; init; }

    /// <summary>The coldest inside in it; null without a coach.</summary>
    public required Temperature? InsideLow { get; init; }

    /// <summary>When gas is first too little in it; null where it is not.</summary>
    public required DateTimeOffset? FirstShort { get; init; }

    /// <summary>Gas burnt in it.</summary>
    public required Mass GasUsed { get; init; }

    /// <summary>Gas left in all cylinders at its end.</summary>
    public required Mass LeftAtEnd { get; init; }

    /// <summary>Inside air at its end if the furnace stays out from now on; null without a coach.</summary>
    public required Temperature? InsideIfOut { get; init; }

    /// <summary>What follows if the furnace stays out from now on; null without a coach.</summary>
    public required CoolDown? IfOut { get; init; }

    /// <summary>The hour of a run.</summary>
    /// <param name="report">The run.</param>
    /// <returns>Null where it does not start at the present moment.</returns>
    public static NextHour? Of(RunReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        Scenario scenario = report.Scenario;
        if (!scenario.StartsNow) return null;
        RunSeries series = report.Series;
        if (series.Count == 0) return null;
        int end = Math.Min(series.Count - 1, (int)(Hour.TotalSeconds / RunSeries.Spacing_s));
        DateTimeOffset to = scenario.Start.AddSeconds(end * RunSeries.Spacing_s);
        double low_K = double.PositiveInfinity;
        for (int i = 0; i <= end; i++) low_K = Math.Min(low_K, series.Inside_K[i]);
        CoolDown? stays = scenario.Rig.Coach is not null && CoolDownRun.Reaches(scenario, scenario.Start) ? CoolDownRun.At(scenario, scenario.Start) : null;
        return new NextHour
        {
            From = scenario.Start,
            To = to,
            InsideAtEnd = Finite(series.Inside_K[end]),
            InsideLow = Finite(low_K),
            FirstShort = report.Nights.Select(n => n.FirstShort).FirstOrDefault(t => t is not null) is { } at && at <= to ? at : null,
            GasUsed = Mass.FromKilograms(series.Propane_kg[0] - series.Propane_kg[end]),
            LeftAtEnd = Mass.FromKilograms(series.Propane_kg[end]),
            InsideIfOut = stays is null ? null : InsideWithoutFurnace(scenario, end),
            IfOut = stays,
        };
    }

    private static Temperature? Finite(double value_K) => double.IsFinite(value_K) ? Temperature.FromKelvins(value_K) : null;

    private static Temperature? InsideWithoutFurnace(Scenario scenario, int end)
    {
        RunReport cold = NightRun.Of(scenario with { HeatStops = scenario.Start, StartsNow = false });
        return end < cold.Series.Count ? Finite(cold.Series.Inside_K[end]) : null;
    }
}
