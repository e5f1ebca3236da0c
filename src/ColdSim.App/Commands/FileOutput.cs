using System.Text;

namespace ColdSim.App.Commands;

/// <summary>A file that is written beside an answer, whole or not at all.</summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="Path">The file.</param>
/// <param name="Write">Writes its content, with lines that end in a line feed.</param>
/// <param name="Said">What is said on standard error when it is written; null for nothing.</param>
internal sealed record FileOutput<T>(string Path, Action<T, TextWriter> Write, Func<T, string>? Said = null)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes it; an interrupt leaves what was there.</summary>
    public void Save(T answer, Host host, CancellationToken cancel)
    {
        host.Files.Write(Path, stream =>
        {
            using (StreamWriter writer = new(stream, Utf8, leaveOpen: true) { NewLine = "\n" })
                Write(answer, writer);
            cancel.ThrowIfCancellationRequested();
        });
        if (Said is not null)
            host.Error.WriteLine(Said(answer));
    }
}

/// <summary>A CSV beside an answer, and where it may go.</summary>
internal static class CsvOutput
{
    /// <summary>The CSV of an option, or nothing where the option is not given.</summary>
    /// <param name="path">Where the option says it goes; null where it is not given.</param>
    /// <param name="scenario">The scenario's file, which is not overwritten.</param>
    /// <param name="host">Where the command runs.</param>
    /// <param name="what">What is in it, for the message.</param>
    /// <param name="write">Writes it.</param>
    /// <typeparam name="T">The answer.</typeparam>
    /// <exception cref="CommandFault">It cannot go there.</exception>
    public static IReadOnlyList<FileOutput<T>> Of<T>(string? path, string scenario, Host host, string what, Action<T, TextWriter> write)
        => Target(path, scenario, host) is { } target ? [new FileOutput<T>(target, write, _ => Said(what, target))] : [];

    public static string Said(string what, string path) => $"{what} written to {path}";

    /// <summary>The path of an option; refused early where nothing can be written there, or where it would overwrite the question.</summary>
    /// <exception cref="CommandFault">It cannot go there.</exception>
    public static string? Target(string? path, string readPath, Host host, string option = "--csv", string read = "the scenario")
    {
        if (path is null)
            return null;
        if (path is "" or "-")
            throw CommandFault.Input($"coldsim: {option} takes a file name; standard output carries the report");
        string full = Path.GetFullPath(path);
        if (full == Path.GetFullPath(readPath))
            throw CommandFault.Input($"coldsim: {option} would overwrite {read} '{path}'");
        if (host.Files.FolderExists(full))
            throw CommandFault.Input($"coldsim: {option}: '{path}' is a folder");
        if (!host.Files.FolderExists(Path.GetDirectoryName(full)!))
            throw CommandFault.Input($"coldsim: {option}: there is no folder '{Path.GetDirectoryName(path)}'");
        return path;
    }
}
