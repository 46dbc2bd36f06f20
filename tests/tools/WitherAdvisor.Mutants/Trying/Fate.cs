namespace WitherAdvisor.Mutants.Trying;

/// <summary>What became of a mutant.</summary>
public enum Fate
{
    /// <summary>A test noticed it.</summary>
    Killed,

    /// <summary>It went on for ever, or took the process down.</summary>
    TimedOut,

    /// <summary>Every test passed with it.</summary>
    Survived,

    /// <summary>No test passes its place.</summary>
    NotPassed,
}
