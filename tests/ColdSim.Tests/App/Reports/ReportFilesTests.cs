using System.Xml.Linq;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Reports;

/// <summary>Where a report goes, and what it never writes over.</summary>
public sealed class ReportFilesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-").FullName;

    public ReportFilesTests()
    {
        foreach (string file in (string[])["cold-snap.toml", "cold-snap-weather.csv"])
            File.Copy(Shell.Demo(file), In(file));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_report_is_written_where_it_should_go_and_said_in_a_line()
    {
        Shell shell = Run(0, "--out", In("trip.html"), "--svg", In("pictures"));
        Assert.Equal($"report written to {In("trip.html")}\n3 pictures written to {In("pictures")}\n", shell.Error);
        Assert.Equal("FAILS Wed 13 Jan: gas short 03:44, inside down to 29 °F\n", shell.Out);
        Assert.Equal(["night-1.svg", "night-2.svg", "night-3.svg"], Directory.GetFiles(In("pictures")).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        string first = File.ReadAllText(In("trip.html"));
        Run(0, "--out", In("trip.html"), "--svg", In("pictures"));
        Assert.Equal(first, File.ReadAllText(In("trip.html")));
    }

    [Fact]
    public void A_picture_alone_is_well_formed_and_has_its_colours_and_words()
    {
        Run(0, "--out", In("trip.html"), "--svg", In("pictures"));
        string picture = File.ReadAllText(In("pictures/night-2.svg"));
        XElement svg = XDocument.Parse(picture).Root!;
        Assert.Equal("svg", svg.Name.LocalName);
        Assert.Equal("http://www.w3.org/2000/svg", svg.Name.NamespaceName);
        Assert.Contains("Wednesday night, 13 to 14 January", svg.Elements().First(e => e.Name.LocalName == "desc").Value, StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme:dark", picture, StringComparison.Ordinal);
        Assert.DoesNotContain('%', string.Concat(svg.Descendants().Attributes().Select(a => a.Value)));
    }

    [Theory]
    [InlineData("cold-snap.toml")]
    [InlineData("cold-snap-weather.csv")]
    public void An_input_is_never_written_over(string input)
    {
        string before = File.ReadAllText(In(input));
        Shell shell = Run(2, "--out", In(input), "--force");
        Assert.Contains("is an input of this run and is never overwritten", shell.Error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(In(input)));
    }

    [Fact]
    public void What_somebody_else_wrote_is_left_unless_forced()
    {
        File.WriteAllText(In("page.html"), "<!DOCTYPE html><p>mine</p>");
        Directory.CreateDirectory(In("pictures"));
        File.WriteAllText(In("pictures/night-2.svg"), "<svg/>");
        Assert.Contains("--force", Run(2, "--out", In("page.html")).Error, StringComparison.Ordinal);
        Assert.Contains("--force", Run(2, "--out", In("other.html"), "--svg", In("pictures")).Error, StringComparison.Ordinal);
        Assert.False(File.Exists(In("other.html")));
        Assert.False(File.Exists(In("pictures/night-1.svg")));
        Run(0, "--out", In("page.html"), "--svg", In("pictures"), "--force");
        Assert.StartsWith("<!DOCTYPE html>\n<html lang", File.ReadAllText(In("page.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void Standard_output_has_the_page_and_nothing_else()
    {
        Shell shell = Run(0, "--out", "-");
        Assert.StartsWith("<!DOCTYPE html>", shell.Out, StringComparison.Ordinal);
        Assert.EndsWith("</html>\n", shell.Out, StringComparison.Ordinal);
        Assert.Equal("", shell.Error);
    }

    [Theory]
    [InlineData("--with takes limits, chance, buy, diagnose, gauges", "--with", "limit")]
    [InlineData("--with and --only do not go together", "--with", "limits", "--only", "limits")]
    [InlineData("--members goes with --with chance", "--members", "10")]
    [InlineData("there is no folder", "--out", "nowhere/at/all.html")]
    [InlineData("--page takes any or a4 or letter or a5, not 'a3'", "--page", "a3")]
    public void What_does_not_go_is_refused_before_anything_is_run(string said, params string[] words)
        => Assert.Contains(said, Run(2, words).Error, StringComparison.Ordinal);

    [Theory]
    [InlineData("diagnose", "has no [furnace] that could fail to light")]
    [InlineData("buy", "has no [furnace] or no [coach]")]
    public void A_section_about_a_furnace_is_refused_where_there_is_none(string section, string said)
    {
        string[] tables = File.ReadAllText(In("cold-snap.toml")).Split("\n[");
        string[] bare = [.. tables.Where(t => !((string[])["furnace", "coach", "thermostat", "[option"]).Any(n => t.StartsWith(n, StringComparison.Ordinal)))];
        File.WriteAllText(In("cold-snap.toml"), string.Join("\n[", bare) + "\n[[draw]]\nrate = \"6,000 BTU/h\"\n");
        Assert.Contains(said, Run(2, "--with", section).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Cylinders_to_buy_are_refused_for_a_trip_before_anything_is_run()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("report", Shell.Demo("fortnight.toml"), "--with", "buy", "--out", "-"));
        Assert.Contains("has stops or refills", shell.Error, StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void Markdown_links_the_pictures_that_are_beside_it_and_else_tells_them()
    {
        Run(0, "--format", "md", "--out", In("trip.md"));
        string alone = File.ReadAllText(In("trip.md"));
        Assert.Contains("Strip chart of Wednesday night", alone, StringComparison.Ordinal);
        Assert.DoesNotContain("![", alone, StringComparison.Ordinal);
        Run(0, "--format", "md", "--out", In("trip.md"), "--svg", In("pictures"));
        Assert.Contains("](<pictures/night-2.svg>)", File.ReadAllText(In("trip.md")), StringComparison.Ordinal);
    }

    private string In(string name) => Path.Combine(_folder, name);

    private Shell Run(int code, params string[] words)
    {
        Shell shell = new() { Clock = ReportPage.Clock };
        int ended = shell.Run(["report", In("cold-snap.toml"), .. words]);
        Assert.True(ended == code, shell.Error);
        return shell;
    }
}
