using System.Text;

namespace ColdSim.App.Commands;

/// <summary>A CSV written beside the answer, whole or not at all.</summary>
internal static class CsvFile
{
    /// <summary>Writes it and says so.</summary>
    /// <param name="host">Where the program runs.</param>
    /// <param name="path">The file.</param>
    /// <param name="what">What is in it, for the message.</param>
    /// <param name="write">Writes the rows.</param>
    /// <param name="cancel">Leaves no file when cancelled.</param>
    public static void Write(Host host, string path, string what, Action<TextWriter> write, CancellationToken cancel)
    {
        host.Parts.WriteFile(path, stream =>
        {
            using (StreamWriter writer = new(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" })
                write(writer);
            cancel.ThrowIfCancellationRequested();
        });
        host.Error.WriteLine($"{what} written to {path}");
    }
}
