using System.Text.RegularExpressions;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Reports;
using ColdSim.Planning.Trips;
using ColdSim.Tests.Docs;
using ColdSim.Tests.Files;
using UnitsNet.Units;
using Xunit;

namespace ColdSim.Tests.Planning.Figures;

public partial class FigureListTests
{
    // Parts of one have no unit; these keys say what they are a part of.
    private static readonly string[] Parts = ["share", "most_ice", "liquid_of_volume", "of_legal_fill", "fill", "uncorrected_echo_of_height", "level_of_height", "uncorrected_echo_of_volume", "uncorrected_echo_of_full"];

    private static readonly string[] Absolute = ["pressure_kpa"];

    public static TheoryData<string> Documents => [.. JsonPage.Documents.Keys];

    public static TheoryData<string> Demos => [.. Directory.EnumerateFiles(DocPage.Scenarios, "*.toml").Select(f => Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Documents))]
    public void Keys_of_a_list_are_unique_and_in_snake_case(string document)
    {
        string[] paths = [.. JsonPage.Keys(JsonPage.Documents[document]).Select(k => k.Path)];
        Assert.Equal(paths.Distinct(), paths);
        Assert.All(JsonPage.Keys(JsonPage.Documents[document]), k => Assert.Matches(SnakeCase(), k.Figure.Key));
    }

    // The ends of a span leave the unit to the span's own key.
    [Theory]
    [MemberData(nameof(Documents))]
    public void A_quantity_has_a_key_that_ends_in_its_unit(string document)
        => Assert.All(
            JsonPage.Keys(JsonPage.Documents[document]).Where(k => k.Figure.Unit is not null && !Parts.Contains(k.Figure.Key)),
            k => Assert.Contains(k.Path.Replace("[]", "", StringComparison.Ordinal).Split('.').TakeLast(2), key => key.EndsWith(Suffix(k.Figure.Unit!, k.Figure.Key), StringComparison.Ordinal)));

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_figure_has_an_explanation_of_one_line(string document)
        => Assert.All(JsonPage.Keys(JsonPage.Documents[document]), k => Assert.Matches(@"^[^\s|][^\n|]*[^\s|.]$", k.Figure.Explanation));

    [Theory]
    [MemberData(nameof(Demos))]
    public void Figures_that_cannot_be_absent_are_present_in_every_demo(string demo)
    {
        ReadResult read = ScenarioReader.Read(Path.Combine(DocPage.Scenarios, demo));
        Scenario scenario = read.Scenario!;
        TripReport trip = demo == "fortnight.toml" ? FortnightStoryTests.Story.Value : TripRun.Of(scenario);
        AssertThere(new FigureRow<RunDocument>(RunDocument.Figures, new(trip.Run, null)), "run");
        AssertThere(new FigureRow<TripReport>(TripFigures.All, trip), "trip");
        if (demo == "mixed-gas.toml")
            AssertThere(new FigureRow<Comparison>(CompareFigures.All, Comparison.Of(scenario, read.Options.Take(1).ToArray())), "compare");
    }

    private static void AssertThere(IFigureRow row, string path)
    {
        foreach ((IFigure figure, object? value) in row.Values)
        {
            string here = $"{path}.{figure.Key}";
            Assert.True(figure.CanBeAbsent || value is not null and not double.NaN, $"{here} is absent");
            foreach (IFigureRow part in value as IEnumerable<IFigureRow> ?? (value is IFigureRow one ? [one] : []))
                AssertThere(part, here);
        }
    }

    private static string Suffix(Enum unit, string key) => unit switch
    {
        MassUnit.Kilogram => "_kg",
        TemperatureUnit.DegreeCelsius => "_c",
        TemperatureDeltaUnit.Kelvin => "_k",
        DurationUnit.Second => "_s",
        DurationUnit.Hour => "_h",
        PowerUnit.Watt => "_w",
        EnergyUnit.WattHour => "_wh",
        EnergyUnit.Kilojoule => "_kj",
        EnergyUnit.Megajoule => "_mj",
        DurationUnit.Microsecond => "_us",
        LengthUnit.Meter => "_m",
        ElectricPotentialUnit.Volt => "_v",
        VolumeUnit.Liter => "_l",
        PressureUnit.Kilopascal => Absolute.Contains(key) ? "_kpa" : "_kpa_gauge",
        RatioUnit.DecimalFraction => "_frac",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "no suffix"),
    };

    [GeneratedRegex("^[a-z][a-z0-9]*(_[a-z0-9]+)*$")]
    private static partial Regex SnakeCase();
}
