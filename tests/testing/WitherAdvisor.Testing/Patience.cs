namespace WitherAdvisor.Testing;

/// <summary>
/// How long anything here is waited for that must come. It is for what hangs, never a measure of speed: a busy machine is no
/// fault. Whoever waits for progress looks at the progress itself.
/// </summary>
public static class Patience
{
    public const int Milliseconds = 5 * 60 * 1_000;

    public static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(Milliseconds);
}
