namespace ColdSim.Files;

/// <summary>A value that is accepted and probably not meant: it is run, with one warning.</summary>
/// <param name="Where">The key with its section, or the column of the weather file.</param>
/// <param name="Noticed">When there is a warning.</param>
/// <param name="Usual">What is usual.</param>
/// <param name="Basis">Where that is from: a source, "common practice, no source" or "from memory".</param>
internal record UnusualValue(string Where, string Noticed, string Usual, string Basis)
{
    /// <summary>A limit of our own choice.</summary>
    public const string OurChoice = "our choice, no source";

    /// <summary>A fact of the trade without a source.</summary>
    public const string CommonPractice = "common practice, no source";

    /// <summary>Recalled and not looked up.</summary>
    public const string FromMemory = "from memory";

    /// <summary>The warning.</summary>
    /// <param name="found">What was found, with its place and value.</param>
    public string Warning(string found) => $"{found}; usual: {Usual}";
}

/// <summary>An unusual value with how it is found.</summary>
/// <typeparam name="T">Where it is looked for.</typeparam>
/// <param name="Where">The key with its section, or the column of the weather file.</param>
/// <param name="Noticed">When there is a warning.</param>
/// <param name="Usual">What is usual.</param>
/// <param name="Basis">Where that is from.</param>
/// <param name="Find">What was found, in words with its value; null where nothing is unusual.</param>
internal sealed record UnusualValue<T>(string Where, string Noticed, string Usual, string Basis, Func<T, string?> Find) : UnusualValue(Where, Noticed, Usual, Basis)
    where T : class;
