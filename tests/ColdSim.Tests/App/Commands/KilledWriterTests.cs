using System.Diagnostics;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>The real program, killed while it writes a file: the old content or the new one is there, whole, and the next run leaves no draft.</summary>
public sealed class KilledWriterTests : IDisposable
{
    private const int Kills = 8;

    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-").FullName;

    public KilledWriterTests()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios, "cold-snap*"))
            File.Copy(file, In(Path.GetFileName(file)));
        File.WriteAllLines(In("years.csv"), Enumerable.Range(0, 30_000).Select(Row).Prepend("time,air [°C]"));
    }

    [Theory]
    [Trait("Category", "Slow")]
    [InlineData("run", "cold-snap.toml", "--csv")]
    [InlineData("weather", "years.csv", "--out")]
    public void A_writer_killed_at_any_instant_of_the_write_leaves_the_old_file_or_the_new_one(string command, string input, string option)
    {
        string target = In("out.csv");
        using (Process whole = Start(command, input, option, target))
            whole.WaitForExit();
        string content = File.ReadAllText(target), old = content[..(content.Length / 2)];
        int left = 0, kept = 0;
        for (int i = 0; i < Kills; i++)
        {
            File.WriteAllText(target, old);
            using (Process child = Start(command, input, option, target))
            {
                // From the instant at which the draft is there to about the rename.
                while (!child.HasExited && Drafts().Length == 0)
                    Thread.Yield();
                child.WaitForExit(4 * i);
                child.Kill();
                child.WaitForExit();
            }

            string now = File.ReadAllText(target);
            Assert.True(now == old || now == content, $"{now.Length} of {content.Length} characters");
            kept += now == old ? 1 : 0;
            left += Drafts().Length;
            using (Process next = Start(command, input, option, target))
                next.WaitForExit();
            Assert.Equal(content, File.ReadAllText(target));
            Assert.Empty(Drafts());
        }

        Assert.True(kept > 0, "no kill came before the rename");
        Assert.True(left > 0, "no kill left a draft behind");
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static string Row(int hour) => FormattableString.Invariant($"{new DateTime(2020, 1, 1).AddHours(hour):yyyy-MM-dd'T'HH:mm}Z,{hour % 24 - 20}");

    private string In(string file) => Path.Combine(_folder, file);

    private string[] Drafts() => Directory.GetFiles(_folder, ".coldsim-*");

    private Process Start(string command, string input, string option, string target)
    {
        ProcessStartInfo start = new("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (string word in (string[])[Path.Combine(AppContext.BaseDirectory, "coldsim.dll"), command, In(input), option, target])
            start.ArgumentList.Add(word);
        Process process = Process.Start(start)!;
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }
}
