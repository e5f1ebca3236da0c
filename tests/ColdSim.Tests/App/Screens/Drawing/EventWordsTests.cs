using ColdSim.App.Screens.Drawing;
using Xunit;

namespace ColdSim.Tests.App.Screens.Drawing;

public class EventWordsTests
{
    private const string Failure = "GAS SHORT 03:44";

    private static string[] Drawn(int columns, int lanes, params EventWord[] words)
    {
        Sheet sheet = new(columns, lanes);
        EventWords.Draw(sheet, 0, 0, EventWords.Place(words, columns, lanes), -1);
        return [.. Enumerable.Range(0, lanes).Select(y => sheet.Row(y).TrimEnd())];
    }

    [Fact]
    public void A_word_stands_after_its_mark_and_before_it_at_the_right_edge()
        => Assert.Equal(["╵dry     freezing╵"], Drawn(18, 1, new(0, "dry", 1), new(17, "freezing", 2)));

    [Fact]
    public void Without_room_for_both_the_graver_word_is_written_and_the_other_keeps_its_mark()
        => Assert.Equal(["    ╵lockout   ╵"], Drawn(16, 1, new(4, "lockout", 9), new(15, "reset all by hand", 2)));

    [Fact]
    public void A_second_row_takes_what_the_first_has_no_room_for()
        => Assert.Equal(["    ╵lockout", "     ╵freezing"], Drawn(16, 2, new(4, "lockout", 9), new(5, "freezing", 8)));

    [Fact]
    public void What_repeats_has_marks_alone_after_its_first()
        => Assert.Equal(["╵short    ╵  ╵"], Drawn(20, 1, new(0, "short", 8), new(10, "short", 8), new(13, "short", 8)));

    [Fact]
    public void Nothing_hides_the_first_failure_wherever_it_is_and_whatever_else_happens()
    {
        for (int columns = 2 * Failure.Length; columns <= 200; columns++)
        {
            for (int at = 0; at < columns; at++)
            {
                EventWord[] words = [.. Enumerable.Range(0, columns).Select(c => new EventWord(c, $"graver {c}", 12)), new(at, Failure, 0) { IsFirstFailure = true }];
                string first = Drawn(columns, 2, words)[0];
                Assert.True(first.Contains(Failure, StringComparison.Ordinal) && first[at] == EventWords.Mark, $"{columns} columns, at {at}: {first}");
            }
        }
    }

    [Fact]
    public void Without_rows_or_columns_nothing_is_written()
    {
        Assert.Empty(EventWords.Place([new(0, "dry", 1)], 10, 0));
        Assert.Empty(EventWords.Place([new(0, "dry", 1)], 0, 2));
    }
}
