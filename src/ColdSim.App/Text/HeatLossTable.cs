using ColdSim.Model;
using ColdSim.Model.Coach;

namespace ColdSim.App.Text;

/// <summary>Where the coach loses its heat, and what difference the furnace can hold against it.</summary>
internal static class HeatLossTable
{
    private const double UsPerSi = 1 / (0.29307107017222 * 1.8);
    private const double SquareInch_cm2 = 6.4516;

    public static IReadOnlyList<string> Lines(Rig rig, UnitStyle units)
    {
        if (rig.Coach is not { } coach)
            return ["No coach: the cylinder stands alone."];
        List<HeatLossItem> items = [.. coach.HeatLoss];
        if (coach.GroundConductance_W_K > 0)
            items.Add(new("ground under the skirt", coach.GroundConductance_W_K));
        double total = items.Sum(i => i.Conductance_W_K);
        List<IReadOnlyList<string>> rows = [.. items.Select(i => Row(i.Name, i.Conductance_W_K, total, units))];
        rows.Add(Row("together", total, total, units));
        List<string> lines =
        [
            .. TextTable.Lines([new(["Part"], Left: true), new([units.IsUs ? "BTU/h per °F" : "W/K"]), new(["Share"])], rows, gap: 2),
        ];
        lines.AddRange(Wrap.Lines(Leakage(coach, units)));
        if (Balance(rig, total, units) is { } balance)
            lines.AddRange(Wrap.Lines(balance));
        return lines;
    }

    private static string[] Row(string name, double conductance_W_K, double total_W_K, UnitStyle units) =>
    [
        name.Length <= 52 ? name : name[..49] + "...",
        UnitStyle.Number(units.IsUs ? conductance_W_K * UsPerSi : conductance_W_K, 1),
        total_W_K > 0 ? $"{UnitStyle.Number(100 * conductance_W_K / total_W_K, 0)} %" : "-",
    ];

    private static string Leakage(CoachSpecification coach, UnitStyle units)
    {
        if (coach.LeakageArea_cm2 <= 0)
            return "Draughts are taken as part of these numbers.";
        string area = units.IsUs
            ? $"{UnitStyle.Number(coach.LeakageArea_cm2 / SquareInch_cm2, 0)} in²"
            : $"{UnitStyle.Number(coach.LeakageArea_cm2, 0)} cm²";
        return $"Draughts come on top, through {area} of leakage; they grow with wind and cold.";
    }

    private static string? Balance(Rig rig, double total_W_K, UnitStyle units)
    {
        if (rig.Furnace is not { } furnace || total_W_K <= 0)
            return null;
        double useful_W = furnace.Input_W * furnace.Efficiency_frac;
        string before = rig.Coach!.LeakageArea_cm2 > 0 ? " before draughts" : "";
        return $"The furnace gives {units.Power(useful_W)} of useful heat at sea level, which balances a difference of "
            + $"{units.Difference(useful_W / total_W_K)} between inside and outside{before}.";
    }
}
