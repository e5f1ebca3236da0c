using System.CommandLine;
using ColdSim.Files.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Ensemble;

namespace ColdSim.App.Commands;

/// <summary>The options of <c>run</c> that ask for a chance instead of one run.</summary>
internal sealed class ChanceOptions
{
    private const int UsualSeed = 1;

    // A record of years has holes; the years with one in these days are left out, the others need not suffer for them.
    private static readonly TimeSpan AnyGap = TimeSpan.FromDays(31);

    public Option<double?> Members { get; } = CommonOptions.Number(
        "--members", "N", "Run it N times with what may be off, and tell the chance of holding.", 1, ChanceRun.MostMembers, whole: true);

    public Option<double?> Seed { get; } = CommonOptions.Number(
        "--seed", "S", "Start of the random numbers of --members; the same gives the same.", 0, int.MaxValue, whole: true);

    public Option<string?> Years { get; } = new("--years")
    {
        HelpName = "RECORD",
        Description = "Run the same days of every year in this weather record instead, and tell the chance of holding.",
    };

    public bool Asked(ParseResult parsed)
    {
        bool members = parsed.GetValue(Members) is not null, years = parsed.GetValue(Years) is not null;
        if (members && years)
            throw CommandFault.Input("coldsim: --members and --years do not go together: the members are errors or years", "See 'coldsim run --help'.");
        if (parsed.GetValue(Seed) is not null && !members)
            throw CommandFault.Input("coldsim: --seed goes with --members", "See 'coldsim run --help'.");
        return members || years;
    }

    public ChanceWish Read(ParseResult parsed, Scenario scenario, Host host) => new(
        (int)(parsed.GetValue(Members) ?? 0),
        (int)(parsed.GetValue(Seed) ?? UsualSeed),
        parsed.GetValue(Years) is { } path ? Record(path, scenario, host) : null);

    private static Func<RecordDays, CancellationToken, RecordYears> Record(string path, Scenario scenario, Host host)
    {
        if (!File.Exists(path))
            throw CommandFault.Input($"coldsim: --years: there is no file '{path}'");
        if (scenario.Trip is not null)
            throw CommandFault.Input("coldsim: --years: a record is of one place; the file has stops or refills");
        return (days, cancel) => ReadYears(path, days, scenario.Start.Offset, host, cancel);
    }

    private static RecordYears ReadYears(string path, RecordDays days, TimeSpan offset, Host host, CancellationToken cancel)
    {
        WeatherRequest request = new() { Bridge = AnyGap };
        YearsRoute route = new(days, cancel);
        WeatherResult result = host.Parts.ReadWeather(path, request, route);

        // Times without an offset are taken on the scenario's clock; what came before the first of them is good for nothing.
        if (result.Problems.Count > 0)
        {
            route = new YearsRoute(days, cancel);
            result = host.Parts.ReadWeather(path, request with { Offset = offset }, route);
        }

        return result.Problems.Count == 0
            ? route.Finish()
            : throw CommandFault.Input([.. result.Problems.Select(p => p.ToString()), "coldsim: nothing was run"]);
    }
}
