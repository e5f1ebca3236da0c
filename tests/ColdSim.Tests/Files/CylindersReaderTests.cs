using ColdSim.Files;
using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using Xunit;

namespace ColdSim.Tests.Files;

public class CylindersReaderTests
{
    private const string Head = "[weather]\nfile = \"w.csv\"\n[[draw]]\nrate = \"500 W\"\n";
    private const string Two = Head + "[[cylinder]]\nname = \"left\"\nsize = \"20 lb\"\nleft = \"12 lb\"\n[[cylinder]]\nname = \"right\"\nsize = \"30 lb\"\n";

    private static Rig Read(string text)
    {
        ReadResult result = Fixtures.Read(text);
        Assert.Empty(result.Problems);
        return result.Scenario!.Rig;
    }

    [Fact]
    public void Cylinders_are_used_in_the_order_written_unless_an_order_is_given()
    {
        Assert.Equal(["left", "right"], Read(Two).Cylinders.Select(c => c.Label));
        Assert.Equal(["right", "left"], Read(Two + "[arrangement]\norder = [2, 1]\n").Cylinders.Select(c => c.Label));
        Assert.Equal(["right", "left"], Read(Two + "[arrangement]\norder = [\"right\", \"left\"]\n").Cylinders.Select(c => c.Label));
    }

    [Fact]
    public void Two_equal_cylinders_without_names_may_be_put_in_order_by_number()
        => Assert.Equal(2, Read(Head + "[[cylinder]]\nsize = \"20 lb\"\n[[cylinder]]\nsize = \"20 lb\"\n[arrangement]\norder = [2, 1]\n").Cylinders.Count);

    [Fact]
    public void Equal_cylinders_are_numbered()
    {
        Rig rig = Read(Head + "[[cylinder]]\nsize = \"20 lb\"\n[[cylinder]]\nsize = \"20 lb\"\n[[cylinder]]\nsize = \"30 lb\"\n");
        Assert.Equal(["20 lb no. 1", "20 lb no. 2", "30 lb"], Enumerable.Range(0, 3).Select(rig.NameOf));
    }

    [Fact]
    public void Every_arrangement_reads()
    {
        Assert.Equal(new OneAtATime(), Read(Two).Arrangement);
        OneAtATime by = Assert.IsType<OneAtATime>(Read(Two + "[arrangement]\nnoticed_after = \"10 min\"\nnobody_gets_up = [\"23:00-06:00\"]\n").Arrangement);
        Assert.Equal(600, by.NoticedAfter_s);
        Assert.Equal([new ClockWindow(23 * 3600, 6 * 3600)], by.NobodyGetsUp);
        AutomaticChangeover changeover = Assert.IsType<AutomaticChangeover>(Read(Two + "[arrangement]\nkind = \"changeover\"\nreserve_setting = \"6 psi\"\n").Arrangement);
        Assert.Equal(6 * 6894.757, changeover.ReserveSetting_Pa, 0.1);
        Assert.Equal(new OpenTogether(), Read(Two + "[arrangement]\nkind = \"together\"\n").Arrangement);
    }

    [Fact]
    public void A_blanket_reads()
    {
        BlanketSpecification blanket = Read(Head + """
            [place]
            hookup = true
            [cylinder]
            size = "30 lb"
            [cylinder.blanket]
            power = "70 W"
            on = "45 °F"
            off = "65 °F"
            coverage = "60 %"
            insulation = "2 h·ft²·°F/BTU"
            supply = "shore"
            hours = ["18:00-07:00"]
            """).Cylinders[0].Blanket!;
        Assert.Equal(70, blanket.Power_W);
        Assert.Equal(280.372, blanket.On_K, 0.001);
        Assert.Equal(0.6, blanket.Coverage_frac, 9);
        Assert.Equal(0.3522, blanket.Insulation_m2K_W, 0.0001);
        Assert.Equal(BlanketSupply.ShorePower, blanket.Supply);
        Assert.Single(blanket.Hours);
    }

