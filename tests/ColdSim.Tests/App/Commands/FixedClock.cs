namespace ColdSim.Tests.App.Commands;

/// <summary>A clock that has stopped, in the time zone of its instant.</summary>
/// <param name="now">The instant.</param>
internal sealed class FixedClock(DateTimeOffset now) : TimeProvider
{
    public override DateTimeOffset GetUtcNow() => now.ToUniversalTime();

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.CreateCustomTimeZone("there", now.Offset, "there", "there");
}
