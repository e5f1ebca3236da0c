using System.CommandLine;
using ColdSim.App.Commands;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class CommandTreeTests
{
    [Fact]
    public void A_command_line_makes_only_the_command_that_it_names()
    {
        using Host host = new(Stream.Null, TextWriter.Null);
        string[] names = [.. CommandTree.Of(host).Subcommands.Select(c => c.Name)];
        Assert.Equal(23, names.Length);
        foreach (string name in names)
            Assert.Equal(name, Assert.Single(CommandTree.Of(host, name).Subcommands).Name);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("--help")]
    [InlineData("ru")]
    [InlineData("Run")]
    public void Where_the_first_word_names_no_command_all_are_made(string? word)
    {
        using Host host = new(Stream.Null, TextWriter.Null);
        RootCommand all = CommandTree.Of(host), made = CommandTree.Of(host, word);
        Assert.Equal(all.Subcommands.Select(c => c.Name), made.Subcommands.Select(c => c.Name));
    }
}
