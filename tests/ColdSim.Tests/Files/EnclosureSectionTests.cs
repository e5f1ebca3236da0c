using ColdSim.Files;
using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Cylinder;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary><c>[enclosure]</c>: where the cylinders are.</summary>
public class EnclosureSectionTests
{
    private const string Base = """
        [weather]
        file = "w.csv"
        [[draw]]
        name = "lamp"
        rate = "500 W"

        """;

    private const string One = Base + "[cylinder]\nsize = \"20 lb\"\nleft = \"15 lb\"\n";

    private static Rig Good(string text)
    {
        ReadResult read = Fixtures.Read(text);
        Assert.Empty(read.Problems);
        return read.Scenario!.Rig;
    }

    [Theory]
    [InlineData("open", 0.4, 0.5, false)]
    [InlineData("by the wall", 0.2, 0.25, false)]
    [InlineData("tongue cover", 0.1, 0, true)]
    [InlineData("ventilated locker", 0, 0, true)]
    [InlineData("locker", 0, 0, true)]
    public void Where_the_cylinders_are_gives_what_reaches_them(string kind, double wind, double sky, bool box)
    {
        Rig rig = Good($"{One}[enclosure]\nkind = \"{kind}\"");
        CylinderSurroundings around = rig.Cylinders[0].Surroundings;
        Assert.Equal((wind, sky), (around.WindExposure_frac, around.SkyView_frac));
        Assert.Equal(box, rig.Enclosure is not null);
    }

    [Fact]
    public void Without_it_all_is_as_before_and_a_cylinder_says_for_itself()
    {
        Assert.Equal((0.3, 0.5), (Good(One).Cylinders[0].Surroundings.WindExposure_frac, Good(One).Cylinders[0].Surroundings.SkyView_frac));
        Assert.Null(Good(One).Enclosure);
        Assert.Equal(0.7, Good(One + "[cylinder.surroundings]\nwind_exposure = 0.7\n[enclosure]\nkind = \"tongue cover\"").Cylinders[0].Surroundings.WindExposure_frac);
    }

    [Fact]
    public void A_locker_has_the_openings_that_the_rule_asks_at_the_least()
    {
        EnclosureSpecification locker = Good(One + "[enclosure]\nkind = \"ventilated locker\"").Enclosure!, cover = Good(One + "[enclosure]\nkind = \"tongue cover\"").Enclosure!;
        Assert.Equal(locker.LowOpening_m2, locker.HighOpening_m2);
        Assert.Equal(0.01, locker.LowOpening_m2 / (cover.LowOpening_m2 / 0.1), 1e-9);
        Assert.Empty(Fixtures.Read(One + "[enclosure]\nkind = \"ventilated locker\"").Warnings);
    }

    [Fact]
    public void Openings_below_the_rule_are_warned_of()
    {
        ReadResult read = Fixtures.Read(One + "[enclosure]\nkind = \"ventilated locker\"\nlow_opening = \"5 cm²\"\nhigh_opening = \"5 cm²\"");
        Assert.Contains(read.Warnings, w => w.Contains("of the floor that the cylinders need", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_cylinders_have_a_larger_cover_than_one_and_one_beside_it_does_not_count()
    {
        static string With(string more) => $"{Base}[[cylinder]]\nsize = \"20 lb\"\n[[cylinder]]\nsize = \"20 lb\"\n{more}[enclosure]\nkind = \"tongue cover\"";
        double one = Good(One + "[enclosure]\nkind = \"tongue cover\"").Enclosure!.Area_m2;
        Assert.True(Good(With("")).Enclosure!.Area_m2 > 1.2 * one);
        Assert.Equal(one, Good(With("enclosed = false\n")).Enclosure!.Area_m2);
        Assert.Equal(0.3, Good(With("enclosed = false\n")).Cylinders[1].Surroundings.WindExposure_frac);
    }

    [Theory]
    [InlineData("kind = \"barn\"", "'kind' is \"barn\"")]
    [InlineData("area = \"2 m²\"", "lacks 'kind'")]
    [InlineData("kind = \"open\"\narea = \"2 m²\"", "'area' goes with a cover or a locker")]
    [InlineData("kind = \"tongue cover\"\nto_coach = \"1 W/K\"", "'to_coach' without a [coach]")]
    public void What_is_wrong_with_it_is_said_once(string written, string said)
        => Assert.Contains(said, Assert.Single(Fixtures.Read($"{One}[enclosure]\n{written}").Problems).ToString(), StringComparison.Ordinal);

    [Fact]
    public void A_cover_with_nothing_in_it_is_a_fault()
        => Assert.Contains("no cylinder is in it", Assert.Single(Fixtures.Read(One + "enclosed = false\n[enclosure]\nkind = \"tongue cover\"").Problems).ToString(), StringComparison.Ordinal);

    [Fact]
    public void An_option_may_take_the_cover_off()
        => Assert.Null(Assert.Single(Fixtures.Read(One + "[enclosure]\nkind = \"tongue cover\"\n[[option]]\nname = \"off\"\nset = { \"enclosure.kind\" = \"open\" }").Options).Scenario.Rig.Enclosure);
}
