using ColdSim.Model.Coach;
using ColdSim.Planning.HeatLoss;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>Where the coach loses its heat, and what the furnace has against it.</summary>
internal static class HeatLossTable
{
    private const double UsPerSi = 1 / (0.29307107017222 * 1.8);
    private const int LongestName = 52;

    public static IReadOnlyList<string> Lines(HeatLossBreakdown? loss, UnitStyle units)
    {
        if (loss is null) return ["No coach: the cylinder stands alone."];
        List<IReadOnlyList<string>> rows = [.. loss.Items.Select(i => Row(i, loss.Total_W_K, units))];
        rows.Add(Row(new HeatLossItem("together", loss.Total_W_K), loss.Total_W_K, units));
        List<string> lines =
        [
            .. TextTable.Lines([new(["Part"], Left: true), new([units.IsUs ? "BTU/h per °F" : "W/K"]), new(["Share"])], rows, gap: 2),
        ];
        lines.AddRange(Wrap.Lines(AtTheColdest(loss, units)));
        if (!loss.HasInfiltration) lines.AddRange(Wrap.Lines("Draughts are taken as part of these numbers."));
        if (loss.FurnaceHeat is { } heat) lines.AddRange(Wrap.Lines(Against(loss, heat, units)));
        return lines;
    }

    private static string[] Row(HeatLossItem item, double total_W_K, UnitStyle units) =>
    [
        item.Name.Length <= LongestName ? item.Name : item.Name[..(LongestName - 3)] + "...",
        UnitStyle.Number(units.IsUs ? item.Conductance_W_K * UsPerSi : item.Conductance_W_K, 1),
        total_W_K > 0 ? $"{UnitStyle.Number(100 * item.Conductance_W_K / total_W_K, 0)} %" : "-",
    ];

    private static string AtTheColdest(HeatLossBreakdown loss, UnitStyle units)
        => $"At the coldest hour of the weather, {units.Temperature(loss.Outside.Kelvins)} with "
            + $"{units.Speed(loss.Wind.MetersPerSecond)} of wind and inside at {units.Temperature(loss.Inside.Kelvins)}, "
            + $"this is {units.Power((double)loss.Loss.Watts)}; people and things give {units.Power((double)loss.Gains.Watts)}.";

    private static string Against(HeatLossBreakdown loss, Power heat, UnitStyle units)
    {
        double share = (double)((loss.Loss.Watts - loss.Gains.Watts) / heat.Watts);
        string gives = $"The furnace gives at most {units.Power((double)heat.Watts)} at this altitude: ";
        return share > 1
            ? gives + "too little for that hour, even with all the gas it wants."
            : gives + $"it burns {UnitStyle.Number(100 * Math.Max(0, share), 0)} % of that hour.";
    }
}
