using ColdSim.Files;
using ColdSim.Files.Logs;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Files.Logs;

public class LogLineTests
{
    private static readonly Gen<string> Words = Gen.String[Gen.Char.Where(c => !char.IsControl(c) && !char.IsSurrogate(c)), 0, 20];

    private static readonly Gen<LogDetail> Detail =
        Gen.Select(Gen.OneOf(Gen.Const("tare"), Gen.Const("ice"), Gen.Const("filled")), Gen.Double[0, 99]).Select((name, value) => new LogDetail(name, name == "filled" ? "" : FormattableString.Invariant($"{value:0.##} lb")));

    private static readonly Gen<LogEntry> Entry = Gen.Select(
        Gen.Long[0, 60 * 24 * 365 * 50L], Gen.Int[-28, 28], Words, Gen.OneOf(Gen.Const("weight"), Gen.Const("line"), Gen.Const("float")), Words, Detail.Array[0, 4], Words,
        (minutes, quarters, cylinder, method, reading, details, note) => new LogEntry
        {
            Time = new DateTimeOffset(2000, 1, 1, 0, 0, 0, TimeSpan.FromMinutes(15 * quarters)).AddMinutes(minutes),
            Cylinder = cylinder,
            Method = method,
            Reading = reading,
            Temperature = reading.Length % 2 == 0 ? "" : "-8 °F",
            Details = details,
            Note = note,
        });

    [Fact]
    public void A_line_reads_back_as_what_was_written() => Entry.Sample(entry =>
    {
        List<FileProblem> problems = [];
        string text = LogLine.Of(entry);
        LogEntry read = LogLine.Read(text, "log", 2, problems)!;
        return problems.Count == 0 && !text.Contains('\n', StringComparison.Ordinal) && LogLine.Of(read) == text
            && read.Time == entry.Time && read.Time.Offset == entry.Time.Offset && read.Cylinder == entry.Cylinder && read.Method == entry.Method
            && read.Reading == entry.Reading && read.Temperature == entry.Temperature && read.Note == entry.Note && read.Details.SequenceEqual(entry.Details);
    });

    [Theory]
    [InlineData("5.1\"", "5.1\"")]
    [InlineData("\"5.1\"\"\"", "5.1\"")]
    [InlineData("\"5.1\" in", "5.1 in")]
    [InlineData("  \"5.1\"  ", "\"5.1\"")]
    [InlineData("\" 5.1 in \"", " 5.1 in ")]
    [InlineData("\u00a05.1 in ", "5.1 in")]
    public void A_field_is_read_as_a_spreadsheet_or_a_person_may_write_it(string written, string expected)
    {
        List<FileProblem> problems = [];
        Assert.Equal(expected, LogLine.Read($"2027-01-12T16:00-07:00,20 lb,line,{written},,,", "log", 2, problems)?.Reading);
        Assert.Empty(problems);
    }

    [Theory]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("5\"", "\"5\"\"\"")]
    [InlineData(" a", "\" a\"")]
    [InlineData("a\u00a0", "\"a\u00a0\"")]
    [InlineData("a b", "a b")]
    public void A_field_is_quoted_only_where_it_must_be(string note, string expected)
        => Assert.Equal(
            $"2027-01-12T16:00-07:00,20 lb,weight,31.2 lb,,,{expected}",
            LogLine.Of(new() { Time = new(2027, 1, 12, 16, 0, 0, TimeSpan.FromHours(-7)), Cylinder = "20 lb", Method = "weight", Reading = "31.2 lb", Note = note }));

    [Fact]
    public void A_note_of_two_lines_is_refused()
        => Assert.Throws<ArgumentException>(() => LogLine.Of(new() { Time = default, Cylinder = "", Method = "", Reading = "", Note = "a\nb" }));

    [Theory]
    [InlineData("2027-01-12T16:00-07:00,20 lb,weight,\"31.2 lb,,,", "log:7:37: a quotation mark that does not end")]
    [InlineData("2027-01-12T16:00-07:00,20 lb,weight,31.2 lb,,a \" b,\"c", "log:7:48: a quotation mark that does not end")]
    [InlineData("2027-01-12T16:00-07:00,20 lb,weight", "log:7:1: 3 fields; accepted: 7,")]
    [InlineData("12 January,20 lb,weight,31.2 lb,,,", "log:7:1: '12 January' is not a time")]
    [InlineData("2027-01-12T16:00,20 lb,weight,31.2 lb,,,", "has no offset from UTC")]
    public void A_damaged_line_is_reported_with_its_place(string text, string message)
    {
        List<FileProblem> problems = [];
        Assert.Null(LogLine.Read(text, "log", 7, problems));
        Assert.Contains(message, Assert.Single(problems).ToString(), StringComparison.Ordinal);
    }
}
