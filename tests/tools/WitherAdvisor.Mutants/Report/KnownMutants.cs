using System.Text.Json;

namespace WitherAdvisor.Mutants.Report;

/// <summary>What is known of single mutants before they are tried, by <see cref="Making.Mutant.Name"/>.</summary>
/// <param name="Canaries">Mutants that must be killed: should one survive, the trying itself is broken.</param>
/// <param name="Equivalent">Mutants that change no answer, each with the reason.</param>
public sealed record KnownMutants(IReadOnlyList<string> Canaries, IReadOnlyDictionary<string, string> Equivalent)
{
    public static KnownMutants Read(string path) => JsonSerializer.Deserialize<KnownMutants>(File.ReadAllBytes(path))!;
}
