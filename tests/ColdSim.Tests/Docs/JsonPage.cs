using ColdSim.App.Commands;
using ColdSim.Files.Weather;
using ColdSim.Planning.Capacity;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Diagnosis;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Measurements;
using ColdSim.Planning.Purchases;
using ColdSim.Planning.Reports;
using ColdSim.Planning.Trips;

namespace ColdSim.Tests.Docs;

/// <summary>The tables of docs/json.md, each made from the figures of its document.</summary>
internal static class JsonPage
{
    /// <summary>Every document that is made from figures, by the name of its part of the page.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<IFigure>> Documents { get; } = new Dictionary<string, IReadOnlyList<IFigure>>
    {
        ["run"] = RunDocument.Figures,
        ["compare"] = CompareFigures.All,
        ["compare files"] = AnswerChangeFigures.All,
        ["trip"] = TripFigures.All,
        ["gauge"] = GaugeFigures.All,
        ["gauge expect"] = ExpectedFigures.All,
        ["weather"] = WeatherFigures.All,
        ["weather against"] = VerificationFigures.All,
        ["limits"] = LimitFigures.All,
        ["capacity"] = CapacityFigures.All,
        ["freeze"] = FreezeFigures.All,
        ["explain"] = ExplainFigures.All,
        ["buy"] = PurchaseFigures.All,
        ["diagnose"] = DiagnosisFigures.All,
        ["chance"] = ChanceReportFigures.All,
        ["log"] = LogDocument.Figures,
        ["fit"] = FitFigures.All,
        ["propane"] = PropaneCommand.Figures,
    };

    /// <summary>A table with a row for each key.</summary>
    public static string Table(IReadOnlyList<IFigure> figures)
        => "| key | type | meaning |\n| --- | --- | --- |\n" + string.Concat(Keys(figures).Select(k => $"| `{k.Path}` | {Type(k.Figure)} | {k.Figure.Explanation} |\n"));

    /// <summary>Every key of a document with its path; <c>[]</c> follows that of a list.</summary>
    public static IEnumerable<(string Path, IFigure Figure)> Keys(IReadOnlyList<IFigure> figures, string before = "")
    {
        foreach (IFigure figure in figures.Where(f => f.InDocuments))
        {
            string path = before + figure.Key + (figure.Kind is FigureKind.Texts or FigureKind.Numbers or FigureKind.Rows ? "[]" : "");
            yield return (path, figure);
            foreach ((string, IFigure) part in Keys(figure.Parts, path + "."))
                yield return part;
        }
    }

    private static string Type(IFigure figure) => figure.Kind switch
    {
        FigureKind.Text or FigureKind.Date => "text",
        FigureKind.Flag => "true or false",
        FigureKind.Number => "number",
        FigureKind.Time => "time",
        FigureKind.Texts => "list of texts",
        FigureKind.Numbers => "list of numbers",
        FigureKind.Group => "object",
        FigureKind.Rows => "list of objects",
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure.Kind, "no type"),
    } + (figure.CanBeAbsent ? " or null" : "");
}
