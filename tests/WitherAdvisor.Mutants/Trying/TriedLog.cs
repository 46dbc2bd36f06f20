using System.Text.Json;
using WitherAdvisor.Mutants.Making;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>What became of mutants, a line of JSON for each as it comes: an hour's trying outlives being broken off.</summary>
internal sealed class TriedLog(string path)
{
    private readonly Lock writing = new();

    /// <summary>The last that is known of each.</summary>
    public IReadOnlyList<Tried> Read() =>
    [
        .. (File.Exists(path) ? File.ReadLines(path) : [])
            .Select(line => JsonSerializer.Deserialize<Tried>(line)!)
            .GroupBy(one => one.Mutant.Id, (_, times) => times.Last())
            .OrderBy(one => one.Mutant.Id),
    ];

    /// <summary>Those that no test has noticed yet.</summary>
    public IReadOnlyList<Mutant> NotKilled(IEnumerable<Mutant> mutants)
    {
        HashSet<int> killed = [.. Read().Where(one => one.IsKilled).Select(one => one.Mutant.Id)];
        return [.. mutants.Where(mutant => !killed.Contains(mutant.Id))];
    }

    public void Add(Tried one)
    {
        lock (writing)
        {
            File.AppendAllText(path, JsonSerializer.Serialize(one) + '\n');
        }
    }
}
