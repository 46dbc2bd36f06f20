using System.Collections.Concurrent;
using WitherAdvisor.Mutants.Making;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>Tries mutants in as many processes as there are cores.</summary>
internal static class Trials
{
    /// <summary>No mutant is taken for endless before.</summary>
    private const int LeastS = 10;

    public static void Run(IReadOnlyList<Mutant> mutants, TriedLog log, TextWriter progress)
    {
        Passing passing = Passing.Measure();
        ConcurrentQueue<Mutant> waiting = new(mutants);
        int count = 0;
        Parallel.For(0, Environment.ProcessorCount, new() { MaxDegreeOfParallelism = Environment.ProcessorCount }, _ => Work(waiting, passing, one =>
        {
            log.Add(one);
            progress.WriteLine($"{Interlocked.Increment(ref count)}/{mutants.Count} {one.Fate}: {one.Mutant.Name}");
        }));
    }

    private static void Work(ConcurrentQueue<Mutant> waiting, Passing passing, Action<Tried> done)
    {
        WorkerProcess? worker = null;
        while (waiting.TryDequeue(out Mutant? mutant))
        {
            if (passing.TestsOf(mutant.Id) is not { Count: > 0 } tests)
            {
                done(new(mutant, Fate.NotPassed, null));
                continue;
            }

            worker ??= new("try");
            Tried tried = Ask(worker, mutant, tests, timesAsLong: 4);
            done(tried.Fate == Fate.Survived && passing.IsOnce(mutant.Id) ? AskFresh(mutant, tests) : tried);
            if (tried.Fate == Fate.TimedOut)
            {
                worker.Dispose();
                worker = null;
            }
        }

        worker?.Dispose();
    }

    /// <summary>In a new process nothing is compiled yet, and the tests take several times as long.</summary>
    private static Tried AskFresh(Mutant mutant, IReadOnlyList<(string Test, double Seconds)> tests)
    {
        using WorkerProcess worker = new("try-fresh");
        return Ask(worker, mutant, tests, timesAsLong: 20);
    }

    private static Tried Ask(WorkerProcess worker, Mutant mutant, IReadOnlyList<(string Test, double Seconds)> tests, int timesAsLong)
    {
        int longestS = (int)(LeastS + timesAsLong * tests.Sum(test => test.Seconds));
        if (worker.Ask($"{mutant.Id}\t{longestS}\t{string.Join(';', tests.Select(test => test.Test))}")?.Split('\t') is not [var fate, var by])
        {
            return new(mutant, Fate.TimedOut, null);
        }

        return new(mutant, Enum.Parse<Fate>(fate), by.Length == 0 ? null : by);
    }
}
