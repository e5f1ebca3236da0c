namespace ColdSim.App.Screens.Drawing;

/// <summary>A word for an event, to be written at its time.</summary>
/// <param name="Column">The column of its time.</param>
/// <param name="Text">The word or two.</param>
/// <param name="Rank">The higher is written where there is no room for both.</param>
internal readonly record struct EventWord(int Column, string Text, int Rank)
{
    /// <summary>Whether it is what the night fails by, which comes before all others.</summary>
    public bool IsFirstFailure { get; init; }
}

/// <summary>Where a word is written: a mark in the column of its time, and the word after or before it.</summary>
/// <param name="Word">The word.</param>
/// <param name="Lane">Its row, 0 at the top.</param>
/// <param name="From">The first column of its text, which is empty for a mark alone.</param>
/// <param name="Text">What is written there.</param>
internal readonly record struct PlacedWord(EventWord Word, int Lane, int From, string Text);

/// <summary>Writes events as words below curves, at their times, in as few rows as there are.</summary>
internal static class EventWords
{
    public const char Mark = '╵';

    /// <summary>Finds room for words: the first failure first, then the first of each text by rank, then marks alone for what repeats.</summary>
    /// <param name="words">In the order of their times.</param>
    /// <param name="columns">Columns for marks and words.</param>
    /// <param name="lanes">Rows.</param>
    public static IReadOnlyList<PlacedWord> Place(IReadOnlyList<EventWord> words, int columns, int lanes)
    {
        if (lanes <= 0 || columns <= 0)
            return [];
        bool[,] taken = new bool[lanes, columns];
        List<PlacedWord> placed = [];
        HashSet<string> said = [];
        ILookup<bool, EventWord> repeats = words.ToLookup(w => !w.IsFirstFailure && !said.Add(w.Text));
        foreach (EventWord word in repeats[false].OrderByDescending(w => w.IsFirstFailure).ThenByDescending(w => w.Rank))
        {
            if (Find(word, taken) is { } found)
                placed.Add(found);
            else if (MarkOnly(word, taken) is { } mark)
                placed.Add(mark);
        }

        foreach (EventWord word in repeats[true].OrderByDescending(w => w.Rank))
        {
            if (MarkOnly(word, taken) is { } mark)
                placed.Add(mark);
        }

        return placed;
    }

    /// <summary>Draws words from a row down.</summary>
    public static void Draw(Sheet sheet, int left, int top, IReadOnlyList<PlacedWord> placed, int cursor)
    {
        foreach (PlacedWord word in placed)
        {
            int y = top + word.Lane;
            CellStyle style = word.Word.IsFirstFailure ? CellStyle.Strong : CellStyle.Plain;
            sheet.Put(left + word.From, y, word.Text, style);
            sheet.Put(left + word.Word.Column, y, Mark, word.Word.Column == cursor ? CellStyle.Pointer : style);
        }
    }

    /// <summary>After the mark if there is room, else before it, in the highest row that is free; the first failure is shortened until it fits.</summary>
    private static PlacedWord? Find(EventWord word, bool[,] taken)
    {
        int columns = taken.GetLength(1);
        string text = word.IsFirstFailure ? CellText.Cut(word.Text, Math.Max(word.Column, columns - 1 - word.Column)) : word.Text;
        for (int lane = 0; lane < taken.GetLength(0); lane++)
        {
            foreach (int from in (ReadOnlySpan<int>)[word.Column + 1, word.Column - text.Length])
            {
                int first = Math.Min(from, word.Column), last = Math.Max(from + text.Length - 1, word.Column);
                if (first < 0 || last >= columns || !IsFree(taken, lane, first, last))
                    continue;
                Take(taken, lane, first, last);
                return new(word, lane, from, text);
            }
        }

        return null;
    }

    private static PlacedWord? MarkOnly(EventWord word, bool[,] taken)
    {
        int lane = 0;
        while (lane < taken.GetLength(0) && (word.Column >= taken.GetLength(1) || taken[lane, word.Column]))
            lane++;
        if (lane == taken.GetLength(0))
            return null;
        taken[lane, word.Column] = true;
        return new(word, lane, word.Column, "");
    }

    private static bool IsFree(bool[,] taken, int lane, int first, int last)
    {
        for (int x = first; x <= last; x++)
        {
            if (taken[lane, x])
                return false;
        }

        return true;
    }

    // A blank is kept on each side.
    private static void Take(bool[,] taken, int lane, int first, int last)
    {
        for (int x = Math.Max(0, first - 1); x <= Math.Min(taken.GetLength(1) - 1, last + 1); x++)
            taken[lane, x] = true;
    }
}
