using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>What to judge a proposal by.</summary>
[Computed]
public sealed record ReportResponse
{
    /// <summary>The set in use that it is compared with; null for the defaults.</summary>
    /// <example>learned-1</example>
    public required string? ComparedWith { get; init; }

    /// <summary>Outcomes that counted.</summary>
    /// <example>60</example>
    public required int Used { get; init; }

    /// <summary>Outcomes that could not be used, and why.</summary>
    public required IReadOnlyList<LeftOutResponse> LeftOut { get; init; }

    /// <summary>Outcomes that hardly counted, least sound first.</summary>
    public required IReadOnlyList<DoubtfulResponse> Doubtful { get; init; }

    /// <summary>Each before and after.</summary>
    public required IReadOnlyList<LearnedResponse> Coefficients { get; init; }

    /// <summary>Pairs that the outcomes cannot separate.</summary>
    public required IReadOnlyList<AlikeResponse> Confounded { get; init; }

    /// <summary>By cultivar and standard.</summary>
    public required IReadOnlyList<GroupResponse> Groups { get; init; }

    /// <summary>Null where there were too few outcomes to hold any out.</summary>
    public required HoldOutResponse? HoldOut { get; init; }

    /// <summary>Whether to adopt it.</summary>
    public required VerdictResponse Verdict { get; init; }

    /// <summary>Each outcome used, oldest first.</summary>
    public required IReadOnlyList<ResidualResponse> Residuals { get; init; }

    /// <summary>By spell, hour of loading and cultivar.</summary>
    public required IReadOnlyList<ResidualSummaryResponse> ResidualSummaries { get; init; }

    /// <summary>Null where too few months had outcomes.</summary>
    public required DriftResponse? Drift { get; init; }

    /// <summary>What would teach most, best first.</summary>
    public required IReadOnlyList<NextMeasurementResponse> NextMeasurements { get; init; }

    /// <summary>Standard deviation of what is left over, over the stated errors; at least 1.</summary>
    /// <example>1.1</example>
    public required double ResidualScaleFraction { get; init; }

    /// <summary>Steps of the fit.</summary>
    /// <example>9</example>
    public required int Iterations { get; init; }

    /// <summary>Whether its last step was small.</summary>
    /// <example>true</example>
    public required bool Converged { get; init; }
}
