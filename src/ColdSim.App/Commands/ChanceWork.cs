using System.CommandLine;
using System.Globalization;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Results;
using ColdSim.Files.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary>The chance that <c>run</c> reports instead of one run, where its options ask for many.</summary>
internal sealed class ChanceWork
{
    private const int UsualSeed = 1;

    // A record of years has holes; the years with one in these days are left out, the others need not suffer for them.
    private static readonly TimeSpan AnyGap = TimeSpan.FromDays(31);

    // Members of --members auto.
    private const double Auto = double.PositiveInfinity;

    public Option<double?> Members { get; } = new Option<double?>("--members")
    {
        HelpName = "N|auto",
        Description = "Run it N times with errors in forecast, rig and readings, and give the chance of holding; auto: until it is clear if that is above or below the wanted one.",
        CustomParser = r =>
        {
            string word = r.Tokens[0].Value;
            if (word == "auto")
                return Auto;
            if (double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out double n) && n is >= 1 and <= ChanceRun.MostMembers && Math.Floor(n) == n)
                return n;
            r.AddError(FormattableString.Invariant($"--members takes a whole number from 1 to {ChanceRun.MostMembers} or auto, not '{Quote.Of(word)}'"));
            return null;
        },
    }.Offering("auto");

    public Option<double?> Seed { get; } = CommonOptions.Number(
        "--seed", "S", "Start of the random numbers of --members; the same gives the same.", 0, int.MaxValue, whole: true);

    public Option<string?> Years { get; } = new("--years")
    {
        HelpName = "RECORD",
        Description = "Run the same days of every year in this weather record instead, and give the chance of holding.",
    };

    /// <summary>Whether they are given.</summary>
    /// <exception cref="CommandFault">They do not go together.</exception>
    public bool IsAsked(ParseResult parsed)
    {
        bool members = parsed.GetValue(Members) is not null, years = parsed.GetValue(Years) is not null;
        if (members && years)
            throw CommandFault.Input("coldsim: --members and --years do not go together: the members are errors or years", "See 'coldsim run --help'.");
        if (parsed.GetValue(Seed) is not null && !members)
            throw CommandFault.Input("coldsim: --seed goes with --members", "See 'coldsim run --help'.");
        return members || years;
    }

    /// <summary>The work of a scenario's chance.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="scenario">The scenario, perhaps moved to the log's latest reading.</param>
    /// <param name="written">Its options, moved likewise.</param>
    /// <param name="failIfShort">Whether a chance below the one that the scenario asks for is a failure.</param>
    /// <param name="host">Where the command runs.</param>
    public CommandWork<ChanceReport> Work(ParseResult parsed, Scenario scenario, IReadOnlyList<ComparedOption> written, bool failIfShort, Host host)
    {
        IReadOnlyList<ComparedOption> options = OptionsBeside(scenario, written);
        bool auto = parsed.GetValue(Members) is Auto;
        int members = auto ? 0 : (int)(parsed.GetValue(Members) ?? 0), seed = (int)(parsed.GetValue(Seed) ?? UsualSeed);
        string? record = parsed.GetValue(Years);
        if (record is not null)
            CheckRecord(record, scenario, host);
        return new()
        {
            Answer = (done, cancel) => OrRefused(() => auto ? ChanceRun.UntilSettled(scenario, options, seed, finished: done, cancel: cancel)
                : record is null ? ChanceRun.Of(scenario, options, members, seed, done, cancel: cancel)
                : ChanceRun.OfYears(scenario, options, (days, cancelled) => ReadYears(record, days, scenario.Start.Offset, host, cancelled), done, cancel: cancel)),
            Progress = done => record is null && !auto ? FormattableString.Invariant($", {done} of {members} done") : $", {done} done",
            Ledgers = new("this chance", c => LedgerLine.IfOpen(c.Ledger)) { Whose = "the ledger of a member", With = "the scenario, its weather file and the seed" },
            OnScreen = ChanceAnswer.Of,
            Text = (c, to) => to.Write(ChanceText.BelowAnswer(c, to.Units, Cautions.Short)),
            BesideJson = c => ScenarioFile.Assumed(c.Scenario),
            Json = JsonReport.Write,
            Fails = c => failIfShort && !c.MeetsWantedChance,

            // An interrupt stops the members, not the answer.
            OutlivesInterrupt = true,
            Interrupted = c => c.IsPartial ? $"interrupted after {c.Done} of {c.Asked}; the figures are of these" : null,
        };
    }

    // Other nights than the scenario's may have been asked for.
    private static IReadOnlyList<ComparedOption> OptionsBeside(Scenario scenario, IReadOnlyList<ComparedOption> options)
        => [.. options.Select(o => scenario.Trip is null && scenario.Nights is { } n && o.Scenario.Trip is null
            ? o with { Scenario = o.Scenario with { Nights = n, Step_s = scenario.Step_s } } : o)];

    private static ChanceReport OrRefused(Func<ChanceReport> run)
    {
        try
        {
            return run();
        }
        catch (CannotRunException e)
        {
            throw CommandFault.Input($"coldsim: {e.Message}");
        }
    }

    private static void CheckRecord(string path, Scenario scenario, Host host)
    {
        if (!host.Files.Exists(path))
            throw CommandFault.Input($"coldsim: --years: there is no file '{Quote.OfPath(path)}'");
        if (scenario.Trip is not null)
            throw CommandFault.Input("coldsim: --years: a record is of one place; the file has stops or refills");
    }

    internal static RecordYears ReadYears(string path, RecordDays days, TimeSpan offset, Host host, CancellationToken cancel)
    {
        WeatherRequest request = new() { Bridge = AnyGap };
        YearRows rows = new(days, cancel);
        WeatherResult result = WeatherReading.Rows(path, request, rows, host);

        // Times without an offset are read by the scenario's clock; what was gathered before the first of them is dropped.
        if (result.Problems.Count > 0)
        {
            rows = new YearRows(days, cancel);
            result = WeatherReading.Rows(path, request with { Offset = offset }, rows, host);
        }

        return result.Problems.Count == 0
            ? rows.Finish() with { IsTypicalYear = result.IsTypicalYear }
            : throw CommandFault.Input([.. result.Problems.Select(p => p.ToString()), "coldsim: nothing was run"]);
    }
}
