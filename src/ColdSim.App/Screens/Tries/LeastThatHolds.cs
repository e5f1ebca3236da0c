using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning.Search;

namespace ColdSim.App.Screens.Tries;

/// <summary>The least value of an adjustment with which all nights hold.</summary>
/// <param name="Id">The adjustment.</param>
/// <param name="Value">The value; null where none holds.</param>
/// <param name="Words">What was found.</param>
internal sealed record FoundLeast(string Id, double? Value, string Words);

/// <summary>Finds the least value that holds, every one tried by a whole run.</summary>
internal static class LeastThatHolds
{
    /// <summary>The job.</summary>
    public static PageJob Job(Workbench bench, Adjustment adjustment, TrySettings settings, int night, UnitStyle units) => new(
        $"Finding the least of '{adjustment.Name}' with which all nights hold",
        (finished, cancel) => Find(bench, adjustment, settings, night, units, () => finished.Report(1), cancel))
    {
        KeepsPageVisible = true,
    };

    /// <summary>Finds it, from the hardest value to the easiest.</summary>
    public static FoundLeast Find(
        Workbench bench, Adjustment adjustment, TrySettings settings, int night, UnitStyle units, Action finished, CancellationToken cancel)
    {
        TryPlace place = bench.Place(settings, night, units);
        ValueGrid grid = adjustment.Grid(place);
        (double hard, double easy) = adjustment.IsEasierHigh ? (grid.Low, grid.High) : (grid.High, grid.Low);
        LeastFound? found = SmallestThatHolds.Find(hard, easy, grid.Step, shown =>
        {
            bool holds = bench.Run(settings.With(adjustment.Id, grid.Within(shown)), night, units, cancel).Holds;
            finished();
            return holds;
        });
        string Show(double shown) => adjustment.Show(grid.Within(shown), bench.Place(settings.With(adjustment.Id, grid.Within(shown)), night, units));
        if (found is null)
            return new(adjustment.Id, null, $"even {Show(easy)} does not hold");
        double beyond = found.Value - Math.Sign(easy - hard) * grid.Step;
        return new(adjustment.Id, grid.Within(found.Value), found.AtStart ? $"even {Show(found.Value)} holds" : $"{Show(found.Value)} is the least that holds; {Show(beyond)} does not");
    }
}
