using System.CommandLine;
using System.Text;
using ColdSim.App.Commands;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Scenarios.Sections;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files.Weather;
using Xunit;

namespace ColdSim.Tests.App.ForeignText;

public sealed class OtherPayloadTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string, string> WeatherFiles => new()
    {
        { "own", "# note {n}\n" + ColdSim.Tests.Files.Fixtures.Weather },
        { "EPW", Samples.Epw },
        { "TMY3", Samples.Tmy3 },
        { "LCD", Samples.LcdMetric },
        { "LCD quoted", Samples.LcdUs },
        { "GHCNh", Samples.Ghcnh },
        { "forecast for a position", Samples.OpenMeteo },
        { "hourly archive", Samples.Meteostat },
        { "hourly archive, bulk", Samples.MeteostatBulk },
        { "hourly archive, by year", Samples.MeteostatYear },
        { "hourly forecast", Samples.Forecast },
    };

    [Theory]
    [MemberData(nameof(WeatherFiles))]
    public void A_text_in_any_cell_of_a_weather_file_comes_out_visible(string layout, string text)
    {
        HeldFiles files = new();
        Shell shell = new() { Files = files };
        string copy = Path.Combine(_folder, "copy.csv");
        int at = 0;
        foreach (int cell in Cells(text))
        {
            foreach (string payload in (string[])[Payload.All[at++ % Payload.All.Count], Payload.Joined])
            {
                string written = text.Contains("\"periods\"", StringComparison.Ordinal) ? string.Concat(payload.Select(c => $"\\u{(int)c:X4}")) : payload.Replace("\n", "\v", StringComparison.Ordinal);
                foreach (string changed in (string[])[text.Insert(cell, written), text.Insert(cell, payload)])
                {
                    files.Texts["w"] = changed;
                    shell.Run("weather", "w", "--full");
                    Payload.AssertNone(shell.Out + shell.Error, $"{layout}, cell at {cell}: {payload}");
                }
            }
        }

        files.Texts["w"] = text.Replace("NOWHERE", "NOWHERE" + Payload.Joined.Replace("\n", "", StringComparison.Ordinal), StringComparison.Ordinal).Replace("Nowhere", "N\u001b[31m\u202e", StringComparison.Ordinal);
        shell.Run("weather", "w", "--json");
        Payload.AssertNone(shell.Out + shell.Error, layout);
        shell.Run("weather", "w", "--out", copy);
        if (File.Exists(copy))
            Payload.AssertNone(File.ReadAllText(copy), layout);
    }

    [Fact]
    public void A_text_in_any_key_of_a_column_map_comes_out_visible()
    {
        string map = Path.Combine(_folder, "m.toml"), weather = Path.Combine(_folder, "w.csv");
        File.WriteAllText(weather, $"when,t {Payload.Joined.Replace("\n", "", StringComparison.Ordinal)}\n2031-01-10T00:00Z,1\n2031-01-10T01:00Z,1\n");
        foreach (ScenarioKey key in ColumnsSection.Declared.Keys)
        {
            foreach (string payload in Payload.All)
            {
                File.WriteAllText(map, $"{(key.Name == "time" ? "" : "time = \"when\"\n")}{(key.Name == "air" ? "" : "air = \"t\"\n")}{key.Name} = {Payload.Toml(payload)}\n");
                Shell shell = new();
                shell.Run("weather", weather, "--columns", map);
                Payload.AssertNone(shell.Out + shell.Error, $"{key.Name} = {payload}");
            }
        }
    }

    [Fact]
    public void A_text_in_any_field_of_a_log_comes_out_visible()
    {
        string scenario = Path.Combine(_folder, "three-days.toml");
        foreach (string file in (string[])["three-days.toml", "three-days.weather.csv"])
            File.Copy(Shell.Demo(file), Path.Combine(_folder, file));
        string[] good = File.ReadAllLines(Shell.Demo("three-days.log.csv"));
        for (int field = 0; field < 7; field++)
        {
            foreach (string payload in Payload.All)
            {
                string[] fields = good[^1].Split(',');
                fields[field] = field == 6 ? payload.Replace("\n", " ", StringComparison.Ordinal) : payload;
                File.WriteAllLines(Path.Combine(_folder, "three-days.log.csv"), [.. good[..^1], string.Join(',', fields)]);
                foreach (string[] words in (string[][])[["log", "show", scenario, "--no-weather"], ["log", "show", scenario], ["log", "show", scenario, "--full"], ["log", "show", scenario, "--skip-damaged"], ["run", scenario, "--skip-damaged"]])
                {
                    if (words[0] == "run" && payload != Payload.All[0])
                        continue;
                    Shell shell = new();
                    shell.Run(words);
                    Payload.AssertNone(shell.Out + shell.Error, $"field {field}: {payload}");
                }
            }
        }

        File.WriteAllText(Path.Combine(_folder, "three-days.log.csv"), Payload.Joined);
        Shell other = new();
        Assert.Equal(2, other.Run("log", "show", scenario));
        Payload.AssertNone(other.Error, "the header");
    }

    [Fact]
    public void A_word_of_the_command_line_comes_out_visible()
    {
        using Host host = new(Stream.Null, TextWriter.Null);
        int lines = 0;
        foreach (Command command in Commands(CommandTree.Of(host)))
        {
            string[] path = [.. Words(command)];
            IEnumerable<string[]> endings = command.Options.Where(o => o.Name != "--help").Select(o => (string[])[o.Name, "{p}"])
                .Concat([["{p}"], ["--{p}"], ["--{p}=1"], [Shell.ColdSnap, "{p}"], ["-{p}", "{p}"]]);
            foreach (string[] ending in endings.Where(e => path is not ["new"] || e.Length > 1))
            {
                foreach (string payload in (string[])[Payload.All[lines++ % Payload.All.Count], Payload.Joined])
                {
                    string[] before = command.Arguments.Count > 0 && ending[0].Length > 2 && ending[0] != "--{p}" && ending[0] != Shell.ColdSnap ? [.. path, Missing] : path;
                    string[] words = [.. before, .. ending.Select(w => w.Replace("{p}", payload, StringComparison.Ordinal))];
                    Shell shell = new();
                    shell.Run(words);
                    Payload.AssertNone(shell.Out + shell.Error, string.Join(' ', words));
                }
            }
        }

        Assert.True(lines > 100, $"{lines} lines");
    }

    [Fact]
    public void A_long_word_of_the_command_line_is_quoted_in_part()
    {
        using Host host = new(Stream.Null, TextWriter.Null);
        List<string> whole = [];
        foreach (Command command in Commands(CommandTree.Of(host)))
        {
            foreach (string option in command.Options.Select(o => o.Name).Where(o => o != "--help").Append("--unknown"))
            {
                foreach (string word in (string[])[new string('x', 3000), new string('9', 3000), "-" + new string('9', 3000)])
                {
                    Shell shell = new();
                    shell.Run([.. Words(command), .. command.Arguments.Count > 0 ? (string[])[command.Name == "new" ? Missing : Shell.ColdSnap] : [], option, word]);
                    if ((shell.Out + shell.Error).Contains(word.TrimStart('-')[..300], StringComparison.Ordinal))
                        whole.Add($"{command.Name} {option} {word[..2]}");
                }
            }
        }

        Assert.True(whole.Count == 0, string.Join(", ", whole));
    }

    [Fact]
    public void A_file_name_comes_out_visible()
    {
        foreach (string payload in Payload.All.Where(p => !p.Contains('\0', StringComparison.Ordinal)))
        {
            string path = System.IO.Path.Combine(_folder, payload + ".toml");
            File.WriteAllText(path, "title = 3\n");
            Shell shell = new();
            Assert.Equal(2, shell.Run("check", path));
            Payload.AssertNone(shell.Error, payload);
            shell.Run("weather", path);
            Payload.AssertNone(shell.Error, payload);
            shell.Run("check", path[..^1]);
            Assert.Contains("did you mean", shell.Error, StringComparison.Ordinal);
            Payload.AssertNone(shell.Error, payload);
            shell.Run("new", path);
            Payload.AssertNone(shell.Out + shell.Error, payload);
        }
    }

    [Theory]
    [InlineData("plain, 45° ½ “x” – Ünï 漢字 🚐", "plain, 45° ½ “x” – Ünï 漢字 🚐")]
    [InlineData("a\u001bb\nc\u007f", "a␛b␊c␡")]
    [InlineData("\u009b\u202e\u2028\u200b\ufeff", "U+009BU+202EU+2028U+200BU+FEFF")]
    [InlineData("👩\u200d🚀 می\u200cخواهم", "👩\u200d🚀 می\u200cخواهم")]
    [InlineData("o\u200dne", "oU+200Dne")]
    public void What_is_not_seen_is_shown(string text, string shown)
    {
        Assert.Equal(shown, VisibleText.Of(text));
        Assert.Equal(shown, VisibleText.Of(shown));
    }

    [Fact]
    public void Half_a_character_is_shown_by_its_number()
    {
        Assert.Equal("xU+D800y", VisibleText.Of("x\ud800y"));
        Assert.Equal("U+DC00", VisibleText.Of("\udc00"));
    }

    [Fact]
    public void A_quote_is_cut_at_sixty_characters()
    {
        Assert.Equal(new string('x', 60), Quote.Of(new string('x', 60)));
        Assert.Equal(new string('x', 59) + "…", Quote.Of(new string('x', 61)));
        Assert.Equal(60, Quote.Of(new string('\u202e', 1_000_000)).Length);
        Assert.Equal(new string('x', 58) + "…", Quote.Of(new string('x', 58) + "🚐🚐🚐"));
        Shell shell = new();
        Assert.Equal(2, shell.Run("run", Shell.ColdSnap, "--nights", new string('9', 5000)));
        Assert.True(shell.Error.Length < 400, shell.Error);
    }

    private string Missing => System.IO.Path.Combine(_folder, "none.toml");

    private static IEnumerable<Command> Commands(Command command) => command.Subcommands.SelectMany(Commands).Append(command).Where(c => c.Subcommands.Count == 0);

    private static IEnumerable<string> Words(Command command)
        => command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? Words(parent).Append(command.Name) : [];

    // The beginnings of all cells of the first lines; of a forecast, of all texts.
    private static IEnumerable<int> Cells(string text)
    {
        bool json = text.StartsWith('{');
        int lines = 0;
        for (int i = 0; i < text.Length && lines < (json ? 20 : 4); i++)
        {
            if (text[i] == '\n')
                lines++;
            if (json ? text[i] == '"' : i == 0 || text[i - 1] is ',' or '|' or '\n')
                yield return json ? i + 1 : i;
        }
    }
}
