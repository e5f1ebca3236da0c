using ColdSim.App.Text;
using ColdSim.Planning.Nights;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Text;

public class RunTextTests
{
    private static readonly string[] Cautions = ["An invented caution, long enough that it has to go on in a second line of the screen."];

    [Fact]
    public void A_short_run_in_us_units() => Snapshot.Match(Text(InventedRuns.HoldsThenShort, UnitStyle.Us));

    [Fact]
    public void A_short_run_in_si_units() => Snapshot.Match(Text(InventedRuns.HoldsThenShort, UnitStyle.Si));

    [Fact]
    public void A_dry_run_in_us_units() => Snapshot.Match(Text(InventedRuns.HoldsThenDry, UnitStyle.Us));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Nothing_is_wider_than_eighty_columns(bool us)
    {
        UnitStyle units = us ? UnitStyle.Us : UnitStyle.Si;
        foreach (RunReport report in (RunReport[])[InventedRuns.HoldsThenShort, InventedRuns.HoldsThenDry])
            Assert.All(Text(report, units).Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void Only_titles_are_bold_and_only_when_asked()
    {
        using StringWriter plain = new(), bold = new();
        IReadOnlyList<TextSection> sections = RunText.Sections(InventedRuns.HoldsThenShort, UnitStyle.Us, Cautions);
        RunText.Write(plain, sections, bold: false);
        RunText.Write(bold, sections, bold: true);
        Assert.DoesNotContain('\e', plain.ToString());
        Assert.Contains("\e[1mNight by night\e[0m", bold.ToString(), StringComparison.Ordinal);
        Assert.Equal(plain.ToString(), bold.ToString().Replace("\e[1m", "", StringComparison.Ordinal).Replace("\e[0m", "", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, "0")]
    [InlineData(3.4e-10, "3e-10")]
    [InlineData(double.NaN, "NaN")]
    public void Ledger_parts_are_printed_by_their_size(double part, string text) => Assert.Equal(text, RunText.Part(part));

    private static string Text(RunReport report, UnitStyle units)
    {
        using StringWriter writer = new() { NewLine = "\n" };
        RunText.Write(writer, RunText.Sections(report, units, Cautions), bold: false);
        return writer.ToString();
    }
}
