using ColdSim.App.Text;
using ColdSim.Files.Signs;
using ColdSim.Planning.Diagnosis;

namespace ColdSim.App.Screens.Signs;

/// <summary>A line of the form: something that is seen, heard, read or remembered.</summary>
/// <param name="Name">The name under which it is read, which is that of the command's option.</param>
/// <param name="Label">What the line is called.</param>
/// <param name="Question">The question that it answers.</param>
/// <param name="States">The states to choose from.</param>
internal sealed record SignField(string Name, string Label, string Question, IReadOnlyList<string> States)
{
    /// <summary>What is shown while it is empty.</summary>
    public string Empty { get; init; } = "not looked";

    /// <summary>What may be typed, as an example; empty where a state is chosen.</summary>
    public string Sample { get; init; } = "";

    /// <summary>Whether characters are text and not a choice.</summary>
    public bool TakesText => Sample.Length > 0;

    /// <summary>The name of the first line of all.</summary>
    public const string Smell = "smell";

    /// <summary>The name of the second.</summary>
    public const string CarbonMonoxide = "co";

    /// <summary>The name of the air's temperature, which the open run offers.</summary>
    public const string Air = "air";

    /// <summary>The name of the recent use, which the open run offers too.</summary>
    public const string Use = "use";

    /// <summary>How many lines at the top are about safety.</summary>
    public const int SafetyLines = 2;

    private const string No = "no", Yes = "yes";

    /// <summary>All lines, safety first, then in the order in which they are looked at.</summary>
    public static IReadOnlyList<SignField> All { get; } =
    [
        new(Smell, "smell of gas", DiagnosisWords.SmellQuestion, [Yes]) { Empty = No },
        new(CarbonMonoxide, "CO, headache", DiagnosisWords.CarbonMonoxideQuestion, [Yes]) { Empty = No },
        new(Air, "outside air", DiagnosisWords.AirQuestion, []) { Empty = "not known", Sample = "-8 °F" },
        new(Use, "last 8 hours", DiagnosisWords.UseQuestion, [.. RecentUse.All.Select(u => u.Word)]) { Empty = "usual" },
        Of(Sign.Stove, "stove"),
        Of(Sign.Furnace, "furnace"),
        Of(Sign.Fan, "its fan"),
        Of(Sign.Volts, "its volts") with { States = [], Sample = "11.2 V" },
        Of(Reading.Left, "gas left", "1/3", "full", "empty"),
        Of(Reading.Wall, "wall low down", "-30 °F", [.. SignReader.WallWords]),
        Of(Reading.FrostLine, "frost's edge", "5 in", "none"),
        Of(Reading.Pressure, "pressure", "12 psi"),
        Of(Sign.Regulator, "regulator"),
        Of(Sign.Swapped, "just done") with { States = Deeds() },
        Of(Sign.Vents, "vents outside"),
        Of(Sign.Return, "return, ducts"),
        Of(Sign.Load, "it fails"),
        Of(Sign.ByDay, "by day"),
        Of(Sign.Reopened, "slow opening"),
        Of(Sign.Reset, "off and on"),
        Of(Sign.Gas, "gas bought") with { Empty = "as the file says" },
    ];

    private static SignField Of(Sign sign, string label) => Of(new NextTest(sign, null, 0, 0), label, SignStates.Of(sign));

    private static SignField Of(Reading reading, string label, string sample, params string[] states)
        => Of(new NextTest(null, reading, 0, 0), label, states) with { Sample = sample };

    private static SignField Of(NextTest test, string label, IReadOnlyList<string> states)
        => new(DiagnosisWords.OptionOf(test), label, DiagnosisWords.QuestionOf(test), states);

    // One of what may have been done, then two, then all of it, and none of it.
    private static IReadOnlyList<string> Deeds()
    {
        string[] deeds = [.. SignReader.DeedWords.SkipLast(1)];
        IEnumerable<string[]> sets = Enumerable.Range(1, (1 << deeds.Length) - 1)
            .Select(bits => deeds.Where((_, i) => (bits & (1 << i)) != 0).ToArray());
        return [SignReader.DeedWords[^1], .. sets.OrderBy(s => s.Length).Select(s => string.Join(',', s))];
    }
}
