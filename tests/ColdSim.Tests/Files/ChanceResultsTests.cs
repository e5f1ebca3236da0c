using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Ensemble;
using ColdSim.Tests.Planning.Ensemble;
using Xunit;

namespace ColdSim.Tests.Files;

public class ChanceResultsTests
{
    [Fact]
    public void The_document_has_the_keys_of_its_figures()
    {
        using MemoryStream stream = new();
        JsonReport.Write(
            HandChances.Report with { Scenario = HandChances.Report.Scenario with { StartedFrom = Reports.LogStart }, Years = [2020], YearsLeftOut = [new(2021, WhyLeftOut.Gap)], Decision = new(ChanceSide.Below, 0.36, 0.47, 10_000) }, stream);
        using JsonDocument document = JsonDocument.Parse(stream.ToArray());
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(document.RootElement, "", written);
        ResultsTests.AssertKeys("chance", written);
    }

    [Fact]
    public void The_table_of_errors_is_read_and_the_fit_is_used_without_it()
    {
        Scenario stated = Fixtures.Read(Fixtures.Least + "\n[chance]\ntemperature_error = \"5 °F\"\ntail = 6\nreading_error = \"2 lb\"\nwanted = 0.95\n").Scenario!;
        Assert.Equal(5 / 1.8, stated.Errors.Temperature.Value, 9);
        Assert.Equal(ErrorSize.FromScenario, stated.Errors.Tail.Source);
        Assert.Equal(0.95, stated.WantedChance_frac);
        Assert.Equal(new ErrorSizes().Wind, stated.Errors.Wind);
        Scenario fitted = Fixtures.Read(Fixtures.Least + "\n[fit]\nheat_loss_factor = 1.2\nheat_loss_error = 0.05\n").Scenario!;
        Assert.Equal(0.05, fitted.Errors.HeatLoss.Value, 9);
        Assert.Contains("[fit]", fitted.Errors.HeatLoss.Source, StringComparison.Ordinal);
    }
}
