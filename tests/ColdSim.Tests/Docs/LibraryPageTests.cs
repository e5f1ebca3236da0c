using ColdSim.Example;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Docs;

/// <summary>docs/library.md shows a program that is compiled without being a friend of ours, and what it prints.</summary>
[Trait("Category", "Docs")]
public class LibraryPageTests
{
    [Fact]
    public void The_example_is_the_program_that_is_compiled_and_what_it_prints()
        => GeneratedPage.AssertCurrent("library.md", new Dictionary<string, string>
        {
            ["example"] = $"```csharp\n{string.Join('\n', Code())}\n```",
            ["output"] = $"```\n{Printed()}```",
        });

    [Fact]
    public void The_example_has_some_twenty_lines() => Assert.InRange(Code().Length, 15, 25);

    // The lines between its marks, without the usings of a file.
    private static string[] Code()
    {
        string[] lines = File.ReadAllLines(Path.Combine(DocPage.Source, "..", "tests", "ColdSim.Example", "OneNight.cs"));
        int begin = Array.FindIndex(lines, l => l.Trim() == "// begin"), end = Array.FindIndex(lines, l => l.Trim() == "// end");
        return [.. lines[(begin + 1)..end].Select(l => l.Length > 8 ? l[8..] : l).Reverse().SkipWhile(l => l.Length == 0).Reverse()];
    }

    private static string Printed()
    {
        using StringWriter text = new() { NewLine = "\n" };
        OneNight.Print(text);
        return text.ToString();
    }
}
