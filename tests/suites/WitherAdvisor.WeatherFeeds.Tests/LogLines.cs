using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace WitherAdvisor.WeatherFeeds.Tests;

/// <summary>Keeps what is logged.</summary>
internal sealed class LogLines : ILoggerProvider, ILogger
{
    private readonly ConcurrentQueue<string> lines = new();

    public string Text => string.Join('\n', lines);

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => true;

    public void Log<TState>(
        LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
        lines.Enqueue($"{logLevel} {formatter(state, exception)} {exception}");

    public void Dispose()
    {
        // Nothing is held.
    }
}
