using Slowglow.Bench.People;
using Slowglow.Cli.Desk;
using Slowglow.Storage;
using Slowglow.Storage.Postgres;
using Slowglow.Storage.Sqlite;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow forget-pins</summary>
internal sealed class ForgetPinsCommand : AsyncCommand<ForgetPinsSettings>
{
    public override async Task<int> ExecuteAsync(
        CommandContext context,
        ForgetPinsSettings settings,
        CancellationToken cancellationToken
    )
    {
        var streams = (Streams)context.Data!;
        if (settings.Postgres is null && !File.Exists(settings.ShopPath))
        {
            throw new CannotRunException($"There is no shop at {settings.ShopPath}.");
        }

        if (settings.Postgres is { } typed && !PostgresShop.CanRead(typed))
        {
            throw new CannotRunException("The connection cannot be read: it would be \"Host=...;Database=...;Username=...\".");
        }

        IShopStore shop = settings.Postgres is { } connection ? new PostgresShop(connection) : new SqliteShop(settings.ShopPath);
        await shop.PrepareAsync(cancellationToken);
        await new ForgetPins(shop).RunAsync(cancellationToken);
        streams.Out.WriteLine("No PIN is asked for any more. Start the page anew, then give PINs in the settings.");
        return ExitCode.Ran;
    }
}
