namespace WitherAdvisor.Api.Advice.Answers;

/// <summary>Why there is no plan, and what would make one possible.</summary>
public sealed record RefusalAnswer
{
    /// <summary>Limits that stand in the way.</summary>
    public required IReadOnlyList<NoticeAnswer> Binding { get; init; }

    /// <summary>What would make a plan possible; where it names an amount, that was tried.</summary>
    public required IReadOnlyList<ReliefAnswer> Reliefs { get; init; }
}
