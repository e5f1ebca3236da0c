using ColdSim.Model.Cylinder;
using ColdSim.Planning.Capacity;

namespace ColdSim.Validation.Durations;

/// <summary>Rows of the trade's table of what a 100 lb cylinder gives, beside ours for a stated time.</summary>
/// <remarks>The table states no time, wind or humidity, so ours is shown and not judged; <c>coldsim capacity "100 lb"</c> prints the same.</remarks>
internal static class TradeTable
{
    private const double BtuPerHour_W = 0.29307107;

    private static readonly CapacityTime[] Times = [CapacityTime.Hours(1), CapacityTime.Hours(4), CapacityTime.Hours(8), CapacityTime.WithoutEnd];

    // Pounds in the cylinder, air in °F, BTU/h as printed.
    private static readonly (double Pounds, double Air_F, double Printed)[] Printed =
    [
        (100, 0, 113_000), (50, 0, 64_000), (20, 0, 36_000),
        (100, 20, 167_000), (50, 20, 94_000), (20, 20, 51_000),
        (100, 40, 214_000), (50, 40, 125_000), (20, 40, 68_000),
    ];

    /// <summary>A row of the table with ours for each time over what is printed.</summary>
    public static IReadOnlyList<(double Pounds, double Air_F, double Printed, double[] Ours)> Rows()
    {
        double[] airs_F = [.. Printed.Select(p => p.Air_F).Distinct()], pounds = [.. Printed.Select(p => p.Pounds).Distinct()];
        CapacityTable table = CapacityTable.Of(new CapacityQuestion
        {
            Cylinder = StandardSize.Find("100 lb")!.Full() with { },
            Lows_K = [.. airs_F.Select(f => (f + 459.67) / 1.8)],
            Fills_frac = [.. pounds.Select(p => p / 100)],
            Times = Times,
        });
        return [.. Printed.Select(p => (p.Pounds, p.Air_F, p.Printed, Times.Select((_, t) =>
            table.At(t, Array.IndexOf(airs_F, p.Air_F), Array.IndexOf(pounds, p.Pounds)).Draw_W / BtuPerHour_W).ToArray()))];
    }
}
