using Slowglow.Bench.Keeping;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Storage.Sqlite;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow export FOLDER</summary>
internal sealed class ExportCommand : AsyncCommand<KeepingSettings>
{
    public override async Task<int> ExecuteAsync(
        CommandContext context,
        KeepingSettings settings,
        CancellationToken cancellationToken
    )
    {
        var streams = (Streams)context.Data!;
        if (!File.Exists(settings.ShopPath))
        {
            throw new CannotRunException($"There is no shop at {settings.ShopPath}.");
        }

        var shop = new SqliteShop(settings.ShopPath);
        await shop.PrepareAsync(cancellationToken);
        var files = await new ExportShop(shop, TimeProvider.System).RunAsync(settings.Where, cancellationToken);
        if (files.Value is not { } written)
        {
            return KeepingAnswer.Refuse(files.Findings, streams);
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, new ExportJson(written));
        }
        else
        {
            streams.Out.WriteLine($"Written: {string.Join(", ", written)}");
        }

        return ExitCode.Ran;
    }
}
