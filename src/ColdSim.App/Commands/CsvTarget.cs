namespace ColdSim.App.Commands;

/// <summary>Where the curves go; refused early where they could not, or would overwrite the question.</summary>
internal static class CsvTarget
{
    public static string? Checked(string? path, string readPath, string option = "--csv", string read = "the scenario")
    {
        if (path is null)
            return null;
        if (path is "" or "-")
            throw CommandFault.Input($"coldsim: {option} takes a file name; standard output carries the report");
        string full = Path.GetFullPath(path);
        if (full == Path.GetFullPath(readPath))
            throw CommandFault.Input($"coldsim: {option} would overwrite {read} '{path}'");
        if (Directory.Exists(full))
            throw CommandFault.Input($"coldsim: {option}: '{path}' is a folder");
        if (!Directory.Exists(Path.GetDirectoryName(full)))
            throw CommandFault.Input($"coldsim: {option}: there is no folder '{Path.GetDirectoryName(path)}'");
        return path;
    }
}
