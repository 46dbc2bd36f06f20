namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>Why there is no plan, and what would make one possible.</summary>
public sealed record RefusalResponse
{
    /// <summary>Limits that stand in the way.</summary>
    public required IReadOnlyList<NoticeResponse> Binding { get; init; }

    /// <summary>What would make a plan possible; where it names an amount, that was tried.</summary>
    public required IReadOnlyList<ReliefResponse> Reliefs { get; init; }
}
