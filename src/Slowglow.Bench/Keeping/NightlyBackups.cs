using System.Globalization;
using Slowglow.Sheets;

namespace Slowglow.Bench.Keeping;

/// <summary>A backup a day into a folder, of which the newest are kept.</summary>
public sealed class NightlyBackups(BackupShop backup, TimeProvider clock)
{
    private const string Prefix = "slowglow-";
    private const string Ending = ".backup";

    /// <summary>Makes today's when it is not there and takes out what is beyond the number kept.</summary>
    /// <param name="kept">0 = none are made and none are taken out.</param>
    /// <returns>Findings when it could not be made; nothing is taken out then.</returns>
    public async Task<IReadOnlyList<Finding>> RunAsync(string folder, int kept, CancellationToken cancel = default)
    {
        if (kept <= 0)
        {
            return [];
        }

        var day = clock.GetLocalNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var path = Path.Combine(folder, Prefix + day + Ending);
        if (!File.Exists(path) && await backup.RunAsync(path, cancel) is { Value: null } failed)
        {
            return failed.Findings;
        }

        var old = Directory.GetFiles(folder, Prefix + "????-??-??" + Ending).OrderDescending(StringComparer.Ordinal).Skip(kept);
        foreach (var file in old)
        {
            File.Delete(file);
        }

        return [];
    }
}
