using System.Text.RegularExpressions;
using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using ColdSim.Tests.Files;

namespace ColdSim.Tests.Architecture;

/// <summary>One use of a type of another namespace: by the compiled code, or by a <c>using</c> of the source.</summary>
internal sealed record Use(string FromNamespace, string FromType, string ToNamespace, string ToType)
{
    public override string ToString() => $"{FromType} -> {ToType}";
}

/// <summary>What the compiled projects and their sources know of each other.</summary>
/// <remarks>
/// A <c>using</c> alone leaves no trace in the compiled code, and neither does a constant, which the compiler copies to where it is used.
/// The sources' <c>using</c> lines are therefore read as well.
/// </remarks>
internal static partial class Code
{
    /// <summary>From the lowest up: each may know those before it and none after it.</summary>
    public static readonly string[] Projects = ["ColdSim.Physics", "ColdSim.Model", "ColdSim.Planning", "ColdSim.Files", "ColdSim.App"];

    /// <summary>The program's own layers, from the lowest up.</summary>
    public static readonly string[] AppLayers = ["ColdSim.App.Text", "ColdSim.App.Screens", "ColdSim.App.Shells", "ColdSim.App.Commands"];

    /// <summary>The same with the order among the screens.</summary>
    public static readonly string[] ScreenLayers =
    [
        "ColdSim.App.Text", "ColdSim.App.Screens.Drawing", "ColdSim.App.Screens.Pages", "ColdSim.App.Screens.Night", "ColdSim.App.Screens.Tries",
        "ColdSim.App.Screens.Plan", "ColdSim.App.Screens.Readings", "ColdSim.App.Screens.Signs",
        "ColdSim.App.Screens.Frame", "ColdSim.App.Shells", "ColdSim.App.Commands",
    ];

    /// <summary>The order among the parts of a written report; HTML and Markdown do not know each other.</summary>
    public static readonly string[] ReportLayers = ["ColdSim.App.Text.Markup", "ColdSim.App.Text.Pictures", "ColdSim.App.Text.Documents", "ColdSim.App.Text.Reports", "ColdSim.App.Commands"];

    /// <summary>What writes a report knows the document only, not how it came to be.</summary>
    public static readonly string[] ReportFormats = ["ColdSim.App.Text.Markup", "ColdSim.App.Text.Pictures", "ColdSim.App.Text.Documents", "ColdSim.App.Text.Html", "ColdSim.App.Commands"];

    /// <summary>The same of the other format.</summary>
    public static readonly string[] OtherReportFormats = ["ColdSim.App.Text.Documents", "ColdSim.App.Text.Markdown", "ColdSim.App.Commands"];

    private static readonly Lazy<ArchUnitNET.Domain.Architecture> Loaded = new(() => new ArchLoader()
        .LoadAssemblies([.. Projects.Select(p => System.Reflection.Assembly.Load(p == "ColdSim.App" ? "coldsim" : p))])
        .Build());

    private static readonly Lazy<Use[]> Everything = new(() => [.. Compiled().Concat(Sources())]);

    public static ArchUnitNET.Domain.Architecture Architecture => Loaded.Value;

    /// <summary>Every use of one namespace of ours by another.</summary>
    public static IReadOnlyList<Use> Uses => Everything.Value;

    /// <summary>The lines of a folder's sources that begin with <c>using</c>, by file.</summary>
    public static IEnumerable<(string File, string Namespace)> Usings(string layer)
        => Directory.EnumerateFiles(Folder(layer), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(f => UsingLine().Matches(File.ReadAllText(f)).Select(m => (f, m.Groups["name"].Value)));

    /// <summary>Whether a namespace is this layer's or lies in it.</summary>
    public static bool IsIn(string name, string layer) => name == layer || name.StartsWith(layer + ".", StringComparison.Ordinal);

    // ColdSim.App.Text is src/ColdSim.App/Text.
    private static string Folder(string layer)
    {
        string project = Projects.Single(p => IsIn(layer, p));
        return Path.Combine([DocPage.Source, project, .. layer[project.Length..].Split('.', StringSplitOptions.RemoveEmptyEntries)]);
    }

    private static IEnumerable<Use> Compiled()
        => from type in Architecture.Types
           from dependency in type.Dependencies
           let use = new Use(type.Namespace?.FullName ?? "", type.Name, dependency.Target.Namespace?.FullName ?? "", dependency.Target.Name)
           where use.FromNamespace != use.ToNamespace && IsIn(use.FromNamespace, "ColdSim") && IsIn(use.ToNamespace, "ColdSim")
           select use;

    private static IEnumerable<Use> Sources()
        => from project in Projects
           from file in Usings(project)
           let own = NamespaceLine().Match(File.ReadAllText(file.File)).Groups["name"].Value
           where own.Length > 0 && !IsIn(own, file.Namespace)
           select new Use(own, Path.GetFileName(file.File), file.Namespace, $"using {file.Namespace}");

    [GeneratedRegex(@"^[ \t]*(global\s+)?using\s+(static\s+)?(\w+\s*=\s*)?(global::)?(?<name>ColdSim[\w.]*)", RegexOptions.Multiline)]
    private static partial Regex UsingLine();

    [GeneratedRegex(@"^namespace\s+(?<name>[\w.]+)", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();
}
