using ColdSim.App.Text;
using Xunit;

namespace ColdSim.Tests.App.Text;

public class PlainTerminalTests
{
    [Theory]
    [InlineData("TERM=linux LANG=en_US.UTF-8", true)]
    [InlineData("TERM=vt100", true)]
    [InlineData("TERM=xterm-256color LC_ALL=C", true)]
    [InlineData("TERM=xterm LANG=POSIX", true)]
    [InlineData("TERM=xterm LANG=de_DE.ISO-8859-1", true)]
    [InlineData("TERM=xterm LC_ALL=C LANG=en_US.UTF-8", true)]
    [InlineData("TERM=xterm LC_CTYPE=C.UTF-8 LANG=C", false)]
    [InlineData("TERM=screen LANG=en_US.utf8", false)]
    [InlineData("TERM=xterm", false)]
    [InlineData("", false)]
    public void The_kind_of_terminal_or_the_first_locale_that_is_set_decides(string environment, bool plain)
    {
        Dictionary<string, string> variables = environment.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(v => v.Split('=')).ToDictionary(v => v[0], v => v[1]);
        Assert.Equal(plain, PlainTerminal.Is(name => variables.GetValueOrDefault(name)));
    }
}
