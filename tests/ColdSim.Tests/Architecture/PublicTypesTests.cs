using System.Reflection;
using Xunit;

namespace ColdSim.Tests.Architecture;

/// <summary>Public are the ways in that another program has, and what they take and give; all else is for our own projects.</summary>
public class PublicTypesTests
{
    // What somebody calls who has a question, from Physics up to Files.
    private static readonly string[] WaysIn =
    [
        "PropaneSaturation", "StandardSize", "GasGrade", "Scenario", "NightRun", "Comparison", "SizeSweep",
        "LimitChart", "Explanation", "RunAdvice", "ChanceRun", "TripRun", "FreezeOutlook", "QuickScenario",
        "GradedCoach", "NightShape", "DayShape", "CapacityTable", "GaugeReport", "WeightReading", "LineReading",
        "EchoReading", "FloatReading", "CombinedEstimate", "DriftTable", "UseLog", "LogPrediction", "CoachFit",
        "Forecast", "ForecastStart", "ForecastVerification", "WeatherDigest", "ColdNights", "ColdSpells",
        "HeatLossBreakdown", "ScenarioReader", "ScenarioDraft", "ScenarioSchema", "JsonReport", "SeriesCsv",
        "CsvReport", "LogReader", "WeatherFile", "WeatherCsvWriter", "StarterScenario", "StarterFiles", "FitText",
    ];

    // Types of parameters of our own tests, whose methods the runner wants public.
    private static readonly string[] ForTests = ["Dimension", "FurnaceChange", "Terrain", "HarmTerm"];

    private static readonly Type[] Public =
    [
        .. Code.Projects.Where(p => p != "ColdSim.App").SelectMany(p => Assembly.Load(p).GetExportedTypes()),
    ];

    [Fact]
    public void Every_way_in_is_public() => Assert.Empty(WaysIn.Except(Public.Select(NameOf)));

    [Fact]
    public void No_other_type_is_public_than_a_way_in_needs()
    {
        HashSet<Type> needed = [];
        foreach (Type way in Public.Where(t => WaysIn.Contains(NameOf(t)) || ForTests.Contains(NameOf(t))))
            Need(way, needed);
        string[] more = [.. Public.Where(t => !needed.Contains(t)).Select(t => t.FullName!).Order(StringComparer.Ordinal)];
        Assert.True(more.Length == 0, $"No way in needs these; make them internal, or list the way in:\n{string.Join('\n', more)}");
    }

    private static string NameOf(Type type) => type.Name.Split('`')[0];

    // A type with all that its public members show.
    private static void Need(Type? type, HashSet<Type> needed)
    {
        if (type is null)
            return;
        if (type.HasElementType)
        {
            Need(type.GetElementType(), needed);
            return;
        }

        if (type.IsGenericType)
        {
            foreach (Type argument in type.GetGenericArguments())
                Need(argument, needed);
            type = type.GetGenericTypeDefinition();
        }

        if (!Public.Contains(type) || !needed.Add(type))
            return;
        Need(type.DeclaringType, needed);
        Need(type.BaseType, needed);
        foreach (Type shown in type.GetInterfaces().Concat(type.GetNestedTypes()).Concat(type.GetMembers().SelectMany(Shown)))
            Need(shown, needed);
    }

    private static IEnumerable<Type> Shown(MemberInfo member) => member switch
    {
        FieldInfo field => [field.FieldType],
        MethodInfo method => method.GetParameters().Select(p => p.ParameterType).Append(method.ReturnType),
        ConstructorInfo constructor => constructor.GetParameters().Select(p => p.ParameterType),
        _ => [],
    };
}
