using System.Runtime.CompilerServices;
using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Physics.Mixtures;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Planning.Limits;

/// <summary>Real limits, of the rig that asks for a blanket or a second cylinder.</summary>
public class LimitChartTests
{
    private static readonly double[] Fills = [0.1, 0.25, 0.5, 1];

    private static readonly Lazy<Scenario> Base = new(() => ScenarioReader.Read(Path.Combine(Root(), "scenarios", "blanket-or-second.toml")).Scenario!);

    private static readonly Lazy<LimitChart> Chart = new(() => LimitChart.Of(Base.Value, LimitAxis.Fahrenheit, Fills));

    private static readonly Gen<(Rig Rig, double Wind_m_s, double Fill_frac)> AnyRig = Gen.Select(
        Gen.Int[0, 2].Select(i => ((string[])["20 lb", "30 lb", "40 lb"])[i]), Gen.Double[12_000, 40_000], Gen.Double[60, 200], Gen.Double[0, 3000], Gen.Double[0, 1], Gen.Double[0, 8],
        Gen.Double[0.15, 0.9], (size, furnace_Btu_h, loss_W_K, height_m, shelter_frac, wind_m_s, fill_frac) => (Rigs.Heated(furnace_Btu_h, loss_W_K) with
        {
            Cylinders = [Rigs.Bottle(size) with { Surroundings = new() { WindExposure_frac = shelter_frac } }],
            Site = new() { Elevation_m = height_m },
        }, wind_m_s, fill_frac));

    private static string Root([CallerFilePath] string here = "")
        => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", ".."));

    private static Verdict Run(RigVariant setUp, double fill_frac, int step)
        => NightRun.Of(Chart.Value.Night.Over(setUp.DrawnDown(fill_frac), Chart.Value.Axis.Low_K(step))).Summary.Verdict;

    [Fact]
    public void Every_limit_holds_when_it_is_run_alone_and_one_step_colder_does_not()
    {
        Assert.Contains(Chart.Value.Cells, c => c.Emptied);
        foreach (LimitColumn column in Chart.Value.Columns)
        {
            foreach (LimitCell cell in column.Cells.Where(c => c.Kind == LimitKind.Found))
            {
                Assert.Equal(Verdict.Holds, Run(column.RigVariant, cell.Fill_frac, cell.Step));
                Assert.NotEqual(Verdict.Holds, Run(column.RigVariant, cell.Fill_frac, cell.Step + 1));
            }
        }
    }

    // Two cylinders of one size, one nearly full and one nearly empty, on a changeover: no fill that both have is this rig.
    [Fact]
    public void A_rig_with_cylinders_differently_full_is_run_as_it_is()
    {
        CylinderSpecification like = Base.Value.Rig.Cylinders[0];
        Rig rig = Base.Value.Rig with
        {
            Cylinders = [like with { Contents_kg = 0.95 * like.LegalFill_kg }, like with { Contents_kg = 0.05 * like.LegalFill_kg }],
            Arrangement = new AutomaticChangeover(),
        };
        LimitChart chart = LimitChart.Of(Base.Value with { Rig = rig }, LimitAxis.Fahrenheit, [0.5]);
        LimitCell now = chart.Columns[0].Now, equal = chart.Columns[0].Cells[0];
        Verdict At(Rig asItIs, int step) => NightRun.Of(chart.Night.Over(asItIs, chart.Axis.Low_K(step))).Summary.Verdict;
        Assert.Equal(0.5, now.Fill_frac, 1e-12);
        Assert.NotEqual(equal.Step, now.Step);
        Assert.Equal(Verdict.Holds, At(rig, now.Step));
        Assert.NotEqual(Verdict.Holds, At(rig, now.Step + 1));
    }

