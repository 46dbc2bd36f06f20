using System.Text.Json;
using WitherAdvisor.Mutants.Making;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>What became of mutants, a line of JSON for each as it comes: an hour's trying outlives being broken off.</summary>
internal sealed class TriedLog(string path)
{
    private readonly Lock writing = new();

    /// <summary>The last that is known of each; those of which nothing is known are absent.</summary>
    public IReadOnlyList<Tried> Of(IEnumerable<Mutant> mutants)
    {
        Dictionary<Mutant, Tried> last = Lines().GroupBy(one => one.Mutant.Unnumbered()).ToDictionary(times => times.Key, times => times.Last());
        return [.. mutants.Where(mutant => last.ContainsKey(mutant.Unnumbered())).Select(mutant => last[mutant.Unnumbered()] with { Mutant = mutant })];
    }

    /// <summary>Those that no test has noticed yet.</summary>
    public IReadOnlyList<Mutant> NotKilled(IReadOnlyList<Mutant> mutants) =>
        [.. mutants.Except(Of(mutants).Where(one => one.IsKilled).Select(one => one.Mutant))];

    public void Add(Tried one)
    {
        lock (writing)
        {
            File.AppendAllText(path, JsonSerializer.Serialize(one) + '\n');
        }
    }

    private IEnumerable<Tried> Lines() => (File.Exists(path) ? File.ReadLines(path) : []).Select(line => JsonSerializer.Deserialize<Tried>(line)!);
}
