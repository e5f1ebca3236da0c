using ColdSim.App;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>Command lines as people type them: understood, or answered with the line to type.</summary>
public class WrittenAsSaidTests
{
    [Theory]
    [InlineData("help")]
    [InlineData("help", "run")]
    [InlineData("help", "log", "add")]
    public void Help_may_be_asked_for_by_its_word(params string[] words)
    {
        Shell asked = new(), usual = new();
        Assert.Equal(ExitCode.Done, asked.Run(words));
        usual.Run([.. words.Skip(1), "--help"]);
        Assert.Equal(usual.Out, asked.Out);
        Assert.Contains("Usage:", asked.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_for_what_is_no_command_names_the_nearest()
    {
        Shell shell = new();
        Assert.Equal(ExitCode.BadInput, shell.Run("help", "rum"));
        Assert.Contains("unknown command 'rum'; did you mean 'run'?", shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--furnace: '30k' has no unit; write \"30 kBTU/h\"", "--low", "-8F", "--cylinder", "20 lb", "--left", "1/3", "--furnace", "30k")]
    [InlineData("--low: '-8' has no unit; write \"-8 °F\" or \"-8 °C\"", "--low", "-8", "--cylinder", "20 lb", "--left", "half", "--furnace", "30 kBTU/h")]
    [InlineData("--left has 1 value for 2 cylinders; give one for each, such as --left 1/3,full", "--low", "-8F", "--cylinder", "2x20 lb", "--left", "half", "--furnace", "30 kBTU/h")]
    [InlineData("unknown argument 'BTU/h'; a number and its unit go in one pair of quotes: \"25000 BTU/h\"", "--low", "-8F", "--cylinder", "20 lb", "--left", "half", "--furnace", "25000", "BTU/h")]
    public void What_tonight_cannot_read_is_answered_with_what_to_type(string expected, params string[] options)
    {
        Shell shell = new();
        Assert.Equal(ExitCode.BadInput, shell.Run(["tonight", .. options]));
        Assert.Contains(expected, shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_a_cylinder_may_be_said()
    {
        Shell word = new(), figure = new();
        string[] rest = ["--low", "20F", "--cylinder", "20 lb", "--furnace", "25 kBTU/h", "--json"];
        Assert.Equal(ExitCode.Done, word.Run(["tonight", "--left", "half", .. rest]));
        figure.Run(["tonight", "--left", "1/2", .. rest]);
        Assert.Equal(figure.Out, word.Out);
    }

    [Fact]
    public void A_clock_time_alone_is_the_first_one_of_the_run()
    {
        Shell clock = new(), whole = new();
        Assert.Equal(ExitCode.Done, clock.Run("freeze", Shell.ColdSnap, "--at", "04:00"));
        string start = File.ReadLines(Shell.ColdSnap).First(l => l.StartsWith("start", StringComparison.Ordinal)).Split('=')[1].Trim();
        DateTimeOffset next = DateTimeOffset.Parse(start, System.Globalization.CultureInfo.InvariantCulture).AddDays(1);
        whole.Run("freeze", Shell.ColdSnap, "--at", FormattableString.Invariant($"{next:yyyy-MM-dd}T04:00"));
        Assert.Equal(whole.Out, clock.Out);
    }

    [Fact]
    public void What_is_no_time_is_answered_with_both_forms()
    {
        Shell shell = new();
        Assert.Equal(ExitCode.BadInput, shell.Run("freeze", Shell.ColdSnap, "--at", "four"));
        Assert.Contains("--at: 'four' is not a time; accepted: such as 2025-01-14T17:00-07:00 or 2025-01-15T00:00Z, or a clock time such as 04:00", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_decimal_comma_is_explained_where_a_plain_number_is_wanted()
    {
        Shell shell = new();
        Assert.Equal(ExitCode.BadInput, shell.Run("run", Shell.ColdSnap, "--nights", "2,5"));
        Assert.Contains("not '2,5': a decimal comma; write 2.5", shell.Error, StringComparison.Ordinal);
    }
}
