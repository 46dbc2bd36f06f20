namespace WitherAdvisor.Api.Http;

/// <summary>A value that was read from the request, or why it was refused.</summary>
internal class Refusable<T>(T? value, ProblemResult? refusal) : IRefusable
    where T : class
{
    public ProblemResult? Refusal { get; } = refusal;

    public T Value => value ?? throw new InvalidOperationException("A refused argument has no value.");
}
