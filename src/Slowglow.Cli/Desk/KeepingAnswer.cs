using Slowglow.Bench.Keeping;
using Slowglow.Cli.Commands;
using Slowglow.Cli.Json;
using Slowglow.Sheets;

namespace Slowglow.Cli.Desk;

/// <summary>Says how a backup or a restore went.</summary>
internal static class KeepingAnswer
{
    public static int Say(Parsed<ShopCopy> copy, string done, KeepingSettings settings, Streams streams)
    {
        if (copy.Value is not { Rows: var rows } made)
        {
            return Refuse(copy.Findings, streams);
        }

        if (settings.Json)
        {
            JsonOut.Write(
                streams,
                new CopyJson(made.Path, made.Bytes, rows.Customers, rows.Jobs, rows.Entries, rows.Papers, rows.Photos)
            );
        }
        else
        {
            streams.Out.WriteLine(
                $"{done}: {made.Path}, {made.Bytes / 1024} kB, {rows.Jobs} jobs, {rows.Entries} entries, {rows.Papers} papers, {rows.Photos} photographs."
            );
        }

        return ExitCode.Ran;
    }

    public static int Refuse(IReadOnlyList<Finding> findings, Streams streams)
    {
        FindingLines.Write(streams.ErrorConsole(), findings.Select(f => new DocumentFinding("shop", f)), Severity.Warning);
        return ExitCode.CouldNotRun;
    }
}
