using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Slowglow.Storage.Mappings;

/// <summary>Times are stored as UTC Unix milliseconds, which every database orders alike.</summary>
internal sealed class UnixMillisecondsConverter()
    : ValueConverter<DateTimeOffset, long>(
        time => time.ToUnixTimeMilliseconds(),
        stored => DateTimeOffset.FromUnixTimeMilliseconds(stored)
    );
