using System.Runtime.CompilerServices;

namespace ColdSim.Tests.Files;

/// <summary>Pages under docs, to be held against the code.</summary>
internal static class DocPage
{
    public static string[] Lines(string name) => File.ReadAllLines(PathOf(name));

    /// <summary>The page's file.</summary>
    public static string PathOf(string name) => Path.Combine(Root(), "docs", name);

    /// <summary>The folder of the scenarios that come with the program.</summary>
    public static string Scenarios => Path.Combine(Root(), "scenarios");

    /// <summary>The folder of the program's projects.</summary>
    public static string Source => Path.Combine(Root(), "src");

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
