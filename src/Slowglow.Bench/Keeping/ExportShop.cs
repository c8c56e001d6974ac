using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Storage.Mappings;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Words;

namespace Slowglow.Bench.Keeping;

/// <summary>Writes everything as files that other programs read: JSON of all records, and tables for an accountant.</summary>
public sealed class ExportShop(IDbContextFactory<ShopDatabase> shop, TimeProvider clock)
{
    /// <param name="folder">Made when it is not there; files of the same names are written anew.</param>
    /// <returns>The files written.</returns>
    public async Task<Parsed<IReadOnlyList<string>>> RunAsync(string folder, CancellationToken cancel = default)
    {
        try
        {
            var full = Directory.CreateDirectory(folder).FullName;
            await using var database = await shop.CreateDbContextAsync(cancel);
            List<string> files = [Path.Combine(full, "shop.json")];
            await using (var stream = File.Create(files[0]))
            {
                await JsonAsync(database, stream, cancel);
            }

            foreach (var (name, text) in await AccountTables.WriteAsync(database, clock, cancel))
            {
                files.Add(Path.Combine(full, name));
                await File.WriteAllTextAsync(files[^1], text, cancel);
            }

            files.AddRange(await PhotosAsync(database, full, cancel));
            return new(files, []);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(
                null,
                Said.Wrong($"Nothing could be written to {folder}.", "A folder that may be written to, on a disk with room.")
            );
        }
    }

    /// <summary>Each under the name that its entries in the timelines give.</summary>
    private static async Task<IReadOnlyList<string>> PhotosAsync(ShopDatabase database, string folder, CancellationToken cancel)
    {
        List<string> files = [];
        foreach (var name in await database.Photos.Select(p => p.File).OrderBy(f => f).ToListAsync(cancel))
        {
            var content = await database.Photos.Where(p => p.File == name).Select(p => p.Content).SingleAsync(cancel);
            files.Add(Path.Combine(Directory.CreateDirectory(Path.Combine(folder, "photos")).FullName, name));
            await File.WriteAllBytesAsync(files[^1], content, cancel);
        }

        return files;
    }

    private static async Task JsonAsync(ShopDatabase database, Stream stream, CancellationToken cancel)
    {
        await using var json = new Utf8JsonWriter(
            stream,
            new JsonWriterOptions { Indented = true, Encoder = JsonText.Options.Encoder }
        );
        json.WriteStartObject();
        Write(json, "settings", (await database.Settings.AsNoTracking().ToListAsync(cancel)).Select(WithoutPins).ToList());
        Write(json, "customers", await database.Customers.AsNoTracking().OrderBy(c => c.Id).ToListAsync(cancel));
        Write(json, "sheets", await database.Sheets.AsNoTracking().OrderBy(s => s.Id).ToListAsync(cancel));
        var stock = await database.Stock.AsNoTracking().Include(i => i.Moves).OrderBy(i => i.Id).ToListAsync(cancel);
        Write(json, "stock", stock.Select(ExportedBin.Of).ToList());
        json.WriteStartArray("jobs");
        var jobs = database
            .Jobs.AsNoTracking()
            .Include(j => j.Customer)
            .Include(j => j.Sheet)
            .Include(j => j.Timeline)
            .OrderBy(j => j.Number);
        await foreach (var job in jobs.AsAsyncEnumerable().WithCancellation(cancel))
        {
            json.WriteStartObject();
            json.WriteNumber("number", job.Number);
            json.WriteNumber("customer", job.Customer.Id);
            if (job.Sheet is { } sheet)
            {
                json.WriteNumber("sheet", sheet.Id);
            }

            Write(json, "unit", job.Unit);
            Write(json, "bookedIn", job.BookedIn);
            Write(json, "promised", job.Promised);
            Write(json, "limit", job.Limit);
            Timeline(json, job.Timeline);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Write(
            json,
            "papers",
            (await database.Papers.AsNoTracking().OrderBy(p => p.Kind).ThenBy(p => p.Number).ToListAsync(cancel)).Select(p =>
                p.Paper
            )
        );
        json.WriteEndObject();
    }

    // What a PIN can be guessed from is nobody's who reads an export.
    private static ShopSettings WithoutPins(ShopSettings settings) =>
        new()
        {
            Id = settings.Id,
            Words = settings.Words,
            Rules = settings.Rules is { } rules
                ? rules with
                {
                    People = [.. rules.People.Select(p => p with { Pin = "" })],
                }
                : null,
        };

    private static void Timeline(Utf8JsonWriter json, IEnumerable<TimelineEntry> timeline)
    {
        json.WriteStartArray("timeline");
        foreach (var entry in timeline.OrderBy(e => e.Sequence))
        {
            json.WriteStartObject();
            json.WriteString("kind", entry.GetType().Name);
            Write(json, "entry", entry, entry.GetType());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Write<T>(Utf8JsonWriter json, string name, T value) => Write(json, name, value, typeof(T));

    private static void Write(Utf8JsonWriter json, string name, object? value, Type type)
    {
        json.WritePropertyName(name);
        JsonSerializer.Serialize(json, value, type, JsonText.Options);
    }
}
