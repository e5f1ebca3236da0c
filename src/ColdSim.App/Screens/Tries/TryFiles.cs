using System.Text;
using ColdSim.App.Screens.Pages;
using ColdSim.Files.Disk;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Drafts;

namespace ColdSim.App.Screens.Tries;

/// <summary>What a try is saved as.</summary>
internal enum SaveAs
{
    /// <summary>One more option of the scenario.</summary>
    Option,

    /// <summary>Keys of the scenario itself.</summary>
    Scenario,

    /// <summary>A new scenario beside it.</summary>
    NewFile,
}

/// <summary>A try that was saved.</summary>
/// <param name="As">As what.</param>
/// <param name="Words">What was written, for the person.</param>
/// <param name="Text">The scenario's text as it is in its file now.</param>
internal record SavedTry(SaveAs As, string Words, string Text);

/// <summary>The same in the scenario's own file, which is then read again.</summary>
internal sealed record SavedInPlace(SaveAs As, string Words, string Text) : SavedTry(As, Words, Text), IFilesChanged;

/// <summary>Where tries are saved; everything goes through the one door of the disk.</summary>
/// <param name="File">The scenario's file; null for the built-in demo.</param>
/// <param name="Write">Writes a file whole or not at all.</param>
/// <param name="Read">Reads a scenario's text as a command would.</param>
/// <param name="Open">Holds a scenario's text open.</param>
internal sealed record TryFiles(
    string? File, Action<OutputFile, Action<Stream>> Write, Func<string, ReadResult> Read, Func<string, ScenarioDraft> Open)
{
    /// <summary>Files that a new scenario needs beside it, name and content; none for one that has a file.</summary>
    public IReadOnlyList<(string Name, string Text)> Beside { get; init; } = [];

    /// <summary>The name that is offered for a new file.</summary>
    public string NewName => File is null ? "tried.toml" : $"{Path.GetFileNameWithoutExtension(File)}-tried.toml";

    /// <summary>Saves a try.</summary>
    /// <param name="draft">The scenario.</param>
    /// <param name="changes">The keys that are tried.</param>
    /// <param name="saveAs">As what.</param>
    /// <param name="name">The option's name, or the new file's.</param>
    /// <exception cref="InvalidOperationException">It cannot be saved so; nothing is written.</exception>
    /// <exception cref="FileFaultException">It cannot be written; what was there is as it was.</exception>
    public SavedTry Save(ScenarioDraft draft, IReadOnlyList<KeyChange> changes, SaveAs saveAs, string name)
    {
        if (saveAs != SaveAs.NewFile && File is null)
            throw new InvalidOperationException("the demo is built in; w writes it as a new file");
        string text = Checked(saveAs == SaveAs.Option ? draft.WrittenWithOption(name, changes) : draft.WrittenWith(changes));
        if (saveAs == SaveAs.NewFile)
            return new(saveAs, $"written to {WriteNew(name, text)}", draft.Text);
        Write(new OutputFile(File!, new("this scenario", there => there == draft.Text), Force: false) { IsEdit = true }, Content(text));
        return new SavedInPlace(saveAs, saveAs == SaveAs.Option ? $"saved as option '{name}' in {File}" : $"saved into {File}", text);
    }

    private string WriteNew(string name, string text)
    {
        if (name != Path.GetFileName(name))
            throw new InvalidOperationException("accepted: a name without a folder; in another folder it would not find its weather");
        string folder = File is null ? "" : Path.GetDirectoryName(File) ?? "", path = Path.Combine(folder, name);
        foreach ((string beside, string content) in Beside)
            Write(new OutputFile(Path.Combine(folder, beside), new("the demo's weather", there => there == content), Force: false), Content(content));
        Write(new OutputFile(path, new("this try", there => there == text), Force: false), Content(text));
        return path;
    }

    private static Action<Stream> Content(string text) => stream => stream.Write(Encoding.UTF8.GetBytes(text));

    private string Checked(string text) => Read(text) is { Problems: [var first, ..] }
        ? throw new InvalidOperationException(first.Accepted is { } accepted ? $"{first.What}; {accepted}" : first.What) : text;
}
