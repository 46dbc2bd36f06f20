using WitherAdvisor.Mutants.Making;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>A mutant and what became of it.</summary>
/// <param name="By">The test that noticed it; null where none did.</param>
public sealed record Tried(Mutant Mutant, Fate Fate, string? By)
{
    public bool IsKilled => Fate is Fate.Killed or Fate.TimedOut;
}
