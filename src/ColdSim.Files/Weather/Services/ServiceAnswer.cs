namespace ColdSim.Files.Weather.Services;

/// <summary>The answer of a service.</summary>
/// <param name="Forecast">The document with the hours.</param>
/// <param name="Others">What else was asked on the way to it.</param>
internal sealed record ServiceAnswer(WebAnswer Forecast, params IReadOnlyList<WebAnswer> Others);

/// <summary>The answer to one request, from the network or kept from an earlier one.</summary>
internal sealed record WebAnswer
{
    /// <summary>The address that was asked.</summary>
    public required Uri Address { get; init; }

    /// <summary>The document.</summary>
    public required byte[] Body { get; init; }

    /// <summary>When it was received, or last found to be still the newest.</summary>
    public required DateTimeOffset CheckedAt { get; init; }

    /// <summary>Until when the service has nothing newer.</summary>
    public required DateTimeOffset ExpiresAt { get; init; }

    /// <summary>When the service last changed it, word for word as the service says; null where it does not.</summary>
    public string? LastModified { get; init; }

    /// <summary>The service's mark of this version, word for word; null where it gives none.</summary>
    public string? EntityTag { get; init; }

    /// <summary>Where it comes from.</summary>
    public AnswerOrigin Origin { get; init; }

    /// <summary>Why the service could not be asked, where the kept answer is used instead.</summary>
    public string? Trouble { get; init; }

    /// <summary>Whether the service says that this kind of answer will end soon.</summary>
    public bool IsDeprecated { get; init; }
}

/// <summary>Where an answer comes from.</summary>
internal enum AnswerOrigin
{
    /// <summary>The service sent it now.</summary>
    Service,

    /// <summary>The service was asked and has nothing newer than the one kept.</summary>
    Unchanged,

    /// <summary>The one kept is new enough that the service need not be asked.</summary>
    KeptFresh,

    /// <summary>The service could not be asked, so the one kept is used.</summary>
    KeptInsteadOfNew,
}
