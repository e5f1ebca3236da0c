namespace ColdSim.App.Commands;

/// <summary>Ends a command with a message and an exit code; never shown with a trace.</summary>
internal sealed class CommandFault(int code, IReadOnlyList<string> lines) : Exception(string.Join("; ", lines))
{
    public int Code { get; } = code;

    public IReadOnlyList<string> Lines { get; } = lines;

    public static CommandFault Input(params IReadOnlyList<string> lines) => new(ExitCode.BadInput, lines);
}
