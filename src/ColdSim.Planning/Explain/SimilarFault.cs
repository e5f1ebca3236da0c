namespace ColdSim.Planning.Explain;

/// <summary>One of the faults with the same effect inside the coach, and the signs that distinguish it.</summary>
/// <param name="Trouble">What it is.</param>
/// <param name="Signs">What can be seen, felt or weighed.</param>
/// <param name="Source">Where the sign is from: a heading of docs/sources.md, or that there is none.</param>
internal sealed record SimilarFault(string Trouble, string Signs, string Source);

/// <summary>The faults that all leave a low flame or none, and are distinguished outside, at the cylinder.</summary>
internal static class SimilarFaults
{
    private const string NoSource = "common practice, no source";
    private const string TwoFaults = "that cold and ice are two faults: Motorhome owner manual, winter use of LP gas; the signs: common practice, no source";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SimilarFault> All { get; } =
    [
        new("cylinder too cold", "the scale still shows propane, the wall is frosted or far colder than the air up to the liquid's level, and "
            + "everything comes back by itself after some hours with little drawn", TwoFaults),
        new("empty cylinder", "the scale shows the tare stamped on the collar, no cold band is left on the wall, and waiting does not help", NoSource),
        new("tripped excess-flow device", "it comes at once after a valve was opened fast, also in mild air with a heavy cylinder, and a small "
            + "flame still gets some gas; with every appliance off and the valve shut for some minutes, then opened slowly, it is gone", NoSource),
        new("ice in the regulator", "the cylinder is heavy and its wall not much colder than the air, yet the flame comes and goes; it goes away "
            + "where the regulator warms and comes back in frost; leave it to a technician, and never thaw it with a flame",
            TwoFaults),
    ];
}
