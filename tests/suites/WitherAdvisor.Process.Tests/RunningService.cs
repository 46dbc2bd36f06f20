using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.RegularExpressions;
using Xunit;

namespace WitherAdvisor.Process.Tests;

/// <summary>The published service as a process of its own, on a free port of the loopback, with its data in one folder.</summary>
/// <param name="dataFolder">Holds the database and the home folder; a new one is a first start.</param>
public sealed partial class RunningService(string dataFolder) : IAsyncDisposable
{
    private readonly ConcurrentQueue<string> printed = new();
    private readonly TaskCompletionSource<Uri> listening = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private System.Diagnostics.Process? process;

    /// <summary>Where it listens.</summary>
    public Uri Address { get; private set; } = new("http://127.0.0.1");

    /// <summary>What it printed so far.</summary>
    public string Printed => string.Join('\n', printed);

    /// <summary>Speaks to its interface.</summary>
    public HttpClient Http { get; } = new() { Timeout = Patience.Longest };

    /// <summary>Starts it and waits until it is well.</summary>
    public async Task Start()
    {
        process = System.Diagnostics.Process.Start(StartInfo())!;
        process.OutputDataReceived += (_, line) => Read(line.Data);
        process.ErrorDataReceived += (_, line) => Read(line.Data);
        process.Exited += (_, _) => listening.TrySetException(new InvalidOperationException($"the service ended:\n{Printed}"));
        process.EnableRaisingEvents = true;
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        Address = await listening.Task.WaitAsync(Patience.Longest);
        Http.BaseAddress = Address;
        using HttpResponseMessage health = await Http.GetAsync(new Uri("/health", UriKind.Relative));
        Assert.True(health.IsSuccessStatusCode, $"/health answers {health.StatusCode}:\n{Printed}");
    }

    /// <summary>Waits until it has printed a text.</summary>
    public async Task Prints(string text)
    {
        using CancellationTokenSource tooLong = new(Patience.Longest);
        while (!Printed.Contains(text, StringComparison.Ordinal))
        {
            Assert.False(process!.HasExited || tooLong.IsCancellationRequested, $"it never printed \"{text}\":\n{Printed}");
            await Task.Delay(50);
        }
    }

    /// <summary>Ends it as a power cut would.</summary>
    public async Task Kill()
    {
        if (process is { HasExited: false })
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
        }
    }

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        await Kill();
        process?.Dispose();
    }

    private ProcessStartInfo StartInfo()
    {
        string service = Path.Combine(AppContext.BaseDirectory, "service");
        ProcessStartInfo start = new("dotnet")
        {
            WorkingDirectory = service,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add(Path.Combine(service, "WitherAdvisor.Api.dll"));
        start.Environment["ASPNETCORE_ENVIRONMENT"] = "Production";
        start.Environment["ASPNETCORE_URLS"] = "http://127.0.0.1:0";
        start.Environment["HOME"] = dataFolder;
        start.Environment["Store__DatabasePath"] = Path.Combine(dataFolder, "witheradvisor.db");
        return start;
    }

    private void Read(string? line)
    {
        if (line is null)
        {
            return;
        }

        printed.Enqueue(line);
        if (ListeningOn().Match(line) is { Success: true } found)
        {
            listening.TrySetResult(new Uri(found.Value));
        }
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:[1-9]\d*", RegexOptions.None, Patience.Milliseconds)]
    private static partial Regex ListeningOn();
}
