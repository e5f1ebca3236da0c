using ColdSim.Files.Weather;
using ColdSim.Planning;

namespace ColdSim.App.Commands;

/// <summary>A time given as <c>--at</c>, by the scenario's clock where it has no offset.</summary>
internal static class AtOption
{
    /// <summary>Reads it.</summary>
    /// <param name="text">As it was given.</param>
    /// <param name="scenario">Whose clock holds.</param>
    /// <param name="command">The command whose help tells more.</param>
    /// <exception cref="CommandFault">Not a time.</exception>
    public static DateTimeOffset Read(string text, Scenario scenario, string command)
        => InstantText.TryRead(text, scenario.Start.Offset, out DateTimeOffset time) == InstantText.Outcome.Read
            ? time.ToOffset(scenario.Start.Offset)
            : throw CommandFault.Input($"coldsim: --at: '{text}' is not a time; {InstantText.Accepted}", $"See 'coldsim {command} --help'.");
}
