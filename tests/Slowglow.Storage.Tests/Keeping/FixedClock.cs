namespace Slowglow.Storage.Tests.Keeping;

/// <summary>A clock that stands.</summary>
internal sealed class FixedClock(DateTimeOffset now) : TimeProvider
{
    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => now;
}
