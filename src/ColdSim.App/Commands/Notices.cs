using ColdSim.App.Text.Answers;

namespace ColdSim.App.Commands;

/// <summary>Warnings about the input, kept until it is known how many of them there is room for, then put on standard error.</summary>
/// <param name="to">Standard error.</param>
internal sealed class Notices(TextWriter to)
{
    private const int MostOnScreen = 2;

    private readonly List<string> _lines = [];

    /// <summary>How many are kept and not said yet.</summary>
    public int Count => _lines.Count;

    /// <summary>Adds a warning.</summary>
    public void Add(string line) => _lines.Add(line);

    /// <summary>Says all of them.</summary>
    public void SayAll() => Say(_lines.Count);

    /// <summary>Says as many as go with an answer of a length, and how to see the others.</summary>
    public void Say(AnswerLength length)
    {
        if (length == AnswerLength.Full || _lines.Count <= MostOnScreen)
        {
            SayAll();
            return;
        }

        int more = _lines.Count - MostOnScreen;
        Say(MostOnScreen);
        to.WriteLine($"warning: {more} more; 'coldsim check FILE' shows {(more == 1 ? "it" : "them")}");
    }

    private void Say(int count)
    {
        foreach (string line in _lines.Take(count))
            to.WriteLine(line);
        _lines.Clear();
    }
}
