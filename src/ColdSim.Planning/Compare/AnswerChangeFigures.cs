using UnitsNet.Units;
using Answer = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Compare.AnswerDigest>;
using Change = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Compare.NightChange>;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Compare.AnswerChange>;
using Input = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Compare.InputDifference>;
using Night = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Compare.NightDigest>;

namespace ColdSim.Planning.Compare;

/// <summary>What is reported of two answers beside each other.</summary>
internal static class AnswerChangeFigures
{
    private static IReadOnlyList<Answer> Answers { get; } =
    [
        Answer.Text("title", a => a.Title, "the scenario's title"),
        Answer.Time("start", a => a.Start, "when its run started"),
        Answer.Text("verdict", a => a.Verdict, "how it went"),
        Answer.Quantity("left_at_start_kg", a => a.LeftAtStart, MassUnit.Kilogram, "what was in the cylinders at the start"),
        Answer.Time("read_at", a => a.ReadAt, "when the log's reading was made that it started from; null where it started as the scenario says", canBeAbsent: true),
    ];

    private static IReadOnlyList<Night> Nights { get; } =
    [
        Night.Text("verdict", n => n.Verdict, "how it went"),
        Night.Quantity("outside_low_c", n => n.OutsideLow, TemperatureUnit.DegreeCelsius, "the coldest outside"),
        Night.Quantity("inside_low_c", n => n.InsideLow, TemperatureUnit.DegreeCelsius, "the coldest inside", canBeAbsent: true),
        Night.Quantity("left_at_dawn_kg", n => n.LeftAtDawn, MassUnit.Kilogram, "what was left at dawn", canBeAbsent: true),
        Night.Time("first_short", n => n.FirstShort, "when gas was first too little", canBeAbsent: true),
    ];

    private static IReadOnlyList<Change> Changes { get; } =
    [
        Change.Day("evening", n => n.Evening, "the day on whose evening the night begins"),
        Change.Group("before", n => n.Before, Nights, "in the first answer; null where that does not have the night", canBeAbsent: true),
        Change.Group("after", n => n.After, Nights, "in the second", canBeAbsent: true),
    ];

    private static IReadOnlyList<Input> Inputs { get; } =
    [
        Input.Text("key", i => i.Key, "the key's whole name"),
        Input.Text("before", i => i.Before, "its value in the first file, as written; null where it is not given", canBeAbsent: true),
        Input.Text("after", i => i.After, "in the second", canBeAbsent: true),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Group("before", c => c.Before, Answers, "the first answer: of the first file, or the earlier one"),
        Document.Group("after", c => c.After, Answers, "the second"),
        Document.Rows("inputs", c => c.Inputs, Inputs, "what the second file gives otherwise than the first; empty beside an earlier answer"),
        Document.Rows("nights", c => c.Nights, Changes, "the nights of either, by their evenings"),
    ];
}
