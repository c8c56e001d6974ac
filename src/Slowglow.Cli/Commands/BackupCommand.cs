using Slowglow.Bench.Keeping;
using Slowglow.Cli.Desk;
using Slowglow.Storage.Sqlite;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow backup FILE</summary>
internal sealed class BackupCommand : AsyncCommand<KeepingSettings>
{
    public override async Task<int> ExecuteAsync(
        CommandContext context,
        KeepingSettings settings,
        CancellationToken cancellationToken
    )
    {
        var streams = (Streams)context.Data!;
        var copy = await new BackupShop(new SqliteCopies(settings.ShopPath)).RunAsync(settings.Where, cancellationToken);
        return KeepingAnswer.Say(copy, "Written and read again", settings, streams);
    }
}