    [Theory]
    [InlineData("[arrangement]\nkind = \"changeover\"\n", "s.toml:12:1", "a changeover with 1 cylinder")]
    [InlineData("[arrangement]\nkind = \"together\"\n", "s.toml:12:1", "one cylinder open together with no other")]
    [InlineData("[arrangement]\nkind = \"changover\"\n", "s.toml:12:8", "did you mean 'changeover'?")]
    [InlineData("[arrangement]\nreserve_setting = \"5 psi\"\n", "s.toml:12:1", "'reserve_setting' has no effect with kind = \"by hand\"; accepted with kind = \"changeover\"")]
    [InlineData("[arrangement]\nmeeting_time = \"10 s\"\nkind = \"together\"\n", "s.toml:12:16", "'meeting_time' is 10 s")]
    [InlineData("[arrangement]\norder = [1, 1]\n", "s.toml:12:13", "'order' names a cylinder twice")]
    [InlineData("[arrangement]\norder = [3]\n", "s.toml:12:10", "'order' names no such cylinder")]
    [InlineData("[arrangement]\norder = \"left\"\n", "s.toml:12:9", "'order' is a text")]
    [InlineData("[cylinder.blanket]\non = \"10 °C\"\n", "s.toml:11:1", "[cylinder.blanket] lacks 'power'")]
    [InlineData("[cylinder.blanket]\npower = \"50 W\"\non = \"20 °C\"\noff = \"10 °C\"\n", "s.toml:14:1", "switches off at or below where it switches on")]
    [InlineData("[cylinder.blanket]\npower = \"50 W\"\nstuck_on = \"yes\"\n", "s.toml:13:12", "'stuck_on' is a text")]
    [InlineData("[cylinder.blanket]\npower = \"50 W\"\nsuply = \"shore\"\n", "s.toml:13:1", "did you mean 'supply'?")]
    public void What_cannot_be_is_refused_with_its_place(string more, string place, string what)
    {
        const string one = Head + "[cylinder]\nsize = \"20 lb\"\n\n\n\n\n";
        string fault = Assert.Single(Fixtures.Faults(one + more), f => f.Contains(what, StringComparison.Ordinal));
        Assert.StartsWith(place, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_cylinders_may_not_share_a_name()
        => Assert.Contains(Fixtures.Faults(Two.Replace("\"right\"", "\"Left\"", StringComparison.Ordinal)), f => f.StartsWith("s.toml:10:8", StringComparison.Ordinal));

    [Fact]
    public void Five_are_too_many()
        => Assert.Contains(Fixtures.Faults(Head + string.Concat(Enumerable.Repeat("[[cylinder]]\nsize = \"20 lb\"\n", 5))), f => f.Contains("5 cylinders; accepted: up to 4", StringComparison.Ordinal));

    [Fact]
    public void Every_cylinders_faults_are_reported_at_once()
        => Assert.Equal(2, Fixtures.Faults(Two.Replace("\"20 lb\"", "\"21 lb\"", StringComparison.Ordinal).Replace("\"30 lb\"", "\"31 lb\"", StringComparison.Ordinal)).Length);

    [Fact]
    public void An_option_adds_a_second_cylinder_and_connects_it()
    {
        const string one = Head + "[cylinder]\nsize = \"20 lb\"\nleft = \"12 lb\"\n";
        ReadResult read = Fixtures.Read(one + "[[option]]\nname = \"two\"\n[option.set]\n\"cylinder.2.size\" = \"30 lb\"\n\"cylinder.2.left\" = \"50 %\"\n\"arrangement.kind\" = \"together\"\n");
        Assert.Empty(read.Problems);
        Assert.Single(read.Scenario!.Rig.Cylinders);
        Rig two = Assert.Single(read.Options).Scenario.Rig;
        Assert.Equal(["20 lb", "30 lb"], two.Cylinders.Select(c => c.Name));
        Assert.Equal(StandardSize.Find("30 lb")!.LegalFill_kg / 2, two.Cylinders[1].Contents_kg, 9);
        Assert.IsType<OpenTogether>(two.Arrangement);
    }

    [Fact]
    public void An_option_changes_one_of_several_and_their_order()
    {
        ReadResult read = Fixtures.Read(Two + "[[option]]\nname = \"other\"\n[option.set]\n\"cylinder.right.blanket.power\" = \"80 W\"\n\"arrangement.order\" = [2, 1]\n");
        Assert.Empty(read.Problems);
        Rig other = Assert.Single(read.Options).Scenario.Rig;
        Assert.Equal(80, other.Cylinders[0].Blanket!.Power_W);
        Assert.Null(other.Cylinders[1].Blanket);
    }

    [Theory]
    [InlineData("\"cylinder.4.size\" = \"20 lb\"", "does not say which [[cylinder]] is meant")]
    [InlineData("\"cylinder.2.sise\" = \"20 lb\"", "unknown key 'sise'")]
    public void An_option_that_changes_what_is_not_there_is_refused(string set, string what)
        => Assert.Contains(Fixtures.Faults(Two + $"[[option]]\nname = \"a\"\n[option.set]\n{set}\n"), f => f.StartsWith("s.toml:15:1", StringComparison.Ordinal) && f.Contains(what, StringComparison.Ordinal));

    // A charge and a temperature that each are accepted may not go together; a reader says so where it stands, before anything is run.
    [Fact]
    public void A_cylinder_that_its_first_temperature_fills_with_liquid_is_refused_at_its_charge()
    {
        string fault = Assert.Single(Fixtures.Faults(Head + "[cylinder]\nsize = \"40 lb\"\nleft = \"118 %\"\ntemperature = \"80 °F\"\n"));
        Assert.StartsWith("s.toml:7:1: 21.4 kg fill the cylinder with liquid to the brim at 26.7 °C", fault, StringComparison.Ordinal);
        Assert.Contains("accepted: up to 20.95 kg at that temperature, legally 18.14 kg", fault, StringComparison.Ordinal);
        Assert.Empty(Fixtures.Faults(Head + "[cylinder]\nsize = \"40 lb\"\nleft = \"118 %\"\ntemperature = \"-20 °C\"\n"));
    }

    [Fact]
    public void A_cylinder_at_its_relief_pressure_is_refused_at_its_first_temperature()
    {
        string fault = Assert.Single(Fixtures.Faults(Head + "[[cylinder]]\nsize = \"40 lb\"\n[[cylinder]]\nsize = \"20 lb\"\nrelief = \"1 MPa\"\ntemperature = \"45 °C\"\n"));
        Assert.StartsWith("s.toml:10:1: the relief valve would be open at 45 °C", fault, StringComparison.Ordinal);
    }
}
