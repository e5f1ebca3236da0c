namespace ColdSim.Files;

/// <summary>Why a file cannot be opened, in words.</summary>
internal static class FileTrouble
{
    public static string Words(Exception e) => e switch
    {
        FileNotFoundException or DirectoryNotFoundException => "there is no such file",
        UnauthorizedAccessException => "it may not be read",
        ArgumentException or NotSupportedException => "that is not a file's name",
        _ => "it cannot be read",
    };
}
