using Slowglow.Bench.Keeping;
using Slowglow.Cli.Desk;
using Slowglow.Storage.Sqlite;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow restore FILE</summary>
internal sealed class RestoreCommand : AsyncCommand<KeepingSettings>
{
    public override async Task<int> ExecuteAsync(
        CommandContext context,
        KeepingSettings settings,
        CancellationToken cancellationToken
    )
    {
        var streams = (Streams)context.Data!;
        var copy = await new RestoreShop(new SqliteCopies(settings.ShopPath)).RunAsync(settings.Where, cancellationToken);
        return KeepingAnswer.Say(
            copy,
            $"Now in {settings.ShopPath}; what stood there is kept beside it. Restored",
            settings,
            streams
        );
    }
}
