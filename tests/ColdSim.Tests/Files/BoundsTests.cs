using System.Globalization;
using System.Text;
using ColdSim.App.Commands;
using ColdSim.Files;
using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files.Weather;
using Xunit;

namespace ColdSim.Tests.Files;

public class BoundsTests
{
    private const int Kilobyte = 1000;

    [Fact]
    public void A_scenario_over_a_megabyte_is_refused_at_its_line()
    {
        string text = string.Concat(Enumerable.Repeat($"# {new string('x', 97)}\n", 10_001));
        Assert.Equal(["s.toml:10001:1: the file is larger than 1 MB; accepted: up to 1 MB"], Fixtures.Faults(text));
        Assert.DoesNotContain("larger", string.Join('\n', Fixtures.Faults(text[..(900 * Kilobyte)])), StringComparison.Ordinal);
    }

    [Fact]
    public void A_scenario_of_too_many_keys_is_refused_at_its_line()
    {
        StringBuilder text = new("title = \"many\"\n");
        for (int i = 0; i < 20_001; i++)
            text.Append(CultureInfo.InvariantCulture, $"k{i} = 1\n");
        Assert.Equal(["s.toml:20001:8: more than 20,000 keys and values; accepted: up to 20,000"], Fixtures.Faults(text.ToString()));
        Assert.StartsWith("s.toml:1:", Assert.Single(Fixtures.Faults($"a = [{string.Concat(Enumerable.Repeat("1,", 20_001))}]")), StringComparison.Ordinal);
        Assert.Equal("s.toml:20001:1: more than 20,000 keys and values; accepted: up to 20,000", Assert.Single(Fixtures.Faults(string.Concat(Enumerable.Repeat("[[draw]]\n", 20_001)))));
    }

    [Fact]
    public void Of_very_many_problems_the_first_hundred_are_shown()
    {
        HeldFiles files = new();
        string path = Path.Combine(Path.GetDirectoryName(Shell.ColdSnap)!, "s.toml");
        files.Texts[path] = File.ReadAllText(Shell.ColdSnap) + "[odd]\n" + string.Concat(Enumerable.Range(0, 3000).Select(i => $"[odd{i}]\n"));
        Shell shell = new() { Files = files };
        Assert.Equal(2, shell.Run("check", path));
        string[] lines = shell.Error.TrimEnd().Split('\n');
        Assert.Equal(101, lines.Length);
        Assert.Equal("coldsim: 3001 problems, of which the first 100 are shown; nothing was run", lines[^1]);
    }

    [Fact]
    public void A_line_over_64_kB_is_refused()
    {
        Assert.Equal(["s.toml:2:1: a line longer than 64 kB; accepted: lines of up to 64 kB"], Fixtures.Faults($"# first\ntitle = \"{new string('x', 70_000)}\"\n"));
        Assert.Equal(["s.toml:2:1: a line longer than 64 kB; accepted: lines of up to 64 kB"], Fixtures.Faults($"# first\n#{new string('x', 70_000)}\n"));
    }

    [Theory]
    [InlineData("a = ", "[", 33, 37)]
    [InlineData("a = ", "[", 100_000 / 2, 37)]
    [InlineData("a = ", "{a=", 15_000, 101)]
    [InlineData("", "[", 40_000, 33)]
    [InlineData("a", ".a", 20_000, 64)]
    public void Nesting_over_32_is_refused_before_it_is_parsed(string start, string level, int levels, int column)
    {
        string text = start + string.Concat(Enumerable.Repeat(level, levels));
        Assert.Equal([$"s.toml:1:{column}: nested over 32 deep; accepted: up to 32"], Fixtures.Faults(text + "\n"));
    }

