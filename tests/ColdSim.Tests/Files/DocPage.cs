using System.Runtime.CompilerServices;

namespace ColdSim.Tests.Files;

/// <summary>Pages under docs, to be held against the code.</summary>
internal static class DocPage
{
    public static string[] Lines(string name) => File.ReadAllLines(Path.Combine(Root(), "docs", name));

    public static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
