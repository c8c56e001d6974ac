using Slowglow.Cli;
using Slowglow.Cli.Desk;

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    pressed.Cancel = true;
    stop.Cancel();
};
return await CommandLine.RunAsync(args, Streams.Console(), stop.Token);
