using System.Diagnostics;
using ColdSim.Files.Disk;
using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using ColdSim.Tests.Files.Disk;
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
        Starter.Write(Scenario);
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

    [Theory]
    [InlineData(DiskStep.Write, 0)]
    [InlineData(DiskStep.Write, 1)]
    [InlineData(DiskStep.Write, 40)]
    [InlineData(DiskStep.Write, 120)]
    [InlineData(DiskStep.Flush, 0)]
    public void A_write_that_fails_leaves_the_log_byte_for_byte_as_it_was(DiskStep step, long bytes)
    {
        foreach (string? before in (string?[])[null, "", LogLine.Header + "\n", $"{LogLine.Header}\n2027-01-13T07:0"])
        {
            File.Delete(Log);
            if (before is not null)
                File.WriteAllText(Log, before);
            FailingDisk disk = new(step, bytes);
            string fault = Assert.Throws<FileFaultException>(() => LogFile.Append(Log, [Entry("one"), Entry("two"), Entry("three")], null, disk)).Message;
            Assert.Equal($"'{Log}' cannot be written: the disk is full", fault);
            Assert.Equal(1, disk.Faults);
            Assert.Equal(before, File.Exists(Log) ? File.ReadAllText(Log) : null);
        }
    }

    [Fact]
    public void A_limit_on_the_size_of_files_leaves_the_log_byte_for_byte_as_it_was()
    {
        Starter.Write(Scenario);

        // A limit of 1 MiB, which is more than the runtime and a collector of coverage write for themselves.
        const int Limit = 1024 * 1024;
        string note = new('n', 1000);
        LogFile.Append(Log, [Entry(note) with { Cylinder = Cylinder().Name }]);
        int one = (int)new FileInfo(Log).Length;
        LogFile.Append(Log, [.. Enumerable.Repeat(Entry(note) with { Cylinder = Cylinder().Name }, (Limit - one) / one)]);
        byte[] before = File.ReadAllBytes(Log);
        while (before.Length + 1100 < Limit)
        {
            LogFile.Append(Log, [Entry(note) with { Cylinder = Cylinder().Name }]);
            before = File.ReadAllBytes(Log);
        }

        Assert.InRange(before.Length, Limit - 1100, Limit);
        (int code, string error) = Real.Shell($"ulimit -f 1024; {Real.Program} log add {Scenario} --weight '31.2 lb' --at 2025-01-14T20:00-07:00 --note {new string('n', 1100)} 2>&1 | cat; exit ${{PIPESTATUS[0]}}");
        Assert.Equal(2, code);
        Assert.Contains($"'{Log}' cannot be written: it would be larger than a file may be here", error.Replace("\n  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Log));
    }

    [Fact]
    public void A_log_that_is_a_pipe_or_a_folder_is_a_fault_and_no_wait()
    {
        Unix.MakePipe(Log);
        Assert.Equal($"'{Log}' cannot be written: it is a pipe, not a file", Assert.Throws<FileFaultException>(() => LogFile.Append(Log, [Entry("one")])).Message);
        LogResult read = LogReader.Read(Log, Twenty);
        Assert.True(read.IsUnreadable);
        Assert.Equal($"{Log}:1:1: the log cannot be opened: it is a pipe, not a file", Assert.Single(read.Damaged).ToString());
        File.Delete(Log);
        Directory.CreateDirectory(Log);
        Assert.Equal($"'{Log}' cannot be written: it is a folder", Assert.Throws<FileFaultException>(() => LogFile.Append(Log, [Entry("one")])).Message);
    }

    [Fact]
    public void A_reading_is_not_appended_to_a_file_that_is_no_log_or_that_is_read_as_something_else()
    {
        File.WriteAllText(Log, "time,air [°C]\n2027-01-12T16:00-07:00,-5\n");
        Assert.Contains("its first line is not a log's header", Assert.Throws<FileFaultException>(() => LogFile.Append(Log, [Entry("one")])).Message, StringComparison.Ordinal);
        File.WriteAllText(Log, LogLine.Header + "\n");
        FilesRead reads = new();
        reads.Add(Path.Combine(_folder, "weather.csv"));
        File.CreateSymbolicLink(Path.Combine(_folder, "weather.csv"), Log);
        Assert.Contains("is the same file as", Assert.Throws<FileFaultException>(() => LogFile.Append(Log, [Entry("one")], reads)).Message, StringComparison.Ordinal);
        Assert.Equal(LogLine.Header + "\n", File.ReadAllText(Log));
    }

    [Fact]
    public void A_log_behind_a_link_is_appended_to_and_the_link_stays()
    {
        string real = Path.Combine(_folder, "real.csv");
        File.CreateSymbolicLink(Log, "real.csv");
        LogFile.Append(Log, [Entry("one")]);
        LogFile.Append(Log, [Entry("two")]);
        Assert.Equal(3, File.ReadAllLines(real).Length);
        Assert.Equal("real.csv", new FileInfo(Log).LinkTarget);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void A_writer_killed_at_any_instant_loses_no_earlier_line_and_leaves_none_torn()
    {
        Starter.Write(Scenario);
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
