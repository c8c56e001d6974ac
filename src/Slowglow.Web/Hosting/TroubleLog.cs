using Microsoft.Extensions.Logging;

namespace Slowglow.Web.Hosting;

/// <summary>The log of one part of the program.</summary>
internal sealed class TroubleLog(TroubleLogProvider provider, string category) : ILogger
{
    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Warning;

    public void Log<TState>(
        LogLevel logLevel,
        EventId eventId,
        TState state,
        Exception? exception,
        Func<TState, Exception?, string> formatter
    )
    {
        if (IsEnabled(logLevel))
        {
            provider.Write(category, logLevel, formatter(state, exception), exception);
        }
    }
}
