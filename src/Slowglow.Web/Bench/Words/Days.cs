using System.Globalization;

namespace Slowglow.Web.Bench.Words;

/// <summary>Days and times as they stand on a card.</summary>
public static class Days
{
    /// <summary>"2 Nov 2026".</summary>
    public static string Say(DateTimeOffset time, TimeProvider clock) =>
        Local(time, clock).ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"2 Nov 2026".</summary>
    public static string Say(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"2 Nov 2026, 14:05"; the day alone where no time was noted.</summary>
    public static string SayTime(DateTimeOffset time, TimeProvider clock)
    {
        var local = Local(time, clock);
        return local.ToString(
            local.TimeOfDay == TimeSpan.Zero ? "d MMM yyyy" : "d MMM yyyy, HH:mm",
            CultureInfo.InvariantCulture
        );
    }

    private static DateTimeOffset Local(DateTimeOffset time, TimeProvider clock) =>
        TimeZoneInfo.ConvertTime(time, clock.LocalTimeZone);
}
