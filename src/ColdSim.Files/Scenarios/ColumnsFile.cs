using System.Text;
using ColdSim.Files.Scenarios.Sections;
using ColdSim.Files.Toml;
using ColdSim.Files.Weather;

namespace ColdSim.Files.Scenarios;

/// <summary>A file of its own with the keys of <c>[weather.columns]</c>, for a table that is looked into without a scenario.</summary>
internal static class ColumnsFile
{
    /// <summary>Reads the file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="open">Opens it; null takes the disk's.</param>
    /// <returns>The map, or everything that is wrong.</returns>
    public static (ColumnMap? Map, IReadOnlyList<FileProblem> Problems) Read(string path, Func<string, Stream>? open = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        try
        {
            using Stream file = (open ?? File.OpenRead)(path);
            return ReadText(TomlFile.Read(file), path);
        }
        catch (DecoderFallbackException)
        {
            return (null, [new FileProblem(path, 1, 1, "not a text in UTF-8")]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return (null, [new FileProblem(Quote.OfPath(path), 1, 1, "the column map cannot be opened: " + FileProblem.WhyUnreadable(e))]);
        }
    }

    /// <summary>Reads its text.</summary>
    /// <param name="text">The text in TOML.</param>
    /// <param name="name">Its name in messages.</param>
    public static (ColumnMap? Map, IReadOnlyList<FileProblem> Problems) ReadText(string text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(name);
        TomlTree tree = TomlTree.Read(text, name);
        Reading reading = new(name, tree.HasSyntaxErrors);
        reading.Problems.AddRange(tree.Problems);
        ColumnMap? map = ColumnsSection.Read(new SectionReader(reading, tree.Root, ColumnsSection.Declared));
        return (reading.Problems.Count == 0 ? map : null, FileProblem.InOrder(reading.Problems, name));
    }
}
