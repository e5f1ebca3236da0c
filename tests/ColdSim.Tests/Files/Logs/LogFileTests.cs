using System.Diagnostics;
using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using Xunit;

namespace ColdSim.Tests.Files.Logs;

public sealed class LogFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    private string Scenario => Path.Combine(_folder, "trip.toml");

    private string Log => LogFile.PathOf(Scenario);

    private static LogEntry Entry(string note) => new()
    {
        Time = new DateTimeOffset(2027, 1, 12, 16, 0, 0, TimeSpan.FromHours(-7)),
        Cylinder = "20 lb",
        Method = "weight",
        Reading = "31.2 lb",
        Note = note,
    };

    [Fact]
    public void The_log_is_beside_the_scenario() => Assert.Equal(Path.Combine(_folder, "trip.log.csv"), Log);

    [Fact]
    public void Lines_are_added_and_the_first_brings_the_header()
    {
        LogFile.Append(Log, [Entry("one"), Entry("two")]);
        LogFile.Append(Log, [Entry("three")]);
        Assert.Equal(
            LogLine.Header + "\n2027-01-12T16:00-07:00,20 lb,weight,31.2 lb,,,one\n2027-01-12T16:00-07:00,20 lb,weight,31.2 lb,,,two\n2027-01-12T16:00-07:00,20 lb,weight,31.2 lb,,,three\n",
            File.ReadAllText(Log));
    }

    [Fact]
    public void A_torn_last_line_stays_as_it_is_and_the_next_begins_a_line_of_its_own()
    {
        LogFile.Append(Log, [Entry("one")]);
        File.AppendAllText(Log, "2027-01-13T07:0");
        LogFile.Append(Log, [Entry("two")]);
        string[] lines = File.ReadAllLines(Log);
        Assert.Equal(4, lines.Length);
        Assert.Equal("2027-01-13T07:0", lines[2]);
        LogResult result = LogReader.Read(Log, Twenty);
        Assert.Equal([2, 4], result.Readings.Select(r => r.Line));
        Assert.Equal(3, Assert.Single(result.Damaged).Line);
    }

    [Fact]
    public void Two_writers_at_once_do_not_interleave()
    {
        Parallel.For(0, 4, new ParallelOptions { MaxDegreeOfParallelism = 4 }, writer =>
        {
            for (int i = 0; i < 25; i++)
                LogFile.Append(Log, [Entry($"{writer}-{i} {new string((char)('a' + writer), 400)}")]);
        });
        LogResult result = LogReader.Read(Log, Twenty);
        Assert.Empty(result.Damaged);
        Assert.Equal(100, result.Readings.Select(r => r.Note).Distinct().Count());
        Assert.Equal(101, File.ReadAllLines(Log).Length);
    }

    [Fact]
    public void Two_processes_at_once_do_not_interleave()
    {
        StarterScenario.Write(Scenario);
        Process[] both = [Start("a"), Start("b")];
        foreach (Process one in both)
        {
            one.WaitForExit();
            Assert.Equal(0, one.ExitCode);
            one.Dispose();
        }

        Assert.Empty(LogReader.Read(Log, Cylinder()).Damaged);
        Assert.Equal(["a", "b"], LogReader.Read(Log, Cylinder()).Readings.Select(r => r.Note).Order());
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void A_writer_killed_at_any_instant_loses_no_earlier_line_and_leaves_none_torn()
    {
        StarterScenario.Write(Scenario);
        LogFile.Append(Log, [Entry("first") with { Cylinder = Cylinder().Name }]);
        string before = File.ReadAllText(Log);
        Stopwatch clock = Stopwatch.StartNew();
        using (Process whole = Start("whole"))
            whole.WaitForExit();
        int usual_ms = (int)clock.ElapsedMilliseconds;
        int killed = 0;
        for (int i = 0; i < 24; i++)
        {
            // From the start of the process to past its end, densest about the write.
            using Process child = Start($"kill {i}");
            if (!child.WaitForExit(usual_ms * (10 + i) / 24))
            {
                child.Kill();
                killed++;
            }

            child.WaitForExit();
            string now = File.ReadAllText(Log);
            Assert.StartsWith(before, now, StringComparison.Ordinal);
            Assert.EndsWith("\n", now, StringComparison.Ordinal);
            Assert.Empty(LogReader.Read(Log, Cylinder()).Damaged);
            before = now;
        }

        Assert.True(killed > 0);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static CylinderSpecification Twenty => StandardSize.Find("20 lb")!.Full();

    private CylinderSpecification Cylinder() => ScenarioReader.Read(Scenario).Scenario!.Rig.Cylinders[0];

    private Process Start(string note)
    {
        ProcessStartInfo start = new("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (string word in (string[])[Path.Combine(AppContext.BaseDirectory, "coldsim.dll"), "log", "add", Scenario, "--weight", "31.2 lb", "--at", "2025-01-14T20:00-07:00", "--note", note])
            start.ArgumentList.Add(word);
        return Process.Start(start)!;
    }
}
