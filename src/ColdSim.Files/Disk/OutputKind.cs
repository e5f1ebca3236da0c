namespace ColdSim.Files.Disk;

/// <summary>A kind of file that is written, and how a file of that kind is known by what is in it.</summary>
/// <param name="Name">Such as "the curves of a run", for messages.</param>
/// <param name="IsOurs">Whether a text is one that this program wrote; it is given the file's beginning, or all of a short file.</param>
public sealed record OutputKind(string Name, Func<string, bool> IsOurs)
{
    /// <summary>How much of a file is looked at; more than any scenario may have.</summary>
    public const int Beginning = 2 << 20;
}
