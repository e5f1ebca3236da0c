using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using ColdSim.App.Text;
using Xunit;

namespace ColdSim.Tests.App.Text;

public partial class ClockTextTests
{
    private static readonly DateTimeOffset Morning = new(2027, 1, 14, 6, 29, 59, TimeSpan.FromHours(-7));

    [Fact]
    public void A_time_is_rounded_to_the_nearest_minute()
    {
        Assert.Equal("06:30", ClockText.Clock(Morning));
        Assert.Equal("06:30", ClockText.Clock(Morning.AddSeconds(30)));
        Assert.Equal("06:29", ClockText.Clock(Morning.AddSeconds(-30)));
    }

    [Fact]
    public void The_day_goes_with_the_rounded_time()
    {
        DateTimeOffset late = new(2026, 12, 31, 23, 59, 45, TimeSpan.FromHours(-7));
        Assert.Equal("Fri 01 Jan 00:00", ClockText.DayClock(late));
        Assert.Equal("Fri 1 Jan 2027 00:00", ClockText.DayOfYear(late));
        Assert.Equal("1 Jan 00:00", ClockText.DateClock(late));
        Assert.Equal("2027-01-01 00:00", ClockText.NumberedDateClock(late));
        Assert.Equal("Fri 2027-01-01 00:00 -07:00", ClockText.WithOffset(late));
        Assert.Equal("Friday 1 January 2027, 00:00 (UTC-07:00)", ClockText.Start(late));
    }

    [Fact]
    public void Nothing_else_of_the_program_writes_a_clock_time()
    {
        string[] others = [.. Directory.EnumerateFiles(App(), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains(Path.DirectorySeparatorChar + "obj" + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            .Where(f => Path.GetFileName(f) != "ClockText.cs" && File.ReadLines(f).Any(l => Written().IsMatch(l)))
            .Select(f => Path.GetFileName(f)!)];
        Assert.Empty(others);
    }

    [GeneratedRegex("(ToString\\(\"[^\"]*|:[^\"}]*)HH:mm")]
    private static partial Regex Written();

    private static string App([CallerFilePath] string here = "")
        => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "..", "src", "ColdSim.App"));
}
