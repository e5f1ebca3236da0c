using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace ColdSim.Files.Disk;

/// <summary>The file beside the target that a write goes to first. Its name says which process writes it, so that a later one can tell what a killed one left behind.</summary>
internal static class Draft
{
    private const string Prefix = ".coldsim-", Suffix = ".part";
    private const int RandomLength = 32;

    /// <summary>A name for a new draft in a folder.</summary>
    public static string NewIn(string folder)
        => Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{Prefix}{Environment.ProcessId}-{Guid.NewGuid():N}{Suffix}"));

    /// <summary>Deletes the drafts in a folder whose process is gone. Whatever is not surely a draft of ours, or may still be written, stays.</summary>
    public static void ClearDead(string folder)
    {
        try
        {
            foreach (string path in Directory.EnumerateFiles(folder, $"{Prefix}*{Suffix}"))
            {
                if (ProcessOf(Path.GetFileName(path)) is { } process && IsGone(process))
                    Delete(path);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Clearing up is a courtesy; the write that follows says what is wrong with the folder.
        }
    }

    /// <summary>The process in a draft's name; null for any other name.</summary>
    internal static int? ProcessOf(string name)
    {
        if (!name.StartsWith(Prefix, StringComparison.Ordinal) || !name.EndsWith(Suffix, StringComparison.Ordinal))
            return null;
        string[] parts = name[Prefix.Length..^Suffix.Length].Split('-');
        return parts.Length == 2 && parts[1].Length == RandomLength && parts[1].All(char.IsAsciiHexDigitLower)
            && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int process) && process > 0
            ? process
            : null;
    }

    private static bool IsGone(int process)
    {
        if (process == Environment.ProcessId)
            return false;
        try
        {
            if (!OperatingSystem.IsWindows())
                return SystemCalls.Kill(process, 0) != 0 && Marshal.GetLastPInvokeError() == SystemCalls.NoSuchProcess;
            using Process found = Process.GetProcessById(process);
            return false;
        }
        catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException)
        {
            return false;
        }
        catch (ArgumentException)
        {
            return true;
        }
    }

    // A writer holds its draft locked until it is renamed; a process of another machine or container, whose number says nothing here, is seen by that.
    private static void Delete(string path)
    {
        try
        {
            using (new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.Delete))
                File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Somebody writes it, or it may not be deleted.
        }
    }
}
