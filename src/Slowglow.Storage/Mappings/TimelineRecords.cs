using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Mappings;

/// <summary>Entries that carry a record keep it as JSON in one column.</summary>
internal static class TimelineRecords
{
    private const string Column = "data";

    public static void Map(ModelBuilder model)
    {
        model
            .Entity<BookedIn>()
            .Property(e => e.Notes)
            .HasColumnName(Column)
            .HasConversion((ValueConverter)JsonText.Converter<CounterNotes>(), JsonText.Comparer<CounterNotes>());
        var kinds = typeof(TimelineEntry)
            .Assembly.GetTypes()
            .Where(t => t is { IsAbstract: false, BaseType.IsGenericType: true });
        foreach (var kind in kinds.Where(t => t.BaseType!.GetGenericTypeDefinition() == typeof(EntryWith<>)))
        {
            var map = typeof(TimelineRecords).GetMethod(
                nameof(MapOne),
                System.Reflection.BindingFlags.NonPublic | System.Reflection.BindingFlags.Static
            )!;
            map.MakeGenericMethod(kind, kind.BaseType!.GetGenericArguments()[0]).Invoke(null, [model]);
        }
    }

    private static void MapOne<TEntry, TRecord>(ModelBuilder model)
        where TEntry : EntryWith<TRecord>
        where TRecord : class =>
        model
            .Entity<TEntry>()
            .Property(e => e.What)
            .HasColumnName(Column)
            .HasConversion(JsonText.Converter<TRecord>(), JsonText.Comparer<TRecord>());
}
