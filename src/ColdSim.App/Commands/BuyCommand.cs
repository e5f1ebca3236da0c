using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Purchases;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim buy</c>: cylinders that can be bought, side by side for one rig and one weather record.</summary>
internal static class BuyCommand
{
    private const int MostNights = 1200;

    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file, with a furnace and a coach; its weather is the record unless --weather "
            + "is given.");
        Option<string?> price = CommonOptions.Quantity("--price", "PRICE",
            "What gas costs, such as \"$4.35/gal\", \"2.60 per kg\" or \"24 per exchange\". [the scenario's]");
        Option<string?> weather = CommonOptions.Weather();
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "buy",
            "Compare cylinders that can be bought: coldest night fed, days a filling, refills, money and changes over a weather record, "
                + "and weight to lift.",
            "coldsim buy trip.toml",
            "coldsim buy trip.toml --weather winter.csv --price \"$4.35/gal\"",
            "coldsim buy trip.toml --units si --json > buy.json") { file, weather, price, units, json, length.Full, length.Brief };
        command.SetWork(host, Question, units, json, length);
        return command;

        CommandWork<PurchaseReport> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = ScenarioFile.Read(path, host, parsed.GetValue(weather));
            Check(scenario, path);
            bool us = parsed.UnitStyle(units).IsUs, metric = StandardSize.Find(scenario.Rig.Cylinders[0].Name)?.IsMetric ?? !us;
            IReadOnlyList<SetUp> setUps = SetUp.Usual(metric);
            Price? gas = parsed.GetValue(price) is { } text
                ? PriceText.Read(text, each: true)
                    ?? throw CommandFault.Input($"coldsim: --price: '{Quote.Of(text)}' is not a price, such as \"$4.35/gal\", \"2.60 per "
                        + "kg\" or \"24 per exchange\"", "See 'coldsim buy --help'.")
                : null;
            return new()
            {
                Answer = (done, cancel) => PurchaseReport.Of(scenario, setUps, us ? LimitAxis.Fahrenheit : LimitAxis.Celsius, gas, done,
                    cancel: cancel),
                Progress = done => $", {done} of {setUps.Count} done",
                Ledgers = new("this comparison", r => r.Ledgers.SelectMany(l => LedgerLine.IfOpen(l)).Take(1)),
                OnScreen = PurchaseAnswer.Of,
                Text = (r, to) => to.Write(PurchaseText.Sections(r, to.Units, Cautions.Short)),
                BesideJson = r => ScenarioFile.Assumed(r.Scenario),
                Json = JsonReport.Write,
            };
        }
    }

    private static void Check(Scenario scenario, string path)
    {
        string? fault = scenario.Rig.Furnace is null || scenario.Rig.Coach is null
            ? "has no [furnace] or no [coach]; what is compared is what a furnace burns"
            : scenario.Trip is not null ? "has stops or refills; 'buy' stays in one place and fills up when it has to. Take them out of a "
                + "copy of the file"
            : (scenario.Weather.Last - scenario.Start).TotalDays is > MostNights and var days
                ? $"has weather of {days:0} days; give a record of at most {MostNights}, such as one winter"
            : null;
        if (fault is not null)
            throw CommandFault.Input($"coldsim: '{Quote.OfPath(path)}' {fault}");
    }
}
