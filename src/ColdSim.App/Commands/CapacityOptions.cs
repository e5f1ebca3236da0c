using System.CommandLine;

namespace ColdSim.App.Commands;

/// <summary>The options of <c>capacity</c>.</summary>
internal sealed class CapacityOptions
{
    public Argument<string> Cylinder { get; } = Size();

    public Option<string[]> Low { get; } = Several(
        "--low", "T", "Air temperatures, such as 20F,0F or \"-8 °F\"; of a night its low. [30 to -30 °F by tens; 5 to -25 °C by fives]");

    public Option<string[]> Fill { get; } = Several(
        "--fill", "PART", "What is in it: parts of a full one (1/3, \"40 %\", full) or masses (\"7 lb\"). [100, 80, 60, 40, 20, 10 %]");

    public Option<string?> Wind { get; } = CommonOptions.Quantity("--wind", "SPEED", "Wind at mast height, of which 30 % reaches the cylinder, such as \"5 mph\". [2 m/s]");

    public Option<string[]> Time { get; } = Several(
        "--for", "TIME", "How long it has to give that: 4h, \"90 min\", night (16:00 to 07:00) or without-end. [4h; with one --fill 1h,4h,8h,night,without-end]")
        .Offering("1h", "4h", "8h", "night", "without-end");

    private static Argument<string> Size()
    {
        Argument<string> size = new("CYLINDER") { Description = "A common size, such as \"20 lb\", \"11 kg\" or \"20 gal\"." };
        size.CompletionSources.Add(CommonOptions.Sizes);
        return size;
    }

    private static Option<string[]> Several(string name, string helpName, string description) => new(name) { HelpName = helpName, Description = description };
}
