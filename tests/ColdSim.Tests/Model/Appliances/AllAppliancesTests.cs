using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Appliances;

public class AllAppliancesTests
{
    private static readonly WeatherSeries Cold = Changing(h => -9 + 12 * Math.Sin(h / 5), 120);

    [Theory]
    [InlineData(-25, 8, false)]
    [InlineData(-9, 12, false)]
    [InlineData(-9, 12, true)]
    [InlineData(3, 6, false)]
    public void Ledger_closes_with_every_kind_of_appliance(double mean_C, double swing_K, bool hookup)
    {
        Rig rig = Everything.Rig with { Site = new SiteSpecification { Hookup = hookup, Elevation_m = 1200 } };
        if (hookup) rig = rig with { Appliances = [.. rig.Appliances.Select(a => a.Node is null ? a : a with { ElectricInput_W = 700 })] };
        Trace run = Run(rig, Changing(h => mean_C + swing_K * Math.Sin(h / 5), 60), 48);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        Assert.Equal(run.Given_J, run.Steps.Sum(s => s.Gas_W.Sum() * (s.To.Time_s - s.From.Time_s)), run.Given_J * 1e-9);
    }

    [Fact]
    public void Ledger_closes_without_a_coach()
    {
        Rig rig = Everything.Rig with { Coach = null, Furnace = null, Thermostat = null };
        rig = rig with { Appliances = [.. rig.Appliances.Take(5)] };
        Assert.True(Run(rig, Cold, 48).Result.Ledger.Closes);
    }

    [Fact]
    public void Ledger_closes_on_a_chilled_cylinder_that_cannot_feed_all_appliances()
    {
        Trace run = Run(Everything.Rig with { Cylinders = [Bottle("20 lb", 0.35)] }, Steady(-22), 40);
        Assert.True(run.Has(EventKind.ShortBegins));
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        Assert.Contains(run.Steps, s => s.Undersupplied && s.IsShort.Any(x => x));
        Assert.All(run.Steps.Where(s => !s.Undersupplied), s => Assert.DoesNotContain(true, s.IsShort));
    }

    // A flame that was lost is tried again after a minute, so one may go on and out once a minute where gas is short, and no oftener.
    [Theory]
    [InlineData("40 lb")]
    [InlineData("100 lb")]
    public void No_switch_chatters(string size)
    {
        Trace run = Run(Everything.Rig with { Cylinders = [Bottle(size, 0.7)] }, Cold, 96);
        foreach (IGrouping<(EventKind Kind, int Place), SimulationEvent> same in run.Events
            .Where(e => e.Kind is EventKind.WaterFreezes or EventKind.WaterSolid or EventKind.WaterThawed).GroupBy(e => (e.Kind, e.Cylinder)))
        {
            double[] times_s = [.. same.Select(e => e.Time_s)];
            Assert.All(times_s.Zip(times_s.Skip(1)), p => Assert.True(p.Second - p.First > 60, $"{same.Key} at {p.First} and {p.Second}"));
        }

        for (int i = 1; i < Everything.Rig.GasPlaces; i++)
        {
            double last_s = double.NegativeInfinity;
            for (int k = 1; k < run.Steps.Count; k++)
            {
                if (run.Steps[k].Gas_W[i] <= 0 || run.Steps[k - 1].Gas_W[i] > 0) continue;
                Assert.True(run.Steps[k].From.Time_s - last_s > 59, $"place {i} at {run.Steps[k].From.Time_s} s, after {last_s} s");
                last_s = run.Steps[k].From.Time_s;
            }
        }
    }

    [Fact]
    public void The_step_loop_allocates_nothing_with_appliances_and_nodes()
    {
        Silent observer = new();
        for (int i = 0; i < 2; i++) new Simulation(Everything.Rig, Cold, Settings(60)).Run(observer);
        long least = long.MaxValue;
        for (int i = 0; i < 5 && least > 0; i++)
        {
            Simulation simulation = new(Everything.Rig, Cold, Settings(60));
            long before = GC.GetAllocatedBytesForCurrentThread();
            simulation.Run(observer);
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        Assert.True(observer.Froze > 1 && observer.Steps > 2000, $"{observer.Froze} froze, {observer.Steps} steps");
        Assert.Equal(0, least);
    }

    private sealed class Silent : IRunObserver
    {
        public int Steps { get; private set; }

        public int Froze { get; private set; }

        public void Stepped(StepRecord record) => Steps++;

        public void Happened(in SimulationEvent happened, in RunSnapshot snapshot)
        {
            if (happened.Kind == EventKind.WaterFreezes) Froze++;
        }
    }
}
