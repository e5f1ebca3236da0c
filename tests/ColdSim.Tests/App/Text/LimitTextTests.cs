using ColdSim.App.Text;
using ColdSim.Tests.Planning.Limits;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Text;

/// <summary>How limits made up by hand look.</summary>
public class LimitTextTests
{
    [Fact]
    public void The_table_in_us_units() => Snapshot.Match(Joined(LimitTable.Lines(HandLimits.Chart, UnitStyle.Us)));

    [Fact]
    public void The_table_in_si_units() => Snapshot.Match(Joined(LimitTable.Lines(HandLimits.Chart, UnitStyle.Si)));

    [Fact]
    public void The_chart_in_us_units() => Snapshot.Match(Joined(LimitPlot.Lines(HandLimits.Chart, UnitStyle.Us)));

    [Fact]
    public void The_page_in_us_units()
        => Snapshot.Match(Joined(LimitPage.Lines(HandLimits.Chart, UnitStyle.Us, new DateTimeOffset(2027, 1, 2, 0, 0, 0, TimeSpan.Zero))));

    private static string Joined(IReadOnlyList<string> lines) => string.Join('\n', lines) + "\n";
}
