using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Reports;
using ColdSim.Files;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim report</c>: a run as one page to send, to print or to tape inside a door.</summary>
internal static class ReportCommand
{
    public static Command Of(Host host)
    {
        ReportOptions o = new();
        ExampleCommand command = new(
            "report",
            "Write a run as one page with pictures, to send or to print.",
            "coldsim report trip.toml",
            "coldsim report trip.toml --out trip.html --with limits,chance",
            "coldsim report trip.toml --with gauges,diagnose --page a4",
            "coldsim report trip.toml --only limits --page a5 --out door.html",
            "coldsim report trip.toml --svg pictures",
            "coldsim report trip.toml --format md --out trip.md --units si")
        { o.File, o.Out, o.Force, o.With, o.Only, o.Page, o.Format, o.Svg, o.Members, o.Units, o.Log.Weather, o.Log.NoLog, o.Log.SkipDamaged };
        command.SetAction((parsed, cancel) =>
        {
            UnitStyle units = parsed.UnitStyle(o.Units);
            string path = parsed.GetRequiredValue(o.File);
            IReadOnlyList<string> extras = o.ExtrasOf(parsed);
            bool card = parsed.GetValue(o.Only) == "limits";
            if (card && extras.Count > 0)
                throw CommandFault.Input("coldsim: --with and --only do not go together", "See 'coldsim report --help'.");
            if (parsed.GetValue(o.Members) is not null && !extras.Contains(ReportOptions.Chance))
                throw CommandFault.Input("coldsim: --members goes with --with chance", "See 'coldsim report --help'.");
            StartedScenario started = StartedScenario.Read(path, parsed, o.Log, units, host);
            if ((card || extras.Contains(ReportOptions.Limits)) && started.Scenario.Rig.Furnace is null)
                throw CommandFault.Input($"coldsim: '{Quote.OfPath(path)}' has no [furnace]; limits are the nights through which one is fed");
            if (extras.Contains(ReportOptions.Diagnose) && started.Scenario.Rig.Furnace is null)
                throw CommandFault.Input($"coldsim: '{Quote.OfPath(path)}' has no [furnace] that could fail to light; leave out --with diagnose");
            if (extras.Contains(ReportOptions.Buy) && PurchaseText.Refusal(started.Scenario) is { } refusal)
                throw CommandFault.Input($"coldsim: '{Quote.OfPath(path)}' {refusal}");
            ReportFiles files = ReportFiles.Of(parsed, o, path, host);
            ReportOrigin origin = new(Path.GetFileName(path), ReportFiles.Version, host.Clock.GetLocalNow());
            Paper paper = o.PaperOf(parsed);
            ReportWork work = new(started, units)
            {
                WithLimits = extras.Contains(ReportOptions.Limits),
                Members = extras.Contains(ReportOptions.Chance) ? o.MembersOf(parsed) : null,
                WithPurchases = extras.Contains(ReportOptions.Buy),
                WithGauges = extras.Contains(ReportOptions.Gauges),
                WithNoHeat = extras.Contains(ReportOptions.Diagnose),
            };
            return card ? Run(Card(work, files, chart => DoorCard.Of(chart, units, origin, paper)))
                : Run(Whole(work, files, contents => WholeReport.Of(contents, units, origin, paper), units));

            Task<int> Run<T>(CommandWork<T> asked)
                where T : class
                => CommandRunner.RunAsync(asked, host, units, json: false, AnswerLength.Brief, cancel);
        });
        return command;
    }

    private static CommandWork<ReportContents> Whole(
        ReportWork work, ReportFiles files, Func<ReportContents, ReportDocument> document, UnitStyle units) => new()
        {
            Answer = work.Find,
            Progress = done => done == 0 ? "" : $", {done} runs done",
            Ledgers = new("this report", c => LedgerLine.IfOpen(c.Run.Ledger)
                .Concat(c.Options?.Rows.SelectMany(r => LedgerLine.IfOpen(r.Ledger, r.Option.Name)) ?? [])
                .Concat(c.Limits is { } limits ? OpenCells(limits) : [])
                .Concat(c.Purchases is { } purchases ? purchases.Ledgers.SelectMany(l => LedgerLine.IfOpen(l)).Take(1) : [])
                .Concat(c.Chance is { } chance ? LedgerLine.IfOpen(chance.Ledger, "the worst member") : [])),
            Text = (c, to) => to.Write(files.ToStandardOutput ? [] : [NightsAnswer.Of(c.Run, null, units).Brief]),
            FilesOf = c => files.For<ReportContents>(document(c)),
        };

    private static CommandWork<LimitChart> Card(ReportWork work, ReportFiles files, Func<LimitChart, ReportDocument> document) => new()
    {
        Answer = work.Limits,
        Progress = done => $", {done} limits found",
        Ledgers = new("these limits", OpenCells) { With = "the scenario" },
        Text = (_, _) => { },
        FilesOf = c => files.For<LimitChart>(document(c)),
    };

    private static IEnumerable<string> OpenCells(LimitChart chart)
        => chart.Cells.SelectMany(c => c.Ledger is { } ledger ? LedgerLine.IfOpen(ledger, LimitWords.Percent(c.Fill_frac)) : []).Take(1);
}
