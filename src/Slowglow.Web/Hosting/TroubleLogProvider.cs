using Microsoft.Extensions.Logging;

namespace Slowglow.Web.Hosting;

/// <summary>Writes warnings and errors of the program to a file beside the shop's, for whoever mends the program.</summary>
internal sealed class TroubleLogProvider(string path, TimeProvider clock) : ILoggerProvider
{
    private readonly Lock gate = new();

    public ILogger CreateLogger(string categoryName) => new TroubleLog(this, categoryName);

    public void Dispose() { }

    internal void Write(string category, LogLevel level, string message, Exception? exception)
    {
        var text = FormattableString.Invariant($"{clock.GetUtcNow():O} {level} {category}: {message}\n{exception}\n");
        try
        {
            lock (gate)
            {
                File.AppendAllText(path, text);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A full disk must not take the page down with it.
        }
    }
}
