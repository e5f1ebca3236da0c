using System.Text;
using System.Xml.Linq;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Reports;

/// <summary>The page itself: one file that needs nothing else, for eyes and ears.</summary>
public class ReportPageTests
{
    private const int Most = 500_000;

    [Fact]
    public void A_page_has_the_answer_the_nights_and_what_it_rests_on_in_this_order() => Snapshot.Match(Outline(ReportPage.Of("cold-snap.toml")));

    [Fact]
    [Trait("Category", "Slow")]
    public void A_page_of_a_trip_with_a_battery_has_their_sections_too()
        => Snapshot.Match(string.Concat(((string[])["fortnight.toml", "battery-first.toml"]).Select(d => $"{d}\n{string.Concat(ReportPage.Of(d).Sections.Select(s => $"  {(string?)s.Attribute("id")}\n"))}")));

    [Fact]
    public void A_page_asks_nothing_of_a_network()
    {
        string text = ReportPage.Of("cold-snap.toml").Text;
        foreach (string asking in (string[])["http:", "https:", "url(", "@import", "src=", "fetch(", "XMLHttp", "<link", "<iframe", "//cdn"])
            Assert.DoesNotContain(asking, text.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_hidden_from_who_has_no_script()
    {
        ReportPage page = ReportPage.Of("cold-snap.toml");
        XElement[] folded = [.. page.Sections.Descendants("details")];
        Assert.NotEmpty(folded);
        Assert.All(folded, d => Assert.NotNull(d.Attribute("open")));
    }

    [Fact]
    public void Every_picture_has_words_and_a_table_for_who_does_not_see_it()
    {
        ReportPage page = ReportPage.Of("cold-snap.toml");
        Assert.All(page.Pictures, p => Assert.True((string?)p.Attribute("role") == "img" && ((string)p.Attribute("aria-label")!).Length > 100, p.ToString()[..200]));
        IReadOnlyList<Dictionary<string, string>>[] hours = [.. page.Tables("The curves at each full hour")];
        Assert.Equal(page.Pictures.Count(), hours.Length);
        Assert.Equal(25, hours[1].Count);
        Assert.Equal("en", (string?)XDocument.Parse(page.Text.Replace("<!DOCTYPE html>", "", StringComparison.Ordinal)).Root!.Attribute("lang"));
        Assert.All(page.Sections.Descendants("th"), th => Assert.Contains((string?)th.Attribute("scope"), (string[])["col", "row"]));
    }

    [Fact]
    public void Curves_of_one_strip_differ_without_colour()
    {
        foreach (XElement plot in ReportPage.Of("cold-snap.toml").Pictures.Descendants("svg"))
        {
            string[] strokes = [.. plot.Elements("path").Where(p => p.Attribute("data-name") is not null).Select(p => ((string)p.Attribute("class")!).Split(' ')[1])];
            Assert.Equal(strokes.Distinct().Count(), strokes.Length);
        }
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Fourteen_nights_stay_below_half_a_megabyte()
    {
        string text = ReportPage.Of("fortnight.toml").Text;
        Assert.Equal(14, ReportPage.Of("fortnight.toml").Pictures.Count());
        Assert.InRange(Encoding.UTF8.GetByteCount(text), 100_000, Most);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void A_card_for_the_door_has_the_limits_and_what_to_do_on_its_paper()
    {
        ReportPage card = ReportPage.Of("cold-snap.toml", "--only", "limits", "--page", "a5");
        Assert.Contains("@page{size:A5", card.Text, StringComparison.Ordinal);
        Snapshot.Match(Outline(card));
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void What_to_buy_and_what_to_look_at_without_heat_are_sections_of_their_own()
    {
        ReportPage page = ReportPage.Of("cold-snap.toml", "--with", "buy,diagnose");
        string[] own = ["buy", "no-heat"];
        Assert.Equal(own, page.Sections.Select(s => (string)s.Attribute("id")!).Intersect(own));
        Snapshot.Match(string.Join("\n\n", page.Sections.Where(s => own.Contains((string?)s.Attribute("id")))
            .SelectMany(s => s.Elements()).Select(e => string.Join(' ', e.DescendantNodes().OfType<XText>().Select(t => t.Value.Trim()).Where(t => t.Length > 0)))));
    }

    // What there is and in which order, without the numbers.
    private static string Outline(ReportPage page)
    {
        StringBuilder outline = new();
        foreach (XElement section in page.Sections)
        {
            outline.Append((string?)section.Attribute("id")).Append(" [").Append((string?)section.Attribute("class")).Append("] ").Append(section.Element("h2")!.Value).Append('\n');
            foreach (XElement block in section.Elements().Skip(1))
                outline.Append("  ").Append(Block(block)).Append('\n');
        }

        return outline.ToString();
    }

    private static string Block(XElement block) => block.Name.LocalName switch
    {
        "figure" => $"picture {(string?)block.Element("svg")!.Attribute("data-name")}: {string.Join(" / ", block.Descendants("svg").Skip(1).Select(Curves))}; marks {Marks(block)}",
        "div" => $"table {block.Descendants("caption").Single().Value}: {string.Join(", ", block.Descendants("thead").Single().Descendants("th").Select(h => h.Value))}",
        "details" => $"long {block.Element("summary")!.Value}: {string.Join("; ", block.Elements().Skip(1).Select(Block))}",
        "ul" => $"list of {block.Elements().Count()}",
        "dl" => $"readings {string.Join(", ", block.Descendants("dt").Select(d => d.Value))}",
        _ => (string?)block.Attribute("class") ?? block.Name.LocalName,
    };

    private static string Curves(XElement plot)
        => string.Join(", ", plot.Elements().Select(e => (string?)e.Attribute("data-name") ?? (string?)e.Attribute("class")).Distinct());

    private static string Marks(XElement figure)
        => string.Join(' ', figure.Descendants("text").Where(t => ((string?)t.Attribute("class"))?.StartsWith("mark", StringComparison.Ordinal) == true).Select(t => t.Nodes().OfType<XText>().Last().Value));
}
