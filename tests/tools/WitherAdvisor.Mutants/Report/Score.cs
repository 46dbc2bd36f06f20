using System.Text;
using WitherAdvisor.Mutants.Making;
using WitherAdvisor.Mutants.Trying;

namespace WitherAdvisor.Mutants.Report;

/// <summary>How many of the mutants the tests noticed.</summary>
internal sealed class Score(IReadOnlyList<Mutant> mutants, TriedLog log, KnownMutants known)
{
    private const double Wanted = 0.90;

    private readonly IReadOnlyList<Tried> tried = log.Of(mutants);

    /// <summary>As a document.</summary>
    public string Write()
    {
        StringBuilder text = new();
        text.Append("# Mutation score of the pure library\n\nWritten by `tests/mutate`; how, and what it leaves out, stands in DEVELOPERS.md.\n\n");
        text.Append("| folder | mutants | killed | timed out | survived | passed by no test | score | of those that change an answer |\n|---|---|---|---|---|---|---|---|\n");
        foreach (IGrouping<string, Tried> folder in tried.GroupBy(one => one.Mutant.Folder).OrderBy(folder => folder.Key))
        {
            text.Append(Row(folder.Key, [.. folder]));
        }

        text.Append(Row("**all**", tried)).Append(Survivors());
        return text.ToString();
    }

    /// <summary>What is wrong: mutants not tried, a canary that lives, a reason given for a mutant that a test noticed, too low a score.</summary>
    public IReadOnlyList<string> Complaints() =>
    [
        .. tried.Count < mutants.Count ? [$"{mutants.Count - tried.Count} mutants were not tried"] : Array.Empty<string>(),
        .. known.Canaries.Where(name => !tried.Any(one => one.Mutant.Name == name && one.IsKilled)).Select(name => $"canary not killed: {name}"),
        .. tried.Where(one => one.IsKilled && known.Equivalent.ContainsKey(one.Mutant.Name)).Select(one => $"said to change nothing, yet killed: {one.Mutant.Name}"),
        .. Share(tried) < Wanted ? [$"{Share(tried):P1} killed, {Wanted:P0} wanted"] : Array.Empty<string>(),
    ];

    private static double Share(IReadOnlyCollection<Tried> some) => (double)some.Count(one => one.IsKilled) / some.Count;

    private string Row(string name, IReadOnlyList<Tried> some)
    {
        int Count(Fate fate) => some.Count(one => one.Fate == fate);
        IReadOnlyList<Tried> changing = [.. some.Where(one => one.IsKilled || !known.Equivalent.ContainsKey(one.Mutant.Name))];
        return $"| {name} | {some.Count} | {Count(Fate.Killed)} | {Count(Fate.TimedOut)} | {Count(Fate.Survived)} | {Count(Fate.NotPassed)} | {Share(some):P1} | {Share(changing):P1} |\n";
    }

    private string Survivors()
    {
        StringBuilder text = new("\n## Not killed\n\n");
        foreach (Tried one in tried.Where(one => !one.IsKilled))
        {
            string why = known.Equivalent.GetValueOrDefault(one.Mutant.Name, one.Fate == Fate.NotPassed ? "no test passes it" : "open");
            text.Append($"- `{one.Mutant.File}` {one.Mutant.Line}: `{one.Mutant.Was}` → `{one.Mutant.Becomes}`: {why}\n");
        }

        return text.ToString();
    }
}
