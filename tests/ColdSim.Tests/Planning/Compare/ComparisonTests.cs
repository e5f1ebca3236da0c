using System.Runtime.CompilerServices;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using Xunit;

namespace ColdSim.Tests.Planning.Compare;

/// <summary>Real runs, of the scenario that shows what a comparison is good for.</summary>
public class ComparisonTests
{
    private static readonly Lazy<ReadResult> Read = new(() => ScenarioReader.Read(Path.Combine(Root(), "scenarios", "which-cylinder.toml")));

    private static readonly Lazy<Comparison> Compared = new(() => Comparison.Of(Base, Read.Value.Options));

    private static Scenario Base => Read.Value.Scenario!;

    private static string Root([CallerFilePath] string here = "")
        => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", ".."));

    private static ComparedRow Row(string name) => Compared.Value.Rows.Single(r => r.Option.Name == name);

    [Fact]
    public void The_demo_reads_without_a_fault_or_a_warning()
    {
        Assert.Empty(Read.Value.Problems);
        Assert.Empty(Read.Value.Warnings);
        Assert.Equal(5, Read.Value.Options.Count);
    }

    [Fact]
    public void The_demo_says_that_a_larger_cylinder_holds_and_the_largest_does_no_better()
    {
        Assert.True(Row("40 lb cylinder").Holds && Row("100 lb cylinder").Holds);
        Assert.Equal(Criterion.None, Ranking.Between(Row("40 lb cylinder"), Row("100 lb cylinder")));
        Assert.True(Row("100 lb cylinder").Option.IsOnGround);
        Assert.False(Row("40 lb cylinder").Option.IsOnGround);
    }

    [Fact]
    public void The_demo_says_that_a_lower_set_point_alone_helps_little_and_saving_heat_helps_more()
    {
        ComparedRow asItIs = Row(ComparedOption.AsItIs), cooler = Row("50 °F at night"), skirt = Row("skirt and window film");
        Assert.All([asItIs, cooler, skirt], r => Assert.Equal(Verdict.GasShort, r.Summary.Verdict));
        Assert.True(skirt.Rank < cooler.Rank && cooler.Rank < asItIs.Rank);
        Assert.True(Row("30 lb, skirt, film and 55 °F at night").Holds);
    }

    [Fact]
    public void Ledger_of_every_option_closes() => Assert.All(Compared.Value.Rows, r => Assert.True(r.Ledger.Closes, r.Option.Name));

    [Fact]
    public void The_base_is_the_plain_run_to_the_last_bit()
    {
        RunReport plain = NightRun.Of(Base);
        ComparedRow row = Row(ComparedOption.AsItIs);
        Assert.Equal(0, row.Order);
        Assert.Equal(plain.Summary, row.Summary);
        Assert.Equal(plain.Ledger, row.Ledger);
        Assert.Equal(plain.End, row.End);
    }

    [Fact]
    public void One_worker_gives_the_same_rows_as_several()
        => Assert.Equal(Compared.Value.Rows, Comparison.Of(Base, Read.Value.Options, workers: 1).Rows);

    [Fact]
    public void Progress_is_reported_after_every_run()
    {
        CountingProgress progress = new();
        Comparison.Of(Base with { Nights = 1 }, [new("again", Base with { Nights = 1 })], progress);
        Assert.Equal([1, 2], progress.Counts.Order());
    }

    [Fact]
    public void Cancelled_comparison_stops()
    {
        using CancellationTokenSource source = new();
        Cancelling cancelling = new(source);
        Assert.ThrowsAny<OperationCanceledException>(() => Comparison.Of(Base, Read.Value.Options, cancelling, workers: 2, cancel: source.Token));
        Assert.ThrowsAny<OperationCanceledException>(() => Comparison.Of(Base, Read.Value.Options, cancel: source.Token));
    }

    [Fact]
    public void An_option_that_cannot_start_is_named()
    {
        Scenario full = Base with { Rig = Base.Rig with { Cylinders = [Base.Rig.Cylinders[0] with { Contents_kg = 20 }] } };
        CannotRunException fault = Assert.Throws<CannotRunException>(() => Comparison.Of(Base with { Nights = 1 }, [new("too full", full)]));
        Assert.StartsWith("Option 'too full': The cylinder cannot start", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Size_sweep_keeps_the_base_s_part_of_the_legal_filling_and_its_temperature()
    {
        CylinderSpecification cylinder = Base.Rig.Cylinders[0] with { Contents_kg = Base.Rig.Cylinders[0].LegalFill_kg * 0.6, InitialTemperature_K = 260 };
        Scenario scenario = Base with { Rig = Base.Rig with { Cylinders = [cylinder] } };
        IReadOnlyList<ComparedOption> swept = SizeSweep.Of(scenario, [Full("10 lb"), Full("20 lb"), Full("100 lb"), Full("10 gal")]);
        Assert.Equal(["10 lb", "100 lb", "10 gal"], swept.Select(o => o.Name));
        Assert.Equal([false, true, false], swept.Select(o => o.IsOnGround));
        Assert.All(swept, o =>
        {
            CylinderSpecification c = o.Scenario.Rig.Cylinders[0];
            Assert.Equal(Full(o.Name) with { Contents_kg = c.Contents_kg, InitialTemperature_K = 260, Surroundings = cylinder.Surroundings, IsEnclosed = !o.IsOnGround }, c);
            Assert.Equal(0.6, c.Contents_kg / c.LegalFill_kg, 12);
            Assert.Same(scenario.Weather, o.Scenario.Weather);
        });
    }

    private static CylinderSpecification Full(string name) => StandardSize.Find(name)!.Full();

    private sealed class CountingProgress : IProgress<int>
    {
        public System.Collections.Concurrent.ConcurrentBag<int> Counts { get; } = [];

        public void Report(int value) => Counts.Add(value);
    }

    private sealed class Cancelling(CancellationTokenSource source) : IProgress<int>
    {
        public void Report(int value) => source.Cancel();
    }
}
