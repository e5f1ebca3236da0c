using BenchmarkDotNet.Attributes;
using ColdSim.App.Text;
using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Html;
using ColdSim.App.Text.Reports;
using ColdSim.Planning.Nights;

namespace ColdSim.Benchmarks.Text;

/// <summary>A report's page of fourteen nights that were run already: sections, curves, thinning and markup.</summary>
[MemoryDiagnoser]
public class ReportBenchmarks
{
    private static readonly RunReport Run = NightRun.Of(FourteenNights.Scenario);

    [Benchmark]
    public int Page_of_fourteen_nights()
    {
        ReportOrigin origin = new("fourteen.toml", "0", new DateTimeOffset(2027, 1, 11, 12, 0, 0, TimeSpan.Zero));
        return HtmlPage.Of(WholeReport.Of(new ReportContents(Run, null), UnitStyle.Us, origin, Paper.Any), origin.Version).Length;
    }
}
