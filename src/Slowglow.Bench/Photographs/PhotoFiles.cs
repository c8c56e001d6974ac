using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Storage;
using Slowglow.Storage.Records;
using Slowglow.Workshop;
using Slowglow.Workshop.Photos;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Photographs;

/// <summary>How photographs are kept: once each, under the hash of what is in them.</summary>
internal static class PhotoFiles
{
    private const int LongestCaption = 200;

    /// <summary>The entry and the file of a photograph, or why it is none.</summary>
    public static Draft Draft(TakenPhoto photo, DateTimeOffset now)
    {
        var (kind, wrong) = PhotoCheck.Look(photo.Caption.Length > 0 ? photo.Caption : "The file", photo.Content);
        if (kind is not { } picture)
        {
            return Jobs.Draft.Refused(wrong!);
        }

        if (photo.Caption.Length > LongestCaption)
        {
            return Jobs.Draft.Refused(
                new Objection($"A caption is longer than {LongestCaption} characters.", "A few words: what it shows.")
            );
        }

        var file = $"{Convert.ToHexStringLower(SHA256.HashData(photo.Content))}.{PhotoKindWords.Ending(picture)}";
        return new(
            new PhotoAdded { What = new(file, photo.Caption, photo.Content.Length) },
            [],
            Photo: new()
            {
                File = file,
                Kind = picture,
                Content = photo.Content,
                At = now,
            }
        );
    }

    /// <summary>Adds it unless the shop has it already.</summary>
    public static async Task KeepAsync(ShopDatabase database, KeptPhoto photo, CancellationToken cancel)
    {
        if (!await database.Photos.AnyAsync(p => p.File == photo.File, cancel))
        {
            database.Photos.Add(photo);
        }
    }
}
