namespace Slowglow.Bench.Jobs;

/// <summary>Days by the shop's clock.</summary>
public static class ShopDay
{
    public static DateOnly Today(TimeProvider clock) => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    public static DateOnly Of(DateTimeOffset time, TimeProvider clock) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(time, clock.LocalTimeZone).DateTime);

    /// <summary>Noon of a day, UTC, as promises are stored.</summary>
    public static DateTimeOffset Noon(DateOnly day) => new(day, new TimeOnly(12, 0), TimeSpan.Zero);
}
