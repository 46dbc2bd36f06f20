namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>Advice for a batch: a plan, or why there is none. The service advises; a person sets the plant.</summary>
public sealed record AdviceResponse
{
    /// <summary>Whether there is a plan.</summary>
    /// <example>advised</example>
    public required AdviceStatus Status { get; init; }

    /// <summary>What to set, for how long, when to turn, when to stop; null where too little is known for one.</summary>
    public required PlanResponse? Plan { get; init; }

    /// <summary>Which limits stand in the way and what would relieve them; null where there is a plan.</summary>
    public required RefusalResponse? Refusal { get; init; }

    /// <summary>Hard limits that the plan breaks, since none can be kept whatever is done; empty where it keeps them all.</summary>
    public required IReadOnlyList<NoticeResponse> Broken { get; init; }

    /// <summary>What would keep a limit, or meet a wish that the plan misses.</summary>
    public required IReadOnlyList<ReliefResponse> Reliefs { get; init; }

    /// <summary>Limits that shaped the plan, and wishes it could not meet.</summary>
    public required IReadOnlyList<NoticeResponse> Notices { get; init; }

    /// <summary>How the bed is expected to dry; empty without a plan.</summary>
    public required IReadOnlyList<CurvePointResponse> Curve { get; init; }

    /// <summary>What the leaf was taken to be, and why; null where not even that could be said.</summary>
    public required LeafResponse? Leaf { get; init; }

    /// <summary>The weather the leaf grew in; null where nothing could be said.</summary>
    public required SpellResponse? Spell { get; init; }

    /// <summary>How the plan would differ without each factor.</summary>
    public required IReadOnlyList<EffectResponse> Effects { get; init; }

    /// <summary>When to weigh, what to expect, what to do if it is not so.</summary>
    public required IReadOnlyList<WeighingCheckResponse> Checks { get; init; }

    /// <summary>What was not known, and what was taken in its place.</summary>
    public required IReadOnlyList<AssumptionResponse> Assumptions { get; init; }

    /// <summary>What everyone at a trough must know.</summary>
    public required IReadOnlyList<CautionResponse> Cautions { get; init; }

    /// <summary>Name of the set of coefficients that made it.</summary>
    /// <example>defaults-1</example>
    public required string CoefficientSet { get; init; }

    /// <summary>Version of the model that made it.</summary>
    /// <example>0.1.0</example>
    public required string ModelVersion { get; init; }

    /// <summary>Beds simulated for this answer: for the search, the effects and the cases that may be true.</summary>
    /// <example>180</example>
    public required int CandidatesSimulated { get; init; }
}
