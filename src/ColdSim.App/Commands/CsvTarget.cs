namespace ColdSim.App.Commands;

/// <summary>Where the curves go; refused early where they could not, or would overwrite the question.</summary>
internal static class CsvTarget
{
    public static string? Checked(string? path, string scenarioPath)
    {
        if (path is null)
            return null;
        if (path is "" or "-")
            throw CommandFault.Input("coldsim: --csv takes a file name; standard output carries the report");
        string full = Path.GetFullPath(path);
        if (full == Path.GetFullPath(scenarioPath))
            throw CommandFault.Input($"coldsim: --csv would overwrite the scenario '{path}'");
        if (Directory.Exists(full))
            throw CommandFault.Input($"coldsim: --csv: '{path}' is a folder");
        if (!Directory.Exists(Path.GetDirectoryName(full)))
            throw CommandFault.Input($"coldsim: --csv: there is no folder '{Path.GetDirectoryName(path)}'");
        return path;
    }
}
