using ColdSim.App.Text.Answers;
using Xunit;

namespace ColdSim.Tests.App.Text.Answers;

public class AnswerLayoutTests
{
    private static readonly string Long = string.Join(' ', Enumerable.Repeat("word", 60));

    [Fact]
    public void The_verdict_is_first_and_the_only_line_that_is_stressed()
    {
        IReadOnlyList<AnswerLine> lines = AnswerLayout.Fit(Of(rows: 3), AnswerLayout.Rows);
        Assert.Equal(new AnswerLine("HOLDS.", Stressed: true), lines[0]);
        Assert.Single(lines, l => l.Stressed);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(14)]
    [InlineData(400)]
    public void An_answer_never_takes_more_rows_or_columns_than_there_are(int nights)
    {
        for (int rows = 6; rows <= AnswerLayout.Rows; rows++)
        {
            IReadOnlyList<AnswerLine> lines = AnswerLayout.Fit(Of(nights) with { Why = Long, Actions = [Long, Long, Long], ToDo = "Do one of these:" }, rows);
            Assert.InRange(lines.Count, 1, rows);
            Assert.All(lines, l => Assert.InRange(l.Text.Length, 0, 80));
        }
    }

    [Fact]
    public void Rows_that_are_left_out_are_counted_and_the_important_ones_stay()
    {
        string[] lines = [.. AnswerLayout.Fit(Of(rows: 14, important: 9), AnswerLayout.Rows).Select(l => l.Text)];
        Assert.Contains("night 9", lines);
        int shown = lines.Count(l => l.StartsWith("night ", StringComparison.Ordinal));
        Assert.Contains($"{14 - shown} more", lines);
    }

    [Fact]
    public void Nothing_is_left_out_where_all_is_asked_for()
    {
        string[] lines = [.. AnswerLayout.Whole(Of(rows: 40)).Select(l => l.Text)];
        Assert.Equal(40, lines.Count(l => l.StartsWith("night ", StringComparison.Ordinal)));
        Assert.DoesNotContain(lines, l => l.EndsWith(" more", StringComparison.Ordinal));
    }

    [Fact]
    public void The_caution_stays_when_room_is_shortest()
        => Assert.Equal("Caution.", AnswerLayout.Fit(Of(rows: 14) with { Why = Long }, 8)[^1].Text);

    private static Answer Of(int rows, int important = 0) => new()
    {
        Brief = "HOLDS",
        Verdict = "HOLDS.",
        Table = new(["Night"], [.. Enumerable.Range(0, rows).Select(i => new AnswerRow($"night {i}", i == important ? 1 : 0))], hidden => $"{hidden.Count} more"),
        AboutGuesses = "Least certain:",
        Guesses = ["heat loss", "contents"],
        Caution = "Caution.",
    };
}
