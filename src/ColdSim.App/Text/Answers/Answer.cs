namespace ColdSim.App.Text.Answers;

/// <summary>How long an answer is wanted.</summary>
internal enum AnswerLength
{
    /// <summary>What fits a terminal of 80 columns and 24 rows.</summary>
    Screen,

    /// <summary>Everything there is to say.</summary>
    Full,

    /// <summary>One line.</summary>
    Brief,
}

/// <summary>An answer in the order in which it is read: the verdict, why, what to do, the figures, what is least certain, and a caution.</summary>
/// <remarks>All texts are unbroken paragraphs; <see cref="AnswerLayout"/> breaks and shortens them to the room there is.</remarks>
internal sealed record Answer
{
    /// <summary>The whole answer in one line of at most 80 characters.</summary>
    public required string Brief { get; init; }

    /// <summary>The first sentence, which is stressed on a terminal.</summary>
    public required string Verdict { get; init; }

    /// <summary>What it means for the people inside, the most important first.</summary>
    public IReadOnlyList<string> Consequences { get; init; } = [];

    /// <summary>Why; empty where the verdict says it.</summary>
    public string Why { get; init; } = "";

    /// <summary>What introduces the actions.</summary>
    public string ToDo { get; init; } = "";

    /// <summary>What to do, each by itself, the best first.</summary>
    public IReadOnlyList<string> Actions { get; init; } = [];

    /// <summary>The figures; null where there are none to show.</summary>
    public AnswerTable? Table { get; init; }

    /// <summary>What introduces the guesses.</summary>
    public string AboutGuesses { get; init; } = "";

    /// <summary>What this answer hangs on that is not known well, and how to measure it.</summary>
    public IReadOnlyList<string> Guesses { get; init; } = [];

    /// <summary>The one caution that goes with what was asked.</summary>
    public required string Caution { get; init; }
}

/// <summary>A table of which the less important rows may be left out.</summary>
/// <param name="Head">The heading's lines.</param>
/// <param name="Rows">A line each, in order.</param>
/// <param name="More">What is said in place of rows that are left out, from their places.</param>
internal sealed record AnswerTable(IReadOnlyList<string> Head, IReadOnlyList<AnswerRow> Rows, Func<IReadOnlyList<int>, string> More)
{
    /// <summary>A line above the heading.</summary>
    public string Title { get; init; } = "";

    /// <summary>Rows that are shown however much room there is.</summary>
    public int Most { get; init; } = 7;
}

/// <summary>A row of an answer's table.</summary>
/// <param name="Line">The row as it is printed.</param>
/// <param name="Importance">The greater, the later it is left out.</param>
internal sealed record AnswerRow(string Line, double Importance);
