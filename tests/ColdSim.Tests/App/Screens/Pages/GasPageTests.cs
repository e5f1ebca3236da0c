using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Model.Arrangement;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using Snapshooter;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Screens.Pages;

/// <summary>The gas page of a blend; who drew what gas is looked at beside the text of a run.</summary>
public class GasPageTests
{
    private static readonly Lazy<RunReport> OneBurner = new(
        () => Rigs.Nights(Rigs.Heated() with { Gas = Blends.Winter }, Rigs.Steady(-5, 54), 2));

    private static readonly Lazy<RunReport> Pair = new(() => Rigs.Nights(
        Rigs.Heated() with { Gas = Blends.Winter, Cylinders = [Rigs.Bottle("20 lb"), Rigs.Bottle("20 lb")], Arrangement = new AutomaticChangeover() },
        Rigs.Steady(-5, 30), 1));

    private static IPage Page(RunReport report, UnitStyle units) => Assert.Single(GasPage.Of(report, units));

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_blend_with_one_burner_looks_like_this(int width, int height)
        => Snapshot.Match(
            FrameSheet.Draw(new([Page(OneBurner.Value, UnitStyle.Us).Update(new PageMessage.NextNight(1))], UnitStyle.Us), width, height).ToString(),
            SnapshotNameExtension.Create(width, height));

    [Fact]
    public void Each_cylinder_has_a_row_of_its_own_and_no_other_night_is_there()
    {
        string text = Page(Pair.Value, UnitStyle.Si).Draw(80, 23).ToString();
        Assert.Equal(2, text.Split('\n').Count(l => l.Contains(" 20 lb", StringComparison.Ordinal)));
        Assert.Contains("behind", text, StringComparison.Ordinal);
        string second = Page(OneBurner.Value, UnitStyle.Us).Update(new PageMessage.NextNight(1)).Draw(80, 23).ToString();
        Assert.DoesNotContain("Tue 12 Jan", second, StringComparison.Ordinal);
        Assert.Equal(2, second.Split("Wed 13 Jan").Length - 1);
    }

    [Fact]
    public void Without_room_who_drew_what_goes_first()
    {
        string text = Page(OneBurner.Value, UnitStyle.Us).Draw(60, 15).ToString();
        Assert.Contains("furnace", text, StringComparison.Ordinal);
        Assert.DoesNotContain("behind", text, StringComparison.Ordinal);
        foreach (int height in (int[])[0, 1, 5, 16, 20, 60])
            Assert.Equal(height, Page(OneBurner.Value, UnitStyle.Us).Draw(60, height).Height);
    }

    [Fact]
    public void The_page_says_what_the_parts_are_only_where_there_are_any()
    {
        Assert.Contains(Page(OneBurner.Value, UnitStyle.Us).Help, l => l.Contains("blend", StringComparison.Ordinal));
        RunReport propane = Rigs.Nights(ColdSim.Tests.Model.Appliances.Everything.Rig, Rigs.Steady(-14, 30), 1);
        Assert.DoesNotContain(Page(propane, UnitStyle.Us).Help, l => l.Contains("blend", StringComparison.Ordinal));
    }
}
