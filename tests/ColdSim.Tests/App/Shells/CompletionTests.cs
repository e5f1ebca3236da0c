using System.CommandLine;
using ColdSim.App.Commands;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Gas;
using ColdSim.Tests.App.Commands;
using Xunit;

namespace ColdSim.Tests.App.Shells;

/// <summary>What the program offers a shell, whichever that is.</summary>
public class CompletionTests
{
    private static readonly string Compared = Shell.Demo("which-cylinder.toml");

    [Theory]
    [InlineData("ca", "capacity")]
    [InlineData("com", "compare completions")]
    [InlineData("log ", "add show")]
    [InlineData("help com", "compare completions")]
    [InlineData("run --ful", "--full")]
    [InlineData("run --units ", "us si")]
    [InlineData("run --units s", "si")]
    [InlineData("run --units=s", "--units=si")]
    [InlineData("run --units = s", "si")]
    [InlineData("tonight --grade l", "leaky")]
    [InlineData("tonight --joined ", "together changeover by-hand")]
    [InlineData("new --kind ch", "changeover")]
    [InlineData("forecast --from n", "nws")]
    [InlineData("completions ", "bash zsh fish pwsh")]
    [InlineData("run --members a", "auto")]
    [InlineData("nonsense --x ", "")]
    [InlineData("run trip.toml --units=", "--units=us --units=si")]
    public void What_may_come_next_is_offered(string typed, string offered)
        => Assert.Equal(offered.Split(' ', StringSplitOptions.RemoveEmptyEntries), Words(typed.Split(' ')));

    [Fact]
    public void Sizes_and_grades_of_gas_are_offered()
    {
        Assert.Equal(StandardSize.All.Select(s => s.Name), Words("tonight", "--cylinder", ""));
        Assert.Equal(StandardSize.All.Select(s => s.Name), Words("capacity", ""));
        Assert.Equal(GasGrade.Names, Words("tonight", "--gas", ""));
    }

    [Fact]
    public void A_list_with_commas_is_completed_behind_the_last_one()
        => Assert.Equal(["20 lb,30 lb", "20 lb,30 gal"], Words("compare", "trip.toml", "--sizes", "20 lb,30").Order(StringComparer.Ordinal).Reverse());

    [Fact]
    public void A_word_in_an_open_quotation_is_completed() => Assert.Equal(["33 kg"], Words("capacity", "\"33"));

    [Fact]
    public void The_names_of_a_scenarios_options_are_offered()
    {
        string[] names = Words("compare", Compared, "--option", "");
        Assert.Equal(5, names.Length);
        Assert.Equal(names.Where(n => n.StartsWith('1')), Words("compare", Compared, "--option", "1"));
    }

    [Fact]
    public void The_names_of_a_scenarios_cylinders_are_offered()
        => Assert.Equal(2, Words("log", "add", Shell.Demo("changeover.toml"), "--cylinder", "").Length);

    [Theory]
    [InlineData(true, "run ")]
    [InlineData(true, "run tri")]
    [InlineData(true, "run trip.toml --csv ")]
    [InlineData(true, "tonight --rig ")]
    [InlineData(true, "compare a.toml ")]
    [InlineData(true, "weather --columns ")]
    [InlineData(false, "run a.toml ")]
    [InlineData(false, "run --units ")]
    [InlineData(false, "tonight --low ")]
    [InlineData(false, "help ru")]
    public void A_file_is_offered_where_one_may_stand(bool file, string typed)
        => Assert.Equal(file, Lines(typed.Split(' ')).Contains(":files"));

    [Fact]
    public void Every_command_and_every_option_is_offered_with_its_meaning()
    {
        using Host host = new(Stream.Null, TextWriter.Null);
        foreach ((string[] path, Command command) in Below([], CommandTree.Of(host)))
        {
            string[] lines = Lines([.. path, "-"]);
            Assert.Equal(
                command.Options.Where(o => !o.Hidden).Select(o => o.Name).Order(StringComparer.Ordinal),
                lines.Select(l => l.Split('\t')[0]));
            Assert.All(lines, l => Assert.Matches("\t.", l));
        }
    }

    [Fact]
    public void Every_option_whose_help_lists_its_words_offers_them()
    {
        using Host host = new(Stream.Null, TextWriter.Null);
        foreach ((string[] path, Command command) in Below([], CommandTree.Of(host)))
        {
            foreach (Option option in command.Options.Where(o => !o.Hidden && o.HelpName is { } name && name.Contains('|', StringComparison.Ordinal)))
            {
                string[] words = [.. option.HelpName!.Split('|').Where(w => w.Any(char.IsLower) || w.Length == 1 && !char.IsLetter(w[0]))];
                Assert.Equal(words, Words([.. path, option.Name, ""]));
            }
        }
    }

    [Fact]
    public void An_option_that_is_given_is_not_offered_again()
    {
        Assert.DoesNotContain("--units", Words("run", "--units", "si", "--"));
        Assert.Contains("--low", Words("capacity", "--low", "0F", "--"));
    }

    [Fact]
    public void A_scenario_that_cannot_be_read_offers_nothing_and_says_nothing()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("__complete", "compare", "no-such.toml", "--option", ""));
        Assert.Empty(shell.Out + shell.Error);
    }

    [Fact]
    public void A_shell_that_is_not_known_is_named_with_those_that_are()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("completions", "csh"));
        Assert.Contains("SHELL is bash, zsh, fish, pwsh, not 'csh'", shell.Error, StringComparison.Ordinal);
    }

    private static IEnumerable<(string[] Path, Command Command)> Below(string[] path, Command command) => command.Subcommands.Where(c => !c.Hidden)
        .SelectMany(c => Below([.. path, c.Name], c)).Prepend((path, command));

    private static string[] Words(params string[] typed) => [.. Lines(typed).Where(l => l != ":files").Select(l => l.Split('\t')[0])];

    private static string[] Lines(params string[] typed)
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run(["__complete", .. typed]));
        Assert.Empty(shell.Error);
        return shell.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
