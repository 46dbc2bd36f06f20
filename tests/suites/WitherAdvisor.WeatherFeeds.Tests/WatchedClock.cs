using Microsoft.Extensions.Time.Testing;

namespace WitherAdvisor.WeatherFeeds.Tests;

/// <summary>A clock that stands still until told to go on, and knows who waits for how long.</summary>
internal sealed class WatchedClock() : FakeTimeProvider(FeedFixture.FetchedAt)
{
    private readonly Lock gate = new();
    private readonly List<TimeSpan> waits = [];
    private TaskCompletionSource changed = NewSource();

    /// <summary>Every wait that was begun, in order.</summary>
    public IReadOnlyList<TimeSpan> Waits
    {
        get
        {
            lock (gate)
            {
                return [.. waits];
            }
        }
    }

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        ITimer timer = base.CreateTimer(callback, state, dueTime, period);
        TaskCompletionSource before;
        lock (gate)
        {
            waits.Add(dueTime);
            (before, changed) = (changed, NewSource());
        }

        before.SetResult();
        return timer;
    }

    /// <summary>Until someone has begun to wait for so long.</summary>
    public async Task Waiting(TimeSpan wait)
    {
        while (true)
        {
            Task next;
            lock (gate)
            {
                if (waits.Contains(wait))
                {
                    return;
                }

                next = changed.Task;
            }

            await next.WaitAsync(TestContext.Current.CancellationToken);
        }
    }

    private static TaskCompletionSource NewSource() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
