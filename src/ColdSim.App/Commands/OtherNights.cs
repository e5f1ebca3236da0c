using ColdSim.Planning;

namespace ColdSim.App.Commands;

/// <summary>Another number of nights than the scenario's.</summary>
internal static class OtherNights
{
    /// <summary>The scenario with so many nights; refused where stops or refills say how long it is.</summary>
    public static Scenario In(Scenario scenario, int nights) => scenario.Trip is null
        ? scenario with { Nights = nights }
        : throw CommandFault.Input("coldsim: --nights: the stops and refills of the file say how long it runs; change them there");
}
