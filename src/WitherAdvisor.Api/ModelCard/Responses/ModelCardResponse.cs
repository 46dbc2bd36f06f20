using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>What the numbers of an advice rest on.</summary>
[Computed]
public sealed record ModelCardResponse
{
    /// <summary>Version of the model.</summary>
    /// <example>0.1.0</example>
    public required string ModelVersion { get; init; }

    /// <summary>Name of the set of coefficients that is used when a request names none.</summary>
    /// <example>defaults-1</example>
    public required string CoefficientSet { get; init; }

    /// <summary>Every equation as text, with its source.</summary>
    public required IReadOnlyList<EquationResponse> Equations { get; init; }

    /// <summary>The coefficients of leaf, bed and weather.</summary>
    public required IReadOnlyList<CardCoefficientResponse> Coefficients { get; init; }

    /// <summary>How far the truth of one loft may lie from a coefficient or from a stated airflow.</summary>
    public required IReadOnlyList<SpreadResponse> Spreads { get; init; }

    /// <summary>Constants, limits and thresholds.</summary>
    public required IReadOnlyList<ConstantResponse> Constants { get; init; }

    /// <summary>Ranges that the numbers of a request have to lie in.</summary>
    public required IReadOnlyList<RangeResponse> Ranges { get; init; }

    /// <summary>What the model knows nothing of.</summary>
    public required IReadOnlyList<NotKnownResponse> Unknowns { get; init; }

    /// <summary>What the model is held against, and where to find it.</summary>
    public required IReadOnlyList<ModelCheckResponse> Checks { get; init; }

    /// <summary>How well the stated band held on invented batches.</summary>
    public required ReliabilityResponse Reliability { get; init; }

    /// <summary>Which inputs matter most, for an invented wet batch and an invented dry one.</summary>
    public required IReadOnlyList<CardBatchResponse> Sensitivities { get; init; }
}
