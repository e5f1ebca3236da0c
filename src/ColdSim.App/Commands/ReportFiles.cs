using System.CommandLine;
using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Html;
using ColdSim.App.Text.Markdown;
using ColdSim.App.Text.Pictures;
using ColdSim.Files;
using ColdSim.Files.Disk;

namespace ColdSim.App.Commands;

/// <summary>The files of a report: the page, and its pictures where they are wanted alone.</summary>
internal sealed class ReportFiles
{
    private readonly OutputFile _page;
    private readonly string? _folder;
    private readonly bool _markdown, _force;
    private readonly Host _host;

    private ReportFiles(OutputFile page, string? folder, bool markdown, bool force, Host host)
        => (_page, _folder, _markdown, _force, _host) = (page, folder, markdown, force, host);

    /// <summary>The program's version.</summary>
    public static string Version { get; } = typeof(ReportFiles).Assembly.GetName().Version?.ToString(3) ?? "";

    /// <summary>Whether the page goes to standard output, where nothing else may then go.</summary>
    public bool ToStandardOutput => _page.Path == "-";

    /// <summary>Refused before anything is run where the page cannot be written there, would overwrite what is read, or is not ours.</summary>
    /// <exception cref="CommandFault">It cannot go there.</exception>
    public static ReportFiles Of(ParseResult parsed, ReportOptions options, string scenario, Host host)
    {
        bool markdown = parsed.GetValue(options.Format) == "md", force = parsed.GetValue(options.Force);
        string path = parsed.GetValue(options.Out) ?? Path.ChangeExtension(Path.GetFileName(scenario), markdown ? ".md" : ".html");
        if (path.Length == 0)
            throw CommandFault.Input("coldsim: --out takes a file name, or - for standard output");
        OutputFile page = new(path, markdown ? MarkdownPage.Kind : HtmlPage.Kind, force);
        if (path != "-")
            OutputOption.Check(page, host, parsed.GetValue(options.Out) is null ? "" : "--out: ");
        string? folder = parsed.GetValue(options.Svg);
        if (folder is not null && (folder.Length == 0 || host.Files.Exists(folder)))
            throw CommandFault.Input($"coldsim: --svg: '{Quote.OfPath(folder)}' is not a folder");
        return new(page, folder, markdown, force, host);
    }

    /// <summary>What is written; checked once more before the first of them is.</summary>
    /// <exception cref="CommandFault">One of them cannot go where it should.</exception>
    public IReadOnlyList<FileOutput<T>> For<T>(ReportDocument document)
        where T : class
    {
        FileOutput<T> page = new(_page, (_, to) => to.Write(_markdown ? MarkdownPage.Of(document, Address()) : HtmlPage.Of(document, Version)))
        {
            Said = ToStandardOutput ? null : _ => $"report written to {Quote.OfPath(_page.Path)}",
        };
        List<FileOutput<T>> files = [page];
        if (_folder is null)
            return files;
        _host.Files.MakeFolder(_folder);
        IPicture[] pictures = [.. document.Pictures];
        foreach (IPicture picture in pictures)
        {
            OutputFile file = new(Path.Combine(_folder, picture.Name + ".svg"), PictureFile.Kind, _force);
            OutputOption.Check(file, _host, "--svg: ");
            files.Add(new(file, (_, to) => to.Write(PictureFile.Of(picture))));
        }

        string count = pictures.Length == 1 ? "1 picture" : $"{pictures.Length} pictures";
        files[^1] = files[^1] with { Said = _ => $"{count} written to {Quote.OfPath(_folder)}" };

        return files;
    }

    // Links lead from the page to its pictures.
    private string? Address()
    {
        if (_folder is null)
            return null;
        string from = ToStandardOutput ? "." : Path.GetDirectoryName(Path.GetFullPath(_page.Path)) ?? ".";
        return Path.GetRelativePath(from, Path.GetFullPath(_folder));
    }
}
