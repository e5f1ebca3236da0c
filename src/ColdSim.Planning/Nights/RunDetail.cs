namespace ColdSim.Planning.Nights;

/// <summary>How much of a run is kept while it goes by, each value with what is named before it.</summary>
internal enum RunDetail
{
    /// <summary>The counts of its nights alone: for a run among many.</summary>
    Nights,

    /// <summary>
    /// The events that lists show, and the curves around the first night that does not hold, from which its reason is read: what an answer on the screen
    /// needs. Memory grows with the nights by a row each.
    /// </summary>
    Answer,

    /// <summary>Every event.</summary>
    Events,

    /// <summary>The curves of the whole run, some 230 kB a night.</summary>
    Curves,
}
