using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Purchases;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim buy</c>: cylinders that can be bought, side by side for one rig and one weather record.</summary>
internal static class BuyCommand
{
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
            if (PurchaseText.Refusal(scenario) is { } refusal)
                throw CommandFault.Input($"coldsim: '{Quote.OfPath(path)}' {refusal}");
            bool us = parsed.UnitStyle(units).IsUs;
            IReadOnlyList<SetUp> setUps = SetUp.For(scenario.Rig, metric: !us);
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
}
