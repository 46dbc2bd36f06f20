using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>How far predictions lay from what was found; null where nothing could be compared.</summary>
[Computed]
public sealed record SetErrorsResponse
{
    /// <summary>Ready times compared.</summary>
    /// <example>15</example>
    public required int ReadyTimes { get; init; }

    /// <summary>Mean distance of predicted from true ready time.</summary>
    /// <example>0.62</example>
    public required double? MeanErrorHours { get; init; }

    /// <summary>Mean of predicted less true.</summary>
    /// <example>0.11</example>
    public required double? BiasHours { get; init; }

    /// <summary>Final moistures compared.</summary>
    /// <example>6</example>
    public required int Moistures { get; init; }

    /// <summary>Mean distance of predicted from oven-dried moisture at the end.</summary>
    /// <example>1.2</example>
    public required double? MeanErrorPoints { get; init; }

    /// <summary>Mean of predicted less oven-dried.</summary>
    /// <example>-0.3</example>
    public required double? BiasPoints { get; init; }
}
