using System.Globalization;
using System.Text;
using System.Text.Json;
using ColdSim.App.Commands;
using ColdSim.Files.Weather;
using ColdSim.Tests.Files;
using ColdSim.Tests.Files.Weather;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public sealed class WeatherCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-weather-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Write(string name, string text)
    {
        string path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    private static Shell Run(int code, bool terminal, params string[] words)
    {
        Shell shell = new() { Terminal = terminal };
        int ended = shell.Run(["weather", .. words]);
        Assert.True(code == ended, shell.Error);
        return shell;
    }

    private string Shown(Shell shell) => (shell.Out + shell.Error).Replace(_folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);

    private static Shell Run(int code, params string[] words) => Run(code, terminal: false, words);

    [Fact]
    public void A_typical_year_looks_like_this() => Snapshot.Match(Shown(Run(0, Write("a.epw", Samples.Epw), "--full")));

    [Fact]
    public void On_a_terminal_the_curve_is_in_braille() => Snapshot.Match(Shown(Run(0, terminal: true, Write("a.epw", Samples.Epw), "--units", "si")));

    [Fact]
    public void A_station_record_shifted_to_a_hollow_looks_like_this()
        => Snapshot.Match(Shown(Run(
            0, Write("r.psv", Samples.Ghcnh), "--elevation", "2600 m", "--hollow", "3 K", "--hollow-calm", "9 m/s", "--wind-height", "2 m", "--below", "-20C", "--units", "si", "--full")));

    [Fact]
    public void A_picked_night_looks_like_this_and_can_be_run()
    {
        string epw = Write("a.epw", Samples.EpwOf([(2031, 1, 29), (2031, 1, 30), (2031, 1, 31)]));
        string csv = Path.Combine(_folder, "night.csv");
        Snapshot.Match(Shown(Run(0, epw, "--night", "worst", "--full", "--out", csv)) + "-----\n" + File.ReadAllText(csv));
        Assert.Equal(25, File.ReadLines(csv).Count(l => l.StartsWith("2031", StringComparison.Ordinal)));
        Assert.Empty(Samples.Read(File.ReadAllBytes(csv)).Problems);
    }

    [Fact]
    public void Everything_keeps_to_eighty_columns()
    {
        string epw = Write("a.epw", Samples.Epw);
        Assert.All(Shown(Run(0, epw, "--full")).Split('\n'), l => Assert.True(l.Length <= 80, l));
        Assert.All(Run(0, "--help").Out.Split('\n'), l => Assert.True(l.Length <= 80, l));
    }

    [Fact]
    public void Json_is_one_document_and_notes_go_to_standard_error()
    {
        Shell shell = Run(0, Write("a.epw", Samples.EpwOf([(2031, 1, 30), (2031, 1, 31)])), "--night", "p99", "--json", "--year", "2032");
        using JsonDocument json = JsonDocument.Parse(shell.Out);
        Assert.Equal("epw", json.RootElement.GetProperty("format").GetString());
        Assert.Equal(1, json.RootElement.GetProperty("night").GetProperty("rank").GetInt32());
        Assert.Contains("note: the year 2031 put on 2032", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_document_has_the_keys_of_its_figures()
    {
        const string gap = "time,air [°C]\n2025-01-14T12:00Z,-1\n2025-01-14T13:00Z,-2\n2025-01-14T14:00Z,-3\n2025-01-14T17:00Z,-9\n2025-01-15T16:00Z,-9\n";
        SortedSet<string> written = new(StringComparer.Ordinal);
        Collect(Write("a.csv", gap), "--bridge", "30 h", "--night", "worst");
        string snap = Write("snap.csv", Snap());
        Collect(snap, "--spell", "worst", "--nights", "2");
        Collect(snap, "--coldest", "2");
        ResultsTests.AssertKeys("weather", written);

        void Collect(params string[] words)
        {
            using JsonDocument json = JsonDocument.Parse(Run(0, [.. words, "--json"]).Out);
            ResultsTests.Collect(json.RootElement, "", written);
        }
    }

    // Invented: ten nights of which the fourth to sixth are a cold snap, calm and clear, and the ninth has the coldest hour.
    private static string Snap()
    {
        double[] lows_C = [-4, -5, -3, -19, -21, -20, -6, -2, -23, -1], highs_C = [2, 1, 2, -9, -8, -9, 0, 3, 8, 9];
        StringBuilder csv = new("time,air [°C],wind [m/s],sun [W/m²]\n");
        for (int h = 0; h <= 240; h++)
        {
            int night = Math.Min(9, h / 24), clock_h = (12 + h) % 24;
            double air_C = highs_C[night] + ((lows_C[night] - highs_C[night]) * Math.Max(0, 1 - (Math.Abs(clock_h - 7) / 8.0)));
            csv.Append(CultureInfo.InvariantCulture, $"{new DateTime(2031, 1, 10, 12, 0, 0).AddHours(h):yyyy-MM-dd'T'HH:mm}-07:00,{air_C},{(night is >= 3 and <= 5 ? 1 : 5)},{(clock_h is > 8 and < 16 ? 300 : 0)}\n");
        }

        return csv.ToString();
    }

    [Fact]
    public void The_coldest_spells_look_like_this() => Snapshot.Match(Shown(Run(0, Write("snap.csv", Snap()), "--coldest", "3")));

    [Fact]
    public void A_picked_spell_looks_like_this_and_can_be_run()
    {
        string csv = Path.Combine(_folder, "spell.csv");
        Snapshot.Match(Shown(Run(0, Write("snap.csv", Snap()), "--spell", "worst", "--nights", "3", "--units", "si", "--out", csv)));
        WeatherResult read = Samples.Read(File.ReadAllBytes(csv));
        Assert.Empty(read.Problems);
        Assert.Equal((73, 1.0, 300.0), (read.Rows.Count, read.Rows[12].Wind_m_s, read.Rows[24].Sun_W_m2));
    }

    [Theory]
    [InlineData("--night")]
    [InlineData("--spell")]
    [InlineData("--coldest")]
    public void Nights_looked_for_fit_a_screen(string option)
    {
        string snap = Write("snap.csv", Snap());
        string value = option == "--coldest" ? "2" : "worst";
        string[] lines = Run(0, snap, option, value).Out.TrimEnd('\n').Split('\n');
        Assert.True(lines.Length <= 23, $"{lines.Length} lines");
        Assert.All(lines, l => Assert.True(l.Length <= 80, l));
    }

    [Theory]
    [InlineData("--night takes worst, p99", "--night", "coldest")]
    [InlineData("--spell takes worst, p99", "--spell", "p2")]
    [InlineData("--nights goes with --spell", "--nights", "3")]
    [InlineData("--night and --coldest do not go together", "--coldest", "3", "--night", "worst")]
    [InlineData("--spell: the rows have 1 whole night, noon to noon; 3 in a row are asked for", "--spell", "worst")]
    [InlineData("--format: there is no 'epv'; did you mean 'epw'?", "--format", "epv")]
    [InlineData("--from takes a date", "--from", "yesterday")]
    [InlineData("--bridge: 1 h is out of range; accepted: 3 h to 31 d", "--bridge", "1 h")]
    [InlineData("--below: '5' has no unit", "--below", "5")]
    [InlineData("want --elevation", "--lapse", "6")]
    [InlineData("--latitude and --longitude belong together", "--latitude", "40")]
    [InlineData("1-in-10 takes a record of at least 9 whole winters", "--night", "1-in-10")]
    [InlineData("no row in the window asked for; the file goes from 2031-01-30T01:00-07:00 to 2031-02-01T00:00-07:00", "--from", "2040-01-01")]
    [InlineData("no row in the window asked for; the file begins at 2031-01-30T01:00-07:00", "--to", "2030-01-01")]
    [InlineData(
        "no row in the window asked for; the file begins at 2031-01-30T01:00-07:00, its first row behind the window is at 2031-01-30T12:00-07:00",
        "--from", "2031-01-30T11:10", "--to", "2031-01-30T11:50")]
    [InlineData("--from lies after --to, or at it", "--from", "2031-02-01", "--to", "2031-01-30")]
    [InlineData("--from lies after --to, or at it", "--from", "2031-01-31", "--to", "2031-01-30")]
    [InlineData("--from lies after --to", "--from", "2031-01-30T12:00-07:00", "--to", "2031-01-30T12:00-06:00")]
    [InlineData("--from lies after --to", "--from", "2031-02-01", "--to", "2031-01-30T12:00-06:00")]
    [InlineData("read as NOAA Local Climatological Data CSV; --format reads it as another layout, --columns by a map of its headings", "--format", "lcd")]
    public void What_is_wrong_is_reported_and_nothing_is_printed(string message, params string[] words)
    {
        Shell shell = Run(2, [Write("a.epw", Samples.EpwOf([(2031, 1, 30), (2031, 1, 31)])), .. words]);
        Assert.Contains(message, shell.Error, StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
    }

    private const string Logger = "Datum;Temperatur\n14.01.2031 16:00;-3,5\n14.01.2031 17:00;-4,5\n14.01.2031 18:00;-6,5\n";

    [Fact]
    public void A_table_of_no_known_layout_is_read_by_a_map_of_its_headings()
    {
        string map = Write("logger.toml", "time = \"Datum\"\ntime_format = \"dd.MM.yyyy HH:mm\"\nair = \"Temperatur\"\nair_unit = \"°C\"\n");
        string csv = Path.Combine(_folder, "ours.csv");
        Snapshot.Match(Shown(Run(0, Write("logger.csv", Logger), "--columns", map, "--offset", "+01:00", "--units", "si", "--full", "--out", csv)) + "-----\n" + File.ReadAllText(csv));
    }

    [Theory]
    [InlineData("air = \"Temperatur\"\nair_umit = \"°C\"", "logger.toml:3:1: unknown key 'air_umit' at the top level; did you mean 'air_unit'?")]
    [InlineData("air = \"Temperatur\"\nair_unit = \"mph\"", "logger.toml:3:1: 'air_unit' is \"mph\"; accepted: °C, °F, K")]
    [InlineData("air = \"Temperatur\"\nair_unit = \"°C\"\ntime_format = \"unix\"", "logger.csv:2:1: Datum: '14.01.2031 16:00' is not a date and time; accepted: unix")]
    [InlineData("air = \"Temperature\"\nair_unit = \"°C\"", "logger.csv:1:1: no column 'Temperature'; did you mean 'Temperatur'?")]
    public void A_wrong_map_is_reported_with_its_place(string keys, string message)
    {
        string map = Write("logger.toml", "time = \"Datum\"\n" + keys + "\n");
        Shell shell = Run(2, Write("logger.csv", Logger), "--columns", map);
        Assert.StartsWith(message, shell.Error.Replace(_folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void A_typical_year_is_named_as_one_where_a_chance_is_asked_of_it()
    {
        string epw = Write("a.epw", Samples.EpwOf([(1990, 1, 29), (1990, 1, 30), (1984, 1, 31)]));
        const string words = "its months were picked for being usual";
        Assert.Contains(words, Run(0, epw, "--night", "p99", "--full").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain(words, Run(0, epw, "--night", "worst", "--full").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("is a typical year", Run(2, epw, "--night", "1-in-10").Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_map_is_proposed_with_three_rows_by_it_and_written()
    {
        string table = Write("logger.csv", Logger), map = Path.Combine(_folder, "logger.toml");
        Shell shell = Run(0, table, "--map", map);
        Assert.StartsWith("MAP PROPOSED for logger.csv, from its headings in line 1.", shell.Out, StringComparison.Ordinal);
        Assert.Contains("2031-01-14 16:00", shell.Out, StringComparison.Ordinal);
        Assert.Contains($"map written to {map}", shell.Error, StringComparison.Ordinal);
        Assert.StartsWith("COLDEST: ", Run(0, table, "--columns", map, "--offset", "+01:00").Out, StringComparison.Ordinal);
        Assert.Equal(0, new Shell().Run("weather", table, "--map", map));
        Assert.Contains("--map: ", Run(2, table, "--map", table).Error, StringComparison.Ordinal);
        Assert.Contains("drop --json", Run(2, table, "--map", map, "--json").Error, StringComparison.Ordinal);
        Assert.Contains("a.epw:1:1: it is EPW (EnergyPlus weather), which is read without a map", Run(2, Write("a.epw", Samples.Epw), "--map", map).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_map_that_is_missing_or_given_with_a_format_is_refused()
    {
        string csv = Write("logger.csv", Logger);
        Assert.Contains("none.toml:1:1: the column map cannot be opened", Run(2, csv, "--columns", Path.Combine(_folder, "none.toml")).Error, StringComparison.Ordinal);
        Assert.Contains("the top level lacks 'air'", Run(2, csv, "--columns", Write("m.toml", "time = \"Datum\"\n")).Error, StringComparison.Ordinal);
        Assert.Contains("--columns and --format do not go together", Run(2, csv, "--columns", csv, "--format", "csv").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_changes_between_its_two_readings_is_not_written()
    {
        string file = Write("a.epw", Samples.Epw), csv = Path.Combine(_folder, "b.csv");
        Shell shell = new() { Files = new ChangingFile(file, Samples.EpwOf([(2031, 1, 30)])) };
        Assert.Equal(2, shell.Run("weather", file, "--out", csv));
        Assert.Contains("is not what it was when it was read first", shell.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(csv));
    }

    [Fact]
    public void A_file_that_is_missing_or_would_be_overwritten_is_refused()
    {
        Assert.StartsWith("coldsim: there is no file", Run(2, Path.Combine(_folder, "none.epw")).Error, StringComparison.Ordinal);
        string epw = Write("a.epw", Samples.Epw);
        Assert.StartsWith($"coldsim: --out: '{epw}' is an input of this run and is never overwritten", Run(2, epw, "--out", epw).Error, StringComparison.Ordinal);
    }

    /// <summary>A file that holds something else when it is opened again.</summary>
    private sealed class ChangingFile(string changing, string then) : DiskFiles
    {
        private int _opened;

        public override Stream Open(string path)
            => path == changing && _opened++ > 0 ? new MemoryStream(System.Text.Encoding.UTF8.GetBytes(then)) : base.Open(path);
    }
}