    // Drawn down by the whole engine at a steady rate in cold air, night after night without an end.
    [Fact]
    public void A_fill_of_a_blend_is_what_is_left_of_a_full_cylinder_and_not_filled_to_it()
    {
        Scenario scenario = ScenarioReader.Read(Path.Combine(Root(), "scenarios", "mixed-gas.toml")).Scenario!;
        RigVariant bare = RigVariant.Of(scenario.Rig)[0];
        CylinderSpecification full = bare.DrawnDown(1).Cylinders[0];
        Rig drawing = new() { Cylinders = [full], Gas = scenario.Rig.Gas, Site = scenario.Rig.Site, Appliances = [Rigs.Draw(4000)] };
        WeatherSeries cold = Rigs.Steady(-12, 400);
        Simulation simulation = new(drawing, cold, new SimulationSettings { Start = cold.First, Duration_s = 40 * 3600, Step_s = 60, Undersupplied_frac = 0.95 });
        simulation.Run(new Trace());
        CylinderState left = simulation.State().Cylinders[0];
        double fill_frac = left.Propane_kg / full.LegalFill_kg;
        Assert.InRange(fill_frac, 0.2, 0.8);
        CylinderSpecification drawn = bare.DrawnDown(fill_frac).Cylinders[0];
        Assert.Equal(left.Composition!.Value.Propane, drawn.InitialComposition!.Value.Propane, 0.02);

        LimitChart chart = LimitChart.Of(scenario, LimitAxis.Celsius, [fill_frac]);
        Verdict At(GasMasses? composition, double low_K) => NightRun.Of(chart.Night.Over(
            bare.Rig with { Cylinders = [full with { Contents_kg = left.Propane_kg, InitialComposition = composition }] }, low_K)).Summary.Verdict;
        double limit_K = chart.Columns[0].Cells[0].Low_K;
        Assert.Equal(Verdict.Holds, At(left.Composition, limit_K + 1));
        Assert.NotEqual(Verdict.Holds, At(left.Composition, limit_K - 1));
        Assert.Equal(Verdict.Holds, At(null, limit_K - 3));
    }

    [Fact]
    public void More_gas_never_moves_a_limit_to_the_warm_side_by_more_than_the_tolerance()
        => Assert.All(Chart.Value.Columns, c => Assert.All(c.Cells.Zip(c.Cells.Skip(1)), p => Assert.True(p.Second.Step >= p.First.Step - 1)));

    // Not of a blanketed one: it starts as cold as the air, and a fuller one has more to warm.
    [Fact]
    public void More_gas_never_moves_a_limit_to_the_warm_side_on_random_rigs_without_a_blanket()
        => AnyRig.Sample(rig =>
        {
            Scenario scenario = Base.Value with { Rig = rig.Rig, WeatherDefaults = Base.Value.WeatherDefaults with { Wind_m_s = rig.Wind_m_s } };
            StandardNight night = new(scenario);
            foreach (RigVariant setUp in RigVariant.Of(scenario.Rig).Where(s => s.Blanket is null))
            {
                LimitColumn column = new LimitSearch(night, LimitAxis.Celsius, setUp, default).Column([0.1, rig.Fill_frac, 1], () => { });
                string found = string.Join(", ", column.Cells.Select(c => $"{c.Fill_frac:0.000}: {c.Step}"));
                Assert.True(
                    column.Cells.Zip(column.Cells.Skip(1)).All(p => p.Second.Step >= p.First.Step - 1),
                    $"{setUp.Kind}, {rig.Rig.Furnace!.Input_W} W, {rig.Rig.Coach!.HeatLoss[0].Conductance_W_K} W/K: {found}");
            }
        }, iter: 6);

