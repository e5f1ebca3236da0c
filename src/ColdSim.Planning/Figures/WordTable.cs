namespace ColdSim.Planning.Figures;

/// <summary>A word for one value of a set.</summary>
/// <param name="Key">What documents have. A promise to programs: words may be added, none is changed.</param>
/// <param name="Text">What a table shows a person.</param>
public sealed record Word(string Key, string Text);

/// <summary>The words of a set of values, one for each.</summary>
/// <remarks>
/// They are kept by the values' numbers: a dictionary over our own enumerations cannot be compiled ahead of time, and there are many on the way
/// to a first answer.
/// </remarks>
/// <typeparam name="T">The set; its values are numbered from 0.</typeparam>
public sealed class WordTable<T> where T : struct, Enum
{
    private readonly List<Word> _all = [];
    private Word?[] _byNumber = [];

    /// <summary>All words, in the order in which they were added.</summary>
    public IReadOnlyList<Word> All => _all;

    /// <summary>The keys as a page lists them.</summary>
    public string Listed => string.Join(", ", _all.Select(w => $"`{w.Key}`"));

    /// <summary>The word of a value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It has none.</exception>
    public Word this[T value]
    {
        get
        {
            int number = (int)(object)value;
            return (number < _byNumber.Length ? _byNumber[number] : null) ?? throw new ArgumentOutOfRangeException(nameof(value), value, "has no word");
        }
    }

    /// <summary>Adds the word of a value.</summary>
    /// <param name="value">The value.</param>
    /// <param name="key">Its key.</param>
    /// <param name="text">What a person is shown; the key where null.</param>
    public WordTable<T> With(T value, string key, string? text = null)
    {
        int number = (int)(object)value;
        if (number >= _byNumber.Length)
            Array.Resize(ref _byNumber, number + 1);
        Word word = new(key, text ?? key);
        _byNumber[number] = word;
        _all.Add(word);
        return this;
    }
}
