using System.Diagnostics;
using WitherAdvisor.Mutants.Making;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>Tries a mutant against the tests that pass its place, until one of them notices.</summary>
internal sealed class Trial(MutantSwitch mutants)
{
    private static readonly TimeSpan ToWindDown = TimeSpan.FromSeconds(5);

    /// <summary>A test that takes longer waits for its turn, however often it noticed: tried first, it would hold up every mutant.</summary>
    private static readonly TimeSpan Quick = TimeSpan.FromSeconds(0.1);

    private readonly LinkedList<string> recent = new();

    /// <summary>Runs on where the last loop would not end.</summary>
    public bool IsStuck { get; private set; }

    /// <summary>What became of it.</summary>
    /// <param name="mutant">Its number.</param>
    /// <param name="longest">After which it is taken for endless.</param>
    /// <param name="cases">All tests, asked for with the mutant acting.</param>
    /// <param name="passing">Names of those that pass its place, in the order to try them.</param>
    public (Fate Fate, string? By) Of(int mutant, TimeSpan longest, Func<IReadOnlyDictionary<string, TestCase>> cases, IReadOnlyList<string> passing)
    {
        string? by = null;
        bool late = false;
        Thread trying = new(() => by = FirstFailure(cases, passing, () => late));
        mutants.Turn(mutant);
        trying.Start();
        if (trying.Join(longest))
        {
            mutants.Off();
            return by is null ? (Fate.Survived, null) : (Fate.Killed, by);
        }

        // Most loops end by themselves once the mutant that keeps them going is off.
        late = true;
        mutants.Off();
        IsStuck = !trying.Join(ToWindDown);
        return (Fate.TimedOut, null);
    }

    private string? FirstFailure(Func<IReadOnlyDictionary<string, TestCase>> cases, IReadOnlyList<string> passing, Func<bool> late)
    {
        IReadOnlyDictionary<string, TestCase> all = cases();
        foreach (string name in InOrder(passing).TakeWhile(_ => !late()))
        {
            long start = Stopwatch.GetTimestamp();

            // Data made by a mutated library may be one row short: that was noticed, too.
            string? failure = all.TryGetValue(name, out TestCase? test) ? test.Failure() : "no such case any more";
            if (failure is not null && !late())
            {
                Remember(name, Stopwatch.GetElapsedTime(start));
                return $"{name}: {failure}";
            }
        }

        return null;
    }

    /// <summary>What noticed the last mutants first: neighbours are noticed by the same.</summary>
    private IEnumerable<string> InOrder(IReadOnlyList<string> passing) => recent.Where(passing.Contains).ToList().Concat(passing).Distinct();

    private void Remember(string name, TimeSpan took)
    {
        if (took > Quick)
        {
            return;
        }

        const int most = 4;
        recent.Remove(name);
        recent.AddFirst(name);
        if (recent.Count > most)
        {
            recent.RemoveLast();
        }
    }
}
