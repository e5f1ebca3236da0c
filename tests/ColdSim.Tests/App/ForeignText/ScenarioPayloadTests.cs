using System.Text;
using System.Text.Json;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Tests.App.Commands;
using Xunit;

namespace ColdSim.Tests.App.ForeignText;

public sealed class ScenarioPayloadTests : IDisposable
{
    private const string Named = """
        title = {payload}
        [place]
        name = {payload}
        elevation = "4,900 ft"
        latitude = 45.2
        longitude = -112.6
        [weather]
        file = "w.csv"
        [run]
        start = 2027-01-12T16:00:00-07:00
        nights = 1
        [gas]
        currency = "\u202E"
        price = "3.50 per gal"
        [[cylinder]]
        size = "30 lb"
        name = {payload}
        left = "17 lb"
        [[cylinder]]
        size = "20 lb"
        name = {payload2}
        [regulator]
        rated_flow = "160,000 BTU/h"
        [furnace]
        input = "20,000 BTU/h"
        efficiency = "77 %"
        [thermostat]
        day = "66 °F"
        [coach]
        length = "19 ft"
        width = "7.8 ft"
        [[coach.surface]]
        name = {payload}
        kind = "wall"
        area = "27 m²"
        u = "1.15 W/m²K"
        [[draw]]
        name = {payload}
        rate = "900 BTU/h"
        [[heater]]
        name = {payload}
        runs_on = "diesel"
        output = "300 W"
        [[wet_bay]]
        name = {payload}
        [[pipe]]
        name = {payload3}
        where = {payload}
        length = "3 m"
        [[tank]]
        name = {payload2}
        where = {payload}
        volume = "20 gal"
        [battery]
        chemistry = "agm"
        capacity = "100 Ah"
        [[load]]
        name = {payload}
        draws = "10 W"
        [[option]]
        name = "R\u202E\u200Bx"
        [option.set]
        "thermostat.day" = "50 °F"
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string> TextKeys => [.. TextKeysOf(ScenarioKeys.All)];

    [Theory]
    [MemberData(nameof(TextKeys))]
    public void A_text_in_any_key_comes_out_visible(string key)
    {
        int at = key.Length % Payload.All.Count;
        foreach (string payload in key is "title" || key.EndsWith("name", StringComparison.Ordinal) ? Payload.All : [Payload.All[at], Payload.All[(at + 5) % Payload.All.Count], Payload.Joined])
            AssertVisible(With(File.ReadAllText(Shell.ColdSnap), key, payload), key);
        string other = Payload.All[(at + 7) % Payload.All.Count];
        string demo = File.ReadAllText(Shell.ColdSnap);
        AssertVisible($"{demo}\n[{Payload.Toml(other)}]\n{Payload.Toml(other)} = 1\n[{key}]\n{Payload.Toml(other)}.{Payload.Toml(other)} = 1\n", $"below {key}");
        AssertVisible($"{demo}\n{key} = {other}\n", $"{key} without quotes");
    }

    private static void AssertVisible(string scenario, string where)
    {
        HeldFiles files = new();
        string path = Path.Combine(Path.GetDirectoryName(Shell.ColdSnap)!, "p.toml");
        files.Texts[path] = scenario;
        Shell shell = new() { Files = files };
        foreach (string[] length in (string[][])[[], ["--full"], ["--brief"]])
        {
            shell.Run(["check", path, .. length]);
            Payload.AssertNone(shell.Out + shell.Error, where);
        }
    }

    [Theory]
    [Trait("Category", "Slow")]
    [InlineData("run {0} --csv {1} --no-log")]
    [InlineData("run {0}")]
    [InlineData("run {0} --members 4")]
    [InlineData("run {0} --members 4 --full")]
    [InlineData("check {0}")]
    [InlineData("check {0} --brief")]
    [InlineData("compare {0} --csv {1} --no-log")]
    [InlineData("trip {0} --csv {1} --no-log")]
    [InlineData("limits {0} --csv {1} --fills 100 --no-log")]
    [InlineData("limits {0} --one-page --fills 100 --no-log")]
    [InlineData("freeze {0} --no-log")]
    [InlineData("freeze {0} --no-log --full")]
    [InlineData("explain {0} --no-log")]
    [InlineData("report {0} --out {1}")]
    [InlineData("report {0} --format md --out {1} --with limits,chance --members 4 --no-log")]
    [InlineData("report {0} --only limits --page a5 --out {1} --no-log")]
    [InlineData("log show {0}")]
    [InlineData("log show {0} --full")]
    [InlineData("log add {0} --cylinder {2} --weight 31lb --at 2027-01-12T19:00-07:00")]
    [InlineData("weather {3} --out {1}")]
    [InlineData("weather {3} --full --out {1}")]
    public void Names_come_out_visible_in_text_and_tables(string line)
    {
        string scenario = Write(Named), csv = Path.Combine(_folder, "o.csv"), name = VisibleText.Of(Payload.Joined);
        Shell shell = new();
        Assert.True(shell.Run("log", "add", scenario, "--cylinder", name, "--weight", "31 lb", "--at", "2027-01-12T18:00-07:00", "--note", "a \u202eb\u200b") == 0, shell.Error);
        foreach (bool terminal in (bool[])[false, true])
        {
            File.Delete(csv);
            shell = new() { Terminal = terminal };
            string[] words = [.. line.Split(' ').Select(w => w switch { "{0}" => scenario, "{1}" => csv, "{2}" => name, "{3}" => Path.Combine(_folder, "w.csv"), _ => w })];
            Assert.True(shell.Run(words) == 0, shell.Error);
            Payload.AssertNone(shell.Out, line, ownStyles: terminal);
            Payload.AssertNone(shell.Error.Replace("\r", "", StringComparison.Ordinal), line);
            Assert.Equal(words.Contains(csv), File.Exists(csv));
            if (File.Exists(csv))
                Payload.AssertNone(File.ReadAllText(csv), line);
        }
    }

    [Theory]
    [Trait("Category", "Slow")]
    [InlineData("run")]
    [InlineData("compare")]
    [InlineData("explain")]
    [InlineData("freeze")]
    [InlineData("limits")]
    public void JSON_keeps_a_name_as_it_is_and_writes_it_by_numbers(string command)
    {
        Shell shell = new();
        int code = shell.Run([command, Write(Named), "--json", .. command == "limits" ? (string[])["--fills", "100"] : []]);
        Payload.AssertNone(shell.Out, command);
        Payload.AssertNone(shell.Error, command);
        Assert.True(code == 0, shell.Error);
        using JsonDocument document = JsonDocument.Parse(shell.Out);
        Assert.Contains(Payload.Joined, Texts(document.RootElement));
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void The_screen_shows_no_code()
    {
        int pages = 0;
        Shell shell = new()
        {
            Terminal = true,
            Screen = (opening, units, _) =>
            {
                FrameView view = opening.Frame(units);
                foreach ((int width, int height) in ((int, int)[])[(80, 24), (140, 50)])
                {
                    view = view.Update(new FrameMessage.Resized(width, height));
                    foreach (IPage page in view.Pages)
                    {
                        view = view.Update(new FrameMessage.GoTo(page.Key));
                        Payload.AssertNone(FrameSheet.Draw(view, width, height).ToString(), $"page {page.Key} at work");
                        if (view.Jobs[view.Open] is { } job && page.Key is not '7')
                            view = view.Update(new FrameMessage.JobEnded(job.Job, new PageMessage.Completed(job.Job.Run(new Progress<int>(), CancellationToken.None))));
                        foreach (PageMessage message in (PageMessage[])[new PageMessage.Choose(), new PageMessage.NextEvent(1), new PageMessage.ToggleList(), new PageMessage.Last()])
                        {
                            Payload.AssertNone(FrameSheet.Draw(view, width, height).ToString(), $"page {page.Key}");
                            view = view.Update(new FrameMessage.ToPage(message));
                        }

                        pages++;
                    }
                }

                return 0;
            },
        };
        Assert.True(shell.Run("view", Write(Named)) == 0, shell.Error);
        Assert.True(pages > 10, $"{pages} pages");
    }

    [Fact]
    public void A_title_forges_no_line_of_the_answer()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("check", Write(Named.Replace("title = {payload}", "title = \"Cold\\nAll nights hold.\"", StringComparison.Ordinal))));
        Assert.StartsWith("It can be run, with 1 warning: Cold␊All nights hold..\n", shell.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("=HYPERLINK(0)")]
    [InlineData("+1")]
    [InlineData("-1+2")]
    [InlineData("@SUM(1)")]
    [InlineData("＝1")]
    public void A_text_cell_of_a_table_is_no_formula(string name)
    {
        string scenario = Write(Named.Replace("{payload2}", $"\"{name}\"", StringComparison.Ordinal).Replace("[[option]]\nname = \"R\\u202E\\u200Bx\"", $"[[option]]\nname = \"{name}\"", StringComparison.Ordinal));
        string csv = Path.Combine(_folder, "o.csv");
        Shell shell = new();
        Assert.Equal(0, shell.Run("compare", scenario, "--csv", csv));
        Assert.Contains(File.ReadLines(csv), l => l.Contains($",'{name},", StringComparison.Ordinal));
        File.Delete(csv);
        Assert.Equal(0, shell.Run("run", scenario, "--csv", csv));
        string[] headings = File.ReadLines(csv).First().Split(',');
        Assert.DoesNotContain(headings, h => h.Length > 0 && h.Trim('"')[0] is '=' or '+' or '-' or '@' or '＝' or '\t' or '\r');
        Assert.Contains(File.ReadLines(csv).Skip(1), l => l.Contains(",-", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\t=1", "'␉=1")]
    [InlineData("\r=1", "'␍=1")]
    [InlineData(" =1", " =1")]
    [InlineData("one", "one")]
    [InlineData("", "")]
    public void A_cell_that_begins_with_a_sign_gets_an_apostrophe(string text, string cell) => Assert.Equal(cell, CsvText.Of(text));

    private static IEnumerable<string> TextKeysOf(IEnumerable<(string Name, ScenarioSection Section)> sections)
        => sections.SelectMany(s => s.Section.Keys.Where(k => k is TextKey or DateTimeKey or QuantityKey || k.GetType().IsGenericType).Select(k => s.Name.Length == 0 ? k.Name : $"{s.Name}.{k.Name}"));

    private static string With(string text, string key, string payload)
    {
        int dot = key.LastIndexOf('.');
        string section = dot < 0 ? "" : key[..dot];
        bool many = ScenarioKeys.All.Any(s => s.Name == section && s.Section.Form == TableForm.Many) && !text.Contains($"[[{section}]]", StringComparison.Ordinal);
        return many ? $"{text}\n[[{section}]]\n{key[(dot + 1)..]} = {Payload.Toml(payload)}\n" : ScenarioText.With(text, key, Payload.Toml(payload));
    }

    private static IEnumerable<string> Texts(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.String => [element.GetString()!],
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Texts),
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Texts(p.Value)),
        _ => [],
    };

    private string Write(string scenario)
    {
        string path = Path.Combine(_folder, "s.toml");
        File.WriteAllText(path, scenario.Replace("{payload}", Payload.Toml(Payload.Joined), StringComparison.Ordinal).Replace("{payload2}", Payload.Toml("2" + Payload.Joined), StringComparison.Ordinal).Replace("{payload3}", Payload.Toml("3" + Payload.Joined), StringComparison.Ordinal), new UTF8Encoding(false));
        File.Copy(Path.Combine(Path.GetDirectoryName(Shell.ColdSnap)!, "cold-snap-weather.csv"), Path.Combine(_folder, "w.csv"), overwrite: true);
        return path;
    }
}