    [Fact]
    public void Brackets_that_come_out_of_a_text_when_a_line_is_left_out_are_refused_too()
    {
        string[] faults = Fixtures.Faults($"a = 1 2 \"\"\"\nb = {new string('[', 60_000)}\n");
        Assert.Contains("nested over 32 deep", string.Join('\n', faults), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("title = \"[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[\"")]
    [InlineData("title = '{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{{'")]
    [InlineData("title = \"\"\"a\n[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[\n\"\"\"")]
    [InlineData("title = \"a\" # [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[")]
    [InlineData("title = \"\\\"[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[\"")]
    [InlineData("title = \"................................................\"")]
    public void Brackets_in_a_text_nest_nothing(string title) => Assert.Empty(Fixtures.Faults(title + "\n" + Fixtures.Least));

    [Theory]
    [InlineData("")]
    [InlineData("# comment\n")]
    [InlineData("\n")]
    [InlineData("a = 1\n")]
    [InlineData("\0")]
    public void A_scenario_without_end_is_stopped(string again)
    {
        using EndlessStream endless = new("title = 1\n", again.Length == 0 ? "x" : again);
        ReadResult read = ScenarioReader.Read("s.toml", _ => endless);
        Assert.Matches("^s.toml:[0-9]+:[0-9]+: (the file is larger than 1 MB|a line longer than 64 kB|more than 20,000 keys)", Assert.Single(read.Problems).ToString());
        Assert.Empty(read.Warnings);
        Assert.InRange(endless.Given, 0, 5_000_000);
    }

    [Fact]
    public void A_column_map_has_the_same_bounds()
    {
        Assert.Equal(["m.toml:1:1: a line longer than 64 kB; accepted: lines of up to 64 kB"], ColumnsFile.ReadText($"time = \"{new string('x', 70_000)}\"\n", "m.toml").Problems.Select(p => p.ToString()));
        if (File.Exists("/dev/zero"))
            Assert.Contains("64 kB", Assert.Single(ColumnsFile.Read("/dev/zero").Problems).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("time,air [°C]\n2031-01-10T06:00Z,1\n")]
    [InlineData("time;air [°C]\n2031-01-10T06:00Z;1\n\"")]
    public void A_line_of_weather_over_64_kB_is_refused_at_its_line(string before)
    {
        string fault = Assert.Single(Samples.Read(before + new string('1', 100_000)).Problems).ToString();
        Assert.Equal($"w:{before.Count(c => c == '\n') + 1}:1: a line longer than 64 kB; accepted: lines of up to 64 kB", fault);
    }

    [Theory]
    [InlineData("", "\0")]
    [InlineData("time,air [°C]\n2031-01-10T06:00Z,1\n", "\0")]
    [InlineData("time,air [°C]\n2031-01-10T06:00Z,1\n", "x,y\n")]
    [InlineData("time,air [°C]\n2031-01-10T06:00Z,1\n", "2031-01-10T06:00Z,1\n")]
    [InlineData("", "y\n")]
    [InlineData("time,air [°C]\n2031-01-10T06:00Z,1\n", "\n")]
    [InlineData("{\"properties\":{\"periods\":[", "{\"a\":1},")]
    public void Weather_without_end_is_stopped(string head, string again)
    {
        using EndlessStream endless = new(head, again);
        Assert.NotEmpty(WeatherFile.Read(endless, "w", new()).Problems);
        Assert.InRange(endless.Given, 0, 70_000_000);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void A_typical_year_without_end_is_stopped_where_it_is_known()
    {
        string first = Samples.Tmy3Of([("12/31/1991", 1)]);
        using EndlessStream endless = new(first, first[(first.IndexOf('\n', first.IndexOf('\n') + 1) + 1)..]);
        string fault = Assert.Single(WeatherFile.Read(endless, "w", new()).Problems).ToString();
        Assert.StartsWith("w:2000003:1: the file goes on after this line; it is longer than 2 million rows; ", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stream_ends_at_its_bound()
    {
        using BoundedStream bounded = new(new EndlessStream("", "\n"), 1000);
        byte[] buffer = new byte[600];
        Assert.Equal(600, bounded.Read(buffer));
        Assert.Throws<EndlessFileException>(() => bounded.Read(buffer));
    }

    [Fact]
    public void What_a_check_keeps_of_long_weather_has_its_first_its_last_and_its_coldest_row()
    {
        using Stream whole = GeneratedRows.Of(30_000, 5), thinned = GeneratedRows.Of(30_000, 5);
        WeatherResult all = WeatherFile.Read(whole, "g", new()), some = WeatherFile.Read(thinned, "g", new() { MostRows = 1000 });
        Assert.InRange(some.Rows.Count, 500, 1003);
        Assert.Equal(32, some.RowsForEach);
        Assert.Equal(all.Rows[0], some.Rows[0]);
        Assert.Equal(all.Rows[^1], some.Rows[^1]);
        Assert.Equal(all.Rows.Min(r => r.Air_K), some.Rows.Min(r => r.Air_K));
        Assert.Equal(some.Rows.OrderBy(r => r.Time), some.Rows);
        Assert.Equal(all.Rows.Count, some.Counts!.Rows);
        Assert.Null(all.Counts);
        using Stream few = GeneratedRows.Of(900, 5), same = GeneratedRows.Of(900, 5);
        Assert.Equal(WeatherFile.Read(few, "g", new()).Rows, WeatherFile.Read(same, "g", new() { MostRows = 1000 }).Rows);
    }

    [Fact]
    public void A_check_of_long_weather_says_what_it_is_worked_out_from_and_counts_all_rows()
    {
        StringBuilder weather = new("time,air [°C],wind [m/s]\n");
        DateTimeOffset time = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);
        for (int i = 0; i < 140_000; i++)
            weather.Append(CultureInfo.InvariantCulture, $"{time.AddMinutes(i):yyyy-MM-dd'T'HH:mm}Z,{(i == 70_020 ? "-40" : "-5")},{(i % 70_000 == 7 ? "" : "2")}\n");
        HeldFiles files = new();
        string folder = Path.GetDirectoryName(Shell.ColdSnap)!;
        files.Texts[Path.Combine(folder, "s.toml")] = Fixtures.Least;
        files.Texts[Path.Combine(folder, "w.csv")] = weather.ToString();
        Shell shell = new() { Files = files };
        Assert.Equal(0, shell.Run("check", Path.Combine(folder, "s.toml"), "--units", "si", "--full"));
        string plain = shell.Out.ReplaceLineEndings(" ").Replace("   ", " ", StringComparison.Ordinal);
        Assert.Contains("140000 rows, all checked; what is shown here is worked out from the coldest of every 2", plain, StringComparison.Ordinal);
        Assert.Contains("Fri 7 Apr 2000 05:19", plain, StringComparison.Ordinal);
        Assert.Contains("-40", plain, StringComparison.Ordinal);
    }

    [Fact]
    public void A_log_over_16_MB_is_refused_and_a_line_over_64_kB_is_damaged()
    {
        string path = Path.GetTempFileName();
        try
        {
            string header = File.ReadLines(Shell.Demo("three-days.log.csv")).First();
            File.WriteAllText(path, $"{header}\n{new string('x', 70_000)}\n");
            Assert.Equal([$"{path}:2:1: a line longer than 64 kB; accepted: lines of up to 64 kB"], Damaged());
            File.WriteAllText(path, $"{header}\n{new string('\n', 17_000_000)}");
            Assert.EndsWith("it is larger than 16 MB, which no log is", Assert.Single(Damaged()), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }

        string[] Damaged() => [.. LogReader.Read(path, Fixtures.Read(Fixtures.Least).Scenario!.Rig).Damaged.Select(d => d.ToString())];
    }

    // Gives its head, then the same for ever.
    private sealed class EndlessStream(string head, string again) : Stream
    {
        private readonly byte[] _head = Encoding.UTF8.GetBytes(head);
        private readonly byte[] _again = Encoding.UTF8.GetBytes(again);

        public long Given { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            if (Given > 3_000_000_000)
                throw new InvalidOperationException("read on for ever");
            for (int i = 0; i < count; i++, Given++)
                buffer[offset + i] = Given < _head.Length ? _head[Given] : _again[(Given - _head.Length) % _again.Length];
            return count;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
