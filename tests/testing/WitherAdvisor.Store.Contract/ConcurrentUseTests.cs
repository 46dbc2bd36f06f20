using static WitherAdvisor.Store.Contract.Invented;

namespace WitherAdvisor.Store.Contract;

/// <summary>Many that write at once, and readers meanwhile.</summary>
public abstract class ConcurrentUseTests<TStore> : StoreSuite<TStore>
    where TStore : IStoreUnderTest, new()
{
    private const int Writers = 8;
    private const int WritesEach = 50;
    private readonly TaskCompletionSource someSeen = new(TaskCreationOptions.RunContinuationsAsynchronously);

    [Fact]
    public async Task Every_write_of_many_lands_and_readers_meanwhile_see_whole_batches()
    {
        await Store.WithTrough();
        var writing = Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(() => WriteAll(writer), Cancel)));

        var looks = await Task.Run(() => LookUntil(writing), Cancel);

        await writing;
        Assert.Equal(Writers * WritesEach, (await Store.Batches.List("hill", int.MaxValue, Cancel)).Count);
        Assert.Equal(looks.Order(), looks);
        Assert.Contains(looks, seen => seen is > 0 and < Writers * WritesEach);
    }

    private async Task WriteAll(int writer)
    {
        for (var write = 0; write < WritesEach; write++)
        {
            if (write == WritesEach - 1)
            {
                // So that on any machine a reader looks in before the end.
                await someSeen.Task.WaitAsync(Cancel);
            }

            var id = $"{writer}-{write}";
            await Store.Batches.Add(Batch(id), AdviceFor($"advice for {id}", id), onceOnly: false, Cancel);
        }
    }

    /// <summary>How many batches each look saw; each had its advice.</summary>
    private async Task<List<int>> LookUntil(Task done)
    {
        var looks = new List<int>();
        try
        {
            while (!done.IsCompleted)
            {
                looks.Add(await Look());
                if (looks[^1] > 0)
                {
                    someSeen.TrySetResult();
                }
            }
        }
        finally
        {
            someSeen.TrySetResult();
        }

        return looks;
    }

    private async Task<int> Look()
    {
        var seen = await Store.Batches.List("hill", int.MaxValue, Cancel);
        foreach (var batch in seen.Take(5))
        {
            Assert.Single(await Store.Batches.ListAdvice(batch.Id, Cancel));
        }

        return seen.Count;
    }
}
