using System.Text.RegularExpressions;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Architecture;

/// <summary>The page of nomenclature knows every unit that names in the code end in.</summary>
public partial class NomenclatureTests
{
    private static readonly HashSet<string> Listed =
    [
        .. DocPage.Lines("nomenclature.md")
            .SkipWhile(l => l != "## Suffixes of identifiers").TakeWhile(l => l != "## Suffixes of JSON keys")
            .Select(l => ListedSuffix().Match(l)).Where(m => m.Success).Select(m => m.Groups["suffix"].Value),
    ];

    [Fact]
    public void Every_unit_suffix_of_the_code_is_on_the_page()
    {
        string[] unknown =
        [
            .. Directory.EnumerateFiles(DocPage.Source, "*.cs", SearchOption.AllDirectories)
                .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
                .SelectMany(f => NameWithSuffix().Matches(NoCode().Replace(File.ReadAllText(f), " ")))
                .Where(m => !Listed.Contains(m.Groups["suffix"].Value))
                .Select(m => m.Value).Distinct().Order(StringComparer.Ordinal),
        ];
        Assert.True(unknown.Length == 0, $"docs/nomenclature.md does not list the suffixes of:\n{string.Join('\n', unknown)}");
    }

    // Comments and texts, which have names of other kinds in them.
    [GeneratedRegex("""
        //[^\n]*|"{3}[\s\S]*?"{3}|"(\\.|[^"\\\n])*"
        """)]
    private static partial Regex NoCode();

    // A field of a class begins with an underscore, which starts no suffix.
    [GeneratedRegex(@"\b_?[A-Za-z][A-Za-z0-9]*_(?<suffix>\w+)\b")]
    private static partial Regex NameWithSuffix();

    [GeneratedRegex(@"^\| `_(?<suffix>\w+)` \|")]
    private static partial Regex ListedSuffix();
}
