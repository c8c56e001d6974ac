using Slowglow.Bench.Jobs;
using Slowglow.Bench.Photographs;
using Slowglow.Documents;
using Slowglow.Sheets;
using Slowglow.Workshop;
using Slowglow.Workshop.Photos;
using Slowglow.Workshop.Shop;

namespace Slowglow.Bench.Papers;

/// <summary>
/// Settles the picture at the head of every paper. It is kept with the photographs and never changed, so that a paper issued with it is printed with it for
/// ever; backups, exports and moves have it without being told.
/// </summary>
public sealed class ChooseLogo(SettingsWriter writer, TimeProvider clock)
{
    /// <summary>The largest file taken, bytes: it is in every paper.</summary>
    public const int MostBytes = 1_000_000;

    /// <param name="name">What the file is called.</param>
    /// <param name="content">Null takes the logo away.</param>
    public Task<IReadOnlyList<Finding>> RunAsync(string name, byte[]? content, CancellationToken cancel = default) =>
        writer.WriteAsync(
            async (database, settings) =>
            {
                var rules = settings.Rules ?? ExampleRules.Rules;
                var file = "";
                if (content is not null)
                {
                    var drafted = PhotoFiles.Draft(new(content, Short(name)), clock.GetUtcNow());
                    if (drafted.Photo is not { } picture)
                    {
                        return drafted.Objections;
                    }

                    if (Look(Short(name), picture.Kind, content) is { } wrong)
                    {
                        return [wrong];
                    }

                    await PhotoFiles.KeepAsync(database, picture, cancel);
                    file = picture.File;
                }

                settings.Rules = rules with { Party = rules.Party with { Logo = file } };
                return [];
            },
            cancel
        );

    private static string Short(string name) => name.Length > 60 ? name[..60] + "..." : name;

    private static Objection? Look(string name, PhotoKind kind, byte[] content) =>
        content.Length > MostBytes ? new($"\"{name}\" is too large for a logo.", "Up to 1 MB: it is in every paper.")
        : kind == PhotoKind.WebP || !PaperPicture.CanBePrinted(content)
            ? new($"\"{name}\" cannot be printed.", "PNG or JPEG, as a drawing program writes it.")
        : null;
}
