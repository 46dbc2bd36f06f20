namespace WitherAdvisor.WeatherFeeds.Resilience;

/// <summary>One fetch in flight for a query: whoever asks the same meanwhile gets the same answer.</summary>
internal sealed class SharedFetches
{
    private readonly Lock gate = new();
    private readonly Dictionary<FeedQuery, Task<FeedAnswer>> inFlight = [];

    public Task<FeedAnswer> JoinOrStart(FeedQuery query, Func<FeedQuery, Task<FeedAnswer>> fetch)
    {
        TaskCompletionSource<FeedAnswer> answer;
        lock (gate)
        {
            if (inFlight.TryGetValue(query, out Task<FeedAnswer>? running))
            {
                return running;
            }

            // Callers' code must not run within the fetch that they waited for.
            answer = new(TaskCreationOptions.RunContinuationsAsynchronously);
            inFlight.Add(query, answer.Task);
        }

        _ = Finish(query, fetch, answer);
        return answer.Task;
    }

    private async Task Finish(FeedQuery query, Func<FeedQuery, Task<FeedAnswer>> fetch, TaskCompletionSource<FeedAnswer> answer)
    {
        Task<FeedAnswer> running = fetch(query);
        await Task.WhenAny(running);
        lock (gate)
        {
            inFlight.Remove(query);
        }

        answer.SetFromTask(running);
    }
}
