namespace ColdSim.Files.Logs;

/// <summary>The columns of a log in their order.</summary>
internal enum LogField
{
    /// <summary>The time of the reading.</summary>
    Time,

    /// <summary>The cylinder's name.</summary>
    Cylinder,

    /// <summary>The method of reading.</summary>
    Method,

    /// <summary>The value that was read.</summary>
    Reading,

    /// <summary>The liquid's temperature.</summary>
    Temperature,

    /// <summary>Further data of the reading.</summary>
    Details,

    /// <summary>Free text.</summary>
    Note,
}

/// <summary>One fault of an entry.</summary>
/// <param name="Field">The column.</param>
/// <param name="Detail">The detail's name, or empty.</param>
/// <param name="What">What was found.</param>
/// <param name="Accepted">What is accepted, or null.</param>
/// <param name="Nearest">The nearest name, or null.</param>
internal sealed record EntryFault(LogField Field, string Detail, string What, string? Accepted, string? Nearest = null)
{
    /// <summary>The option of <c>coldsim log add</c> that the fault belongs to, then what is wrong.</summary>
    /// <param name="method">The entry's method.</param>
    public string AsOption(string method)
    {
        string option = Field switch
        {
            LogField.Reading => $"--{method}: ",
            LogField.Temperature => "--temperature: ",
            LogField.Details => $"--{Detail}: ",
            _ => "",
        };
        return $"{option}{What}{(Accepted is null ? "" : $"; {Accepted}")}{(Nearest is null ? "" : $"; did you mean '{Nearest}'?")}";
    }
}
