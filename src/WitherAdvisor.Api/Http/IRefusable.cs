namespace WitherAdvisor.Api.Http;

/// <summary>An argument of a handler that was read from the request and may be refused.</summary>
internal interface IRefusable
{
    /// <summary>Null where it is good.</summary>
    ProblemResult? Refusal { get; }
}
