using System.Diagnostics;
using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Nights;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace ColdSim.Benchmarks;

/// <summary>How the time of an answer grows with nights, cylinders and members: a table, and a plot of it.</summary>
internal static class Growth
{
    private static readonly TimeSpan Enough = TimeSpan.FromSeconds(1);
    private const int Fewest = 3;

    private static readonly int[] Nights = [1, 3, 14, 90, 365];
    private static readonly int[] Members = [100, 300, 1_000, 3_000, 10_000];

    /// <summary>Prints the table and writes the plot.</summary>
    /// <param name="plot">File of the plot.</param>
    public static int Run(string plot)
    {
        PlotModel model = new() { Title = "Processor time of an answer" };
        model.Axes.Add(new LogarithmicAxis { Position = AxisPosition.Bottom, Title = "nights, or members of three nights" });
        model.Axes.Add(new LogarithmicAxis { Position = AxisPosition.Left, Title = "milliseconds" });
        model.Legends.Add(new OxyPlot.Legends.Legend { LegendPosition = OxyPlot.Legends.LegendPosition.TopLeft });
        foreach ((string name, Func<int, Scenario> rig) in Rigs())
            Print(model, name, "nights", Nights, n => NightRun.Of(rig(n)));
        Scenario three = FourteenNights.Of(3);
        Print(model, "members of three nights", "members", Members, n => ChanceRun.Of(three, [], n, 1));
        File.WriteAllText(plot, new SvgExporter { Width = 720, Height = 480 }.ExportToString(model));
        return 0;
    }

    private static IEnumerable<(string Name, Func<int, Scenario> Rig)> Rigs()
    {
        yield return ("one cylinder", n => With(n, 1, new OneAtATime()));
        yield return ("two, changed by hand", n => With(n, 2, new OneAtATime()));
        yield return ("four, changed by hand", n => With(n, 4, new OneAtATime()));
        yield return ("two on a changeover", n => With(n, 2, new AutomaticChangeover()));
        yield return ("two open together", n => With(n, 2, new OpenTogether()));
        yield return ("four open together", n => With(n, 4, new OpenTogether()));
    }

    // Tanks that hold all year, so that a night at the end is like one at the start.
    private static Scenario With(int nights, int cylinders, CylinderArrangement arrangement)
    {
        Scenario scenario = FourteenNights.Of(nights);
        CylinderSpecification tank = scenario.Rig.Cylinders[0] with
        {
            Name = "tank",
            Orientation = Orientation.Horizontal,
            Volume_m3 = 4,
            OutsideDiameter_m = 1.2,
            WallThickness_m = 0.007,
            MetalMass_kg = 800,
            Tare_kg = 850,
            LegalFill_kg = 1_680,
            Contents_kg = 1_680,
        };
        Rig rig = scenario.Rig with
        {
            Cylinders = [.. Enumerable.Range(0, cylinders).Select(i => tank with { Label = $"tank {i + 1}", Contents_kg = tank.Contents_kg / cylinders })],
            Arrangement = arrangement,
        };
        return scenario with { Rig = rig };
    }

    private static void Print(PlotModel model, string name, string unit, int[] sizes, Action<int> answer)
    {
        Console.Write($"| {name} |");
        LineSeries line = new() { Title = name, MarkerType = MarkerType.Circle, MarkerSize = 3 };
        foreach (int size in sizes)
        {
            double milliseconds = Measure(() => answer(size));
            line.Points.Add(new DataPoint(size, milliseconds));
            Console.Write(FormattableString.Invariant($" {size} {unit}: {milliseconds:0.00} ms, {1000 * milliseconds / size:0} µs each |"));
        }

        model.Series.Add(line);
        Console.WriteLine();
    }

    // The least of several, of processor time: what others do on the machine only adds.
    private static double Measure(Action work)
    {
        work();
        using Process own = Process.GetCurrentProcess();
        double least_ms = double.PositiveInfinity;
        Stopwatch all = Stopwatch.StartNew();
        for (int i = 0; i < Fewest || all.Elapsed < Enough; i++)
        {
            own.Refresh();
            TimeSpan before = own.TotalProcessorTime;
            work();
            own.Refresh();
            least_ms = Math.Min(least_ms, (own.TotalProcessorTime - before).TotalMilliseconds);
            if (all.Elapsed > 20 * Enough) break;
        }

        return least_ms;
    }
}
