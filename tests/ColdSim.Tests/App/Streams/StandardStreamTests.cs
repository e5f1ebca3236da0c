using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files.Disk;
using Xunit;

namespace ColdSim.Tests.App.Streams;

/// <summary>The real program with streams that are closed or take nothing more.</summary>
public sealed class StandardStreamTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    // Something is said on standard error, an answer goes to standard output, a file is written, and nothing is wrong.
    private string Good => $"run {Shell.Demo("three-days.toml")} --full --csv {Path.Combine(_folder, "c.csv")}";

    [Theory]
    [InlineData("2>&-")]
    [InlineData("2>/dev/full")]
    [InlineData(">&-")]
    [InlineData(">&- 2>&-")]
    [InlineData(">&- 2>&- <&-")]
    [InlineData(">/dev/null 2>/dev/full")]
    public void A_closed_stream_or_a_full_standard_error_costs_no_answer_and_changes_no_exit_code(string streams)
    {
        (int code, string output) = Real.Shell($"{Real.Program} {Good} {streams}");
        Assert.Equal(0, code);
        Assert.StartsWith("time,UTC offset,outside [°F]", File.ReadAllText(Path.Combine(_folder, "c.csv")), StringComparison.Ordinal);
        if (!streams.Contains(" >", StringComparison.Ordinal) && !streams.StartsWith('>'))
            Assert.Contains("Night by night", output, StringComparison.Ordinal);
        foreach (string wrong in (string[])["run nosuch.toml", "bogus", "run"])
            Assert.Equal(2, Real.Shell($"{Real.Program} {wrong} {streams}").Code);
    }

    [Theory]
    [InlineData("run {0}")]
    [InlineData("run {0} --json")]
    [InlineData("--help")]
    [InlineData("--version")]
    public void A_full_standard_output_is_said_and_is_no_success(string words)
    {
        string line = string.Format(System.Globalization.CultureInfo.InvariantCulture, words, Shell.ColdSnap);
        (int code, string error) = Real.Shell($"{Real.Program} {line} 2>&1 >/dev/full");
        Assert.Equal(2, code);
        Assert.EndsWith("coldsim: standard output cannot be written: the disk is full; the answer is not complete\n", Joined(error), StringComparison.Ordinal);
        Assert.Equal(2, Real.Shell($"{Real.Program} {line} >/dev/full 2>&-").Code);
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("--json", 0)]
    [InlineData("--fail-if-short", 1)]
    public void A_reader_that_has_seen_enough_ends_nothing_with_another_code(string option, int code)
    {
        (int ended, string output) = Real.Shell($"{Real.Program} run {Shell.ColdSnap} {option} 2>/dev/null | head -1; exit ${{PIPESTATUS[0]}}");
        Assert.Equal(code, ended);
        Assert.Single(output.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Standard_output_by_its_name_is_written_after_the_answer_and_not_replaced()
    {
        string all = Path.Combine(_folder, "all.txt");
        Assert.Equal(0, Real.Shell($"{{ echo first; {Real.Program} run {Shell.ColdSnap} --csv /dev/stdout; echo last; }} >{all} 2>/dev/null").Code);
        string[] lines = File.ReadAllLines(all);
        Assert.Equal(("first", "last"), (lines[0], lines[^1]));
        Assert.Contains(lines, l => l.StartsWith("time,UTC offset,outside [°F]", StringComparison.Ordinal));
        Assert.StartsWith("2027-01-15 12:00:00,-07:00", lines[^2], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/dev/stderr", "2>&-")]
    [InlineData("/dev/fd/2", "2>&-")]
    [InlineData("/dev/fd/7", "7>&-")]
    public void A_stream_that_is_closed_is_not_mistaken_for_a_file_of_the_runtimes_own(string path, string streams)
        => Assert.Equal(2, Real.Shell($"timeout 60 {Real.Program} run {Shell.ColdSnap} --csv {path} {streams}").Code);

    [Fact]
    public void A_stream_that_was_handed_over_is_written_to_by_its_number()
    {
        string all = Path.Combine(_folder, "all.txt");
        Assert.Equal(0, Real.Shell($"{Real.Program} run {Shell.ColdSnap} --csv /dev/fd/7 7>{all} 2>/dev/null").Code);
        Assert.StartsWith("time,UTC offset,outside [°F]", File.ReadAllText(all), StringComparison.Ordinal);
    }

    [Fact]
    public void A_pipe_as_log_is_a_fault_with_its_place_and_no_wait()
    {
        foreach (string file in Directory.GetFiles(Path.GetDirectoryName(Shell.ColdSnap)!, "cold-snap*"))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
        string scenario = Path.Combine(_folder, "cold-snap.toml"), log = Path.Combine(_folder, "cold-snap.log.csv");
        Unix.MakePipe(log);
        foreach (string words in (string[])["run", "trip", "log show", "fit", "run --skip-damaged"])
        {
            (int code, string error) = Real.Shell($"timeout 60 {Real.Program} {words} {scenario} 2>&1 >/dev/null");
            Assert.Equal(2, code);
            Assert.Contains($"{log}:1:1: the log cannot be opened: it is a pipe, not a file", Joined(error), StringComparison.Ordinal);
            Assert.DoesNotContain("damaged line", error, StringComparison.Ordinal);
        }

        (int added, string said) = Real.Shell($"timeout 60 {Real.Program} log add {scenario} --weight '31 lb' 2>&1 >/dev/null");
        Assert.Equal(2, added);
        Assert.Contains($"coldsim: '{log}' cannot be written: it is a pipe, not a file\n", Joined(said), StringComparison.Ordinal);
        Assert.Equal(0, Real.Shell($"timeout 60 {Real.Program} run {scenario} --no-log 2>&1 >/dev/null").Code);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // A message that was broken at the terminal's width, on one line again.
    private static string Joined(string error) => error.Replace("\n  ", " ", StringComparison.Ordinal);
}
