namespace WitherAdvisor.Loft.Recalibrating.Running;

/// <summary>Wakes the worker when there is work, and reaches the recalibration that runs.</summary>
public sealed class RecalibrationTurns : IDisposable
{
    private readonly SemaphoreSlim waiting = new(0);
    private readonly Lock gate = new();
    private (string Id, CancellationTokenSource Asked)? running;

    /// <summary>There is something to do.</summary>
    public void Wake() => waiting.Release();

    /// <summary>Until there is something to do.</summary>
    public Task Wait(CancellationToken cancel) => waiting.WaitAsync(cancel);

    /// <summary>From now on it can be reached.</summary>
    public void Begin(string id, CancellationTokenSource asked)
    {
        lock (gate)
        {
            running = (id, asked);
        }
    }

    /// <summary>From now on it cannot.</summary>
    public void End()
    {
        lock (gate)
        {
            running = null;
        }
    }

    /// <summary>Asks it to stop, where it runs.</summary>
    public void Stop(string id)
    {
        lock (gate)
        {
            if (running is { } now && now.Id == id)
            {
                now.Asked.Cancel();
            }
        }
    }

    public void Dispose() => waiting.Dispose();
}
