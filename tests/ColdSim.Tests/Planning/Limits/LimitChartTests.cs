using System.Runtime.CompilerServices;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Nights;
using Xunit;

namespace ColdSim.Tests.Planning.Limits;

/// <summary>Real limits, of the rig that asks for a blanket or a second cylinder.</summary>
public class LimitChartTests
{
    private static readonly double[] Fills = [0.25, 0.5, 1];

    private static readonly Lazy<Scenario> Base = new(() => ScenarioReader.Read(Path.Combine(Root(), "scenarios", "blanket-or-second.toml")).Scenario!);

    private static readonly Lazy<LimitChart> Told = new(() => LimitChart.Of(Base.Value, LimitAxis.Fahrenheit, Fills));

    private static string Root([CallerFilePath] string here = "")
        => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", ".."));

    private static Verdict Run(SetUp setUp, double fill_frac, int step)
        => NightRun.Of(Told.Value.Night.Over(setUp.Filled(fill_frac), Told.Value.Axis.Low_K(step))).Summary.Verdict;

    [Fact]
    public void Every_limit_holds_when_it_is_run_alone_and_one_step_colder_does_not()
    {
        foreach (LimitColumn column in Told.Value.Columns.Take(3))
        {
            foreach (LimitCell cell in column.Cells.Where(c => c.Kind == LimitKind.Found && !c.Emptied))
            {
                Assert.Equal(Verdict.Holds, Run(column.SetUp, cell.Fill_frac, cell.Step));
                Assert.NotEqual(Verdict.Holds, Run(column.SetUp, cell.Fill_frac, cell.Step + 1));
            }
        }
    }

    [Fact]
    public void More_gas_never_moves_a_limit_to_the_warm_side_by_more_than_the_tolerance()
        => Assert.All(Told.Value.Columns, c => Assert.All(c.Cells.Zip(c.Cells.Skip(1)), p => Assert.True(p.Second.Step >= p.First.Step - 1)));

    [Fact]
    public void A_powered_blanket_and_a_second_cylinder_move_the_limit_of_a_full_rig_to_the_cold_side()
    {
        int[] full = [.. Told.Value.Columns.Select(c => c.Cells[^1].Step)];
        Assert.True(full[1] > full[0] && full[2] > full[0]);
    }

    [Fact]
    public void One_worker_finds_the_same_as_several()
        => Assert.Equal(Told.Value.Cells, LimitChart.Of(Base.Value, LimitAxis.Fahrenheit, Fills, workers: 1).Cells);

    [Fact]
    public void The_books_of_every_limit_close() => Assert.All(Told.Value.Cells, c => Assert.True(c.Ledger is null or { Closes: true }));

    [Fact]
    public void It_stops_when_it_is_cancelled()
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => LimitChart.Of(Base.Value, LimitAxis.Celsius, cancel: source.Token));
    }

    [Fact]
    public void A_rig_without_a_furnace_has_no_limits() => Assert.Throws<ArgumentException>(
        () => LimitChart.Of(Base.Value with { Rig = Base.Value.Rig with { Furnace = null } }, LimitAxis.Celsius));

    [Theory]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(37)]
    [InlineData(117)]
    public void An_edge_is_found_from_any_guess(int edge)
    {
        for (int guess = -1; guess <= 117; guess += 13)
            Assert.Equal(edge, new ColdEdge(step => step <= edge, 117).Find(guess));
    }

    [Fact]
    public void Where_holding_comes_and_goes_the_warm_side_is_kept_to()
        => Assert.Equal(39, new ColdEdge(step => step is < 40 or 41, 117).Find(41));
}
