using System.CommandLine;
using System.Text;
using ColdSim.Files;
using ColdSim.Files.Disk;
using ColdSim.Files.Results;

namespace ColdSim.App.Commands;

/// <summary>A file that is written beside an answer, whole or not at all.</summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="File">The file.</param>
/// <param name="Content">Writes its content, with lines that end in a line feed.</param>
/// <param name="Said">What is said on standard error when it is written; null for nothing.</param>
internal sealed record FileOutput<T>(OutputFile File, Action<T, TextWriter> Content, Func<T, string>? Said = null)
{
    private const int Buffer = 1 << 14;
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes it; an interrupt leaves what was there.</summary>
    public void Save(T answer, Host host, CancellationToken cancel)
    {
        if (File.IsStandardOutput || File.Path == "-")
            Write(answer, host.Output, cancel);
        else
            host.Files.Write(File, stream => Write(answer, stream, cancel));
        if (Said is not null)
            host.Error.WriteLine(Said(answer));
    }

    private void Write(T answer, Stream stream, CancellationToken cancel)
    {
        using (StreamWriter writer = new(stream, Utf8, Buffer, leaveOpen: true) { NewLine = "\n" })
            Content(answer, writer);
        cancel.ThrowIfCancellationRequested();
    }
}

/// <summary>An option that names a file to write, and where that may go.</summary>
/// <param name="option">The option.</param>
/// <param name="force">The option that lets any file be replaced but one that is read.</param>
internal sealed class OutputOption(Option<string?> option, Option<bool> force)
{
    /// <summary>A CSV beside the answer.</summary>
    /// <param name="description">What is written.</param>
    public static OutputOption Csv(string description)
        => new(new("--csv") { HelpName = "PATH", Description = description + " In the units of --units." }, CommonOptions.Force());

    /// <summary>What parts the fields of a CSV, and so which sign parts its decimals.</summary>
    public Option<string> Separator { get; } = CommonOptions.Choice("--csv-separator", "Between fields: , with decimal points, or ; with decimal commas.", [",", ";"], ",");

    /// <summary>How a CSV is written.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="units">The option that says the units.</param>
    public CsvForm Form(ParseResult parsed, Option<string> units) => new(parsed.UnitStyle(units).IsUs, parsed.GetValue(Separator) == ";" ? ';' : ',');

    /// <summary>Names the file.</summary>
    public Option<string?> Path { get; } = option;

    /// <summary>Lets any file be replaced but one that is read.</summary>
    public Option<bool> Force { get; } = force;

    /// <summary>Whether the option is given.</summary>
    public bool IsGiven(ParseResult parsed) => parsed.GetValue(Path) is not null;

    /// <summary>The file beside the answer, or nothing where the option is not given.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="host">Where the command runs; what it reads has been read, or is known to be.</param>
    /// <param name="kind">What is written.</param>
    /// <param name="what">What is in it, for the message.</param>
    /// <param name="write">Writes it.</param>
    /// <typeparam name="T">The answer.</typeparam>
    /// <exception cref="CommandFault">It cannot go there.</exception>
    public IReadOnlyList<FileOutput<T>> Of<T>(ParseResult parsed, Host host, OutputKind kind, Func<T, string> what, Action<T, TextWriter> write)
        => Target(parsed, host, kind) is { } target ? [new FileOutput<T>(target, write, a => $"{what(a)} written to {target.Path}")] : [];

    /// <summary>The file; refused before anything is worked out where it cannot be written, would overwrite what is read, or is not ours.</summary>
    /// <exception cref="CommandFault">It cannot go there.</exception>
    public OutputFile? Target(ParseResult parsed, Host host, OutputKind kind)
    {
        if (parsed.GetValue(Path) is not { } path)
            return null;
        if (path is "" or "-")
            throw CommandFault.Input($"coldsim: {Path.Name} takes a file name; standard output carries the report");
        OutputFile file = new(path, kind, parsed.GetValue(Force));
        Check(file, host, Path.Name + ": ");
        return file;
    }

    /// <summary>Refuses a file early.</summary>
    /// <exception cref="CommandFault">It cannot be written.</exception>
    public static void Check(OutputFile file, Host host, string option = "")
    {
        try
        {
            file.Check(host.Files.Reads);
        }
        catch (FileFaultException e)
        {
            throw CommandFault.Input($"coldsim: {option}{e.Message}");
        }

        if (!host.Files.FolderExists(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(file.Path))!))
            throw CommandFault.Input($"coldsim: {option}there is no folder '{Quote.OfPath(System.IO.Path.GetDirectoryName(file.Path) ?? "")}'");
    }
}
