using System.Text.RegularExpressions;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Docs;

/// <summary>Links between the project's pages lead somewhere, and every page can be found.</summary>
public partial class LinkTests
{
    public static TheoryData<string> Pages
        => [.. Directory.EnumerateFiles(Docs, "*.md").Select(p => Path.GetFileName(p)!).Append("../README.md").Append("../DEVELOPERS.md").Order(StringComparer.Ordinal)];

    private static string Docs => Path.GetDirectoryName(DocPage.PathOf("model.md"))!;

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_link_of_a_page_leads_to_a_file_and_a_heading(string page)
    {
        string[] broken = [.. Links(page).Where(l => !Leads(page, l))];
        Assert.True(broken.Length == 0, $"{page} links to what is not there: {string.Join(", ", broken)}");
    }

    [Fact]
    public void The_index_names_every_page()
    {
        HashSet<string> named = [.. Links("README.md").Select(l => l.Split('#')[0])];
        string[] missing = [.. Directory.EnumerateFiles(Docs, "*.md").Select(p => Path.GetFileName(p)!).Where(p => p != "README.md" && !named.Contains(p)).Order(StringComparer.Ordinal)];
        Assert.True(missing.Length == 0, $"docs/README.md lacks {string.Join(", ", missing)}");
    }

    [Theory]
    [InlineData("model.md", "nowhere.md")]
    [InlineData("model.md", "limits.md#no-such-heading")]
    public void A_link_that_leads_nowhere_is_found(string page, string link) => Assert.False(Leads(page, link));

    [Fact]
    public void The_first_page_is_short() => Assert.InRange(DocPage.Lines("../README.md").Length, 40, 119);

    private static IEnumerable<string> Links(string page)
        => Prose(DocPage.Lines(page)).SelectMany(l => Link().Matches(l)).Select(m => m.Groups["to"].Value).Where(l => !l.Contains("://", StringComparison.Ordinal));

    private static bool Leads(string page, string link)
    {
        string[] parts = link.Split('#');
        string path = parts[0].Length == 0 ? DocPage.PathOf(page) : Path.GetFullPath(Path.Combine(Path.GetDirectoryName(DocPage.PathOf(page))!, parts[0]));
        if (parts.Length == 1)
            return Path.Exists(path);
        return File.Exists(path) && Prose(File.ReadAllLines(path)).Where(l => l.StartsWith('#')).Select(Anchor).Contains(parts[1]);
    }

    // What a page shows as output or code is no prose: a # in it is no heading.
    private static IEnumerable<string> Prose(string[] lines)
    {
        bool fenced = false;
        foreach (string line in lines)
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
                fenced = !fenced;
            else if (!fenced)
                yield return line;
        }
    }

    // As common renderers of Markdown make it: small letters, spaces as hyphens, other signs left out.
    private static string Anchor(string heading)
        => NoAnchor().Replace(heading.TrimStart('#').Trim().ToLowerInvariant(), "").Replace(' ', '-');

    [GeneratedRegex(@"\]\((?<to>[^()\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"[^\p{L}\p{N} _-]")]
    private static partial Regex NoAnchor();
}
