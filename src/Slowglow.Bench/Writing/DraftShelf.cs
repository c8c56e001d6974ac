using System.Text.Json;
using System.Text.RegularExpressions;

namespace Slowglow.Bench.Writing;

/// <summary>
/// Keeps what was typed into sheets and not saved yet, a small file for each job and window, beside the shop's file: a draft changes at every
/// pause in typing and is gone once saved, which is no matter for the job book.
/// </summary>
/// <param name="folder">Made when it is first needed.</param>
public sealed partial class DraftShelf(string folder, TimeProvider clock)
{
    private readonly Lock gate = new();

    /// <summary>Keeps the text; false when the disk refuses, or the window's name is none.</summary>
    public bool Keep(int job, string window, string text, int? basedOn)
    {
        if (!WindowName().IsMatch(window) || text.Length > SaveSheet.Longest)
        {
            return false;
        }

        lock (gate)
        {
            try
            {
                Directory.CreateDirectory(folder);
                var file = FileOf(job, window);
                // Written whole beside the old one and then put in its place: a power cut leaves one of the two.
                File.WriteAllText(
                    file + ".new",
                    JsonSerializer.Serialize(new TypedDraft(window, text, basedOn, clock.GetUtcNow()))
                );
                File.Move(file + ".new", file, overwrite: true);
                return true;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return false;
            }
        }
    }

    /// <summary>Clears what that window had, once it is saved or given up.</summary>
    public void Clear(int job, string window)
    {
        if (!WindowName().IsMatch(window))
        {
            return;
        }

        lock (gate)
        {
            try
            {
                File.Delete(FileOf(job, window));
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // It is offered once more next time, which loses nothing.
            }
        }
    }

    /// <summary>What is kept of that job, the newest first.</summary>
    public IReadOnlyList<TypedDraft> Of(int job)
    {
        lock (gate)
        {
            if (!Directory.Exists(folder))
            {
                return [];
            }

            return
            [
                .. Directory
                    .EnumerateFiles(folder, $"job-{job}-*.json")
                    .Select(Read)
                    .OfType<TypedDraft>()
                    .OrderByDescending(d => d.At),
            ];
        }
    }

    /// <summary>Names of files of that job whose text cannot be read any more, for telling the person.</summary>
    public IReadOnlyList<string> UnreadableOf(int job)
    {
        lock (gate)
        {
            return Directory.Exists(folder)
                ?
                [
                    .. Directory
                        .EnumerateFiles(folder, $"job-{job}-*.json")
                        .Where(f => Read(f) is null)
                        .Select(f => Path.GetFileName(f))
                        .Order(StringComparer.Ordinal),
                ]
                : [];
        }
    }

    private static TypedDraft? Read(string file)
    {
        try
        {
            return JsonSerializer.Deserialize<TypedDraft>(File.ReadAllText(file));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException)
        {
            return null;
        }
    }

    private string FileOf(int job, string window) => Path.Combine(folder, $"job-{job}-{window}.json");

    [GeneratedRegex("^[a-z0-9]{4,40}$", RegexOptions.CultureInvariant)]
    private static partial Regex WindowName();
}