    // What once chattered at the last liquid: two cylinders open together, each under a blanket, nearly empty, at -45 °F.
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.04)]
    [InlineData(0.02)]
    public void A_night_that_boils_blanketed_cylinders_dry_together_ends_in_few_steps(double fill_frac)
    {
        RigVariant both = Chart.Value.Columns.Single(c => c.RigVariant.Kind == RigVariantKind.Both).RigVariant;
        Scenario night = Chart.Value.Night.Over(both.DrawnDown(fill_frac), 273.15 + (-45 - 32) / 1.8);
        Leg leg = night.Legs[0];
        Trace trace = Rigs.Run(night.Rig, night.Weather, (leg.To - leg.From).TotalHours, night.Step_s, start: leg.From);
        Assert.Equal(RunEnd.Complete, trace.Result.End);
        Assert.Equal(2, trace.Events.Where(e => e.Kind == EventKind.LiquidGone).Select(e => e.Cylinder).Distinct().Count());
        Assert.True(trace.Result.Ledger.Closes, trace.Result.Ledger.ToString());
        Assert.InRange(trace.Events.Count(e => e.Kind is EventKind.LiquidGone or EventKind.LiquidAgain), 2, 6);
        Assert.InRange(trace.Steps.Count, 200, 15_000);
    }

    [Fact]
    public void A_powered_blanket_and_a_second_cylinder_move_the_limit_of_a_full_rig_to_the_cold_side()
    {
        int[] full = [.. Chart.Value.Columns.Select(c => c.Cells[^1].Step)];
        Assert.True(full[1] > full[0] && full[2] > full[0]);
    }

    [Fact]
    public void One_worker_finds_the_same_as_several()
        => Assert.Equal(Chart.Value.Cells, LimitChart.Of(Base.Value, LimitAxis.Fahrenheit, Fills, workers: 1).Cells);

    [Fact]
    public void Ledger_of_every_limit_closes() => Assert.All(Chart.Value.Cells, c => Assert.True(c.Ledger is null or { Closes: true }));

    [Fact]
    public void Cancelled_chart_stops()
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
            Assert.Equal(edge, new ColdEdge(step => Trial(step <= edge), 117).Find(guess));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(1e9)]
    [InlineData(double.NaN)]
    public void An_edge_is_found_whatever_is_expected_of_it(double expected)
    {
        for (int edge = -1; edge <= 117; edge++)
            Assert.Equal(edge, new ColdEdge(step => new StepTrial(step <= edge, expected, expected, expected), 117).Find(70));
    }

    [Fact]
    public void No_step_is_tried_twice()
    {
        List<int> tried = [];
        new ColdEdge(step => { tried.Add(step); return Trial(step is < 40 or 41); }, 117).Find(41);
        Assert.Equal(tried.Distinct(), tried);
    }

    [Fact]
    public void Search_keeps_to_the_warm_side_where_holding_is_not_monotonic()
        => Assert.Equal(39, new ColdEdge(step => Trial(step is < 40 or 41), 117).Find(41));

    // Each night is run in full, with the scenario's own step, one after the other from the warmest of a stretch about the limit.
    [Fact]
    public void Every_limit_is_that_of_a_walk_from_night_to_night()
    {
        foreach (LimitColumn column in Chart.Value.Columns)
        {
            foreach (LimitCell cell in column.Cells)
            {
                int step = Math.Max(0, cell.Step - 8);
                while (step <= Chart.Value.Axis.Steps && Run(column.RigVariant, cell.Fill_frac, step) == Verdict.Holds) step++;
                Assert.Equal(cell.Step, step - 1);
            }
        }
    }

    [Fact]
    public void A_limit_takes_less_than_six_nights()
    {
        StandardNight night = new(Base.Value);
        foreach (RigVariant setUp in RigVariant.Of(Base.Value.Rig).Where(s => s.Blanket is null))
        {
            LimitSearch search = new(night, LimitAxis.Fahrenheit, setUp, default);
            search.Column(LimitChart.UsualFills, () => { });
            Assert.InRange(search.Nights, 3 * LimitChart.UsualFills.Count, 6 * (LimitChart.UsualFills.Count + 1) - 1);
        }
    }

    [Fact]
    public void A_limit_says_of_its_night_what_a_whole_run_of_it_says()
    {
        foreach (LimitColumn column in Chart.Value.Columns)
        {
            foreach (LimitCell cell in column.Cells.Where(c => c.Kind != LimitKind.NotAtWarmest))
            {
                RunReport whole = NightRun.Of(Chart.Value.Night.Over(column.RigVariant.DrawnDown(cell.Fill_frac), cell.Low_K));
                NightReport night = whole.Nights[0];
                Assert.Equal(
                    (night.GasUsed.Kilograms, night.BlanketEnergy.Joules, night.InsideLow!.Value.Kelvins, whole.Ledger),
                    (cell.Used_kg, cell.Blanket_J, cell.InsideLow_K, cell.Ledger!.Value));
            }
        }
    }

    private static StepTrial Trial(bool holds) => new(holds, double.NaN, double.NaN, 3);
}
