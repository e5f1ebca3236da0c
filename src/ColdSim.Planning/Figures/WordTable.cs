namespace ColdSim.Planning.Figures;

/// <summary>A word for one value of a set.</summary>
/// <param name="Key">What documents have. A promise to programs: words may be added, none is changed.</param>
/// <param name="Text">What a table shows a person.</param>
public sealed record Word(string Key, string Text);

/// <summary>The words of a set of values, one for each.</summary>
/// <typeparam name="T">The set.</typeparam>
public sealed class WordTable<T> where T : struct, Enum
{
    private readonly Dictionary<T, Word> _words;

    /// <summary>Takes a word for every value of the set.</summary>
    /// <param name="words">The value, its key, and what a person is shown; the key where that is null.</param>
    /// <exception cref="ArgumentException">A value has no word.</exception>
    public WordTable(params ReadOnlySpan<(T Value, string Key, string? Text)> words)
    {
        _words = [];
        foreach ((T value, string key, string? text) in words)
            _words.Add(value, new Word(key, text ?? key));
        foreach (T value in Enum.GetValues<T>())
        {
            if (!_words.ContainsKey(value))
                throw new ArgumentException($"{typeof(T).Name}.{value} has no word");
        }
    }

    /// <summary>The word of a value.</summary>
    public Word this[T value] => _words[value];

    /// <summary>All words, in their order.</summary>
    public IReadOnlyCollection<Word> All => _words.Values;

    /// <summary>The keys as a page lists them.</summary>
    public string Listed => string.Join(", ", _words.Values.Select(w => $"`{w.Key}`"));
}
