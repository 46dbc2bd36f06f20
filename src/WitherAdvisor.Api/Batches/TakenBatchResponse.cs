using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Api.Feeds.Responses;

namespace WitherAdvisor.Api.Batches;

/// <summary>A batch taken in, what is to be said of it beside other lots, and its advice.</summary>
public sealed record TakenBatchResponse
{
    /// <summary>The batch as kept.</summary>
    public required BatchResponse Batch { get; init; }

    /// <summary>Leaf that should be kept apart and is not; empty where all is well.</summary>
    public required IReadOnlyList<LotWarning> Warnings { get; init; }

    /// <summary>The advice made for it, as kept.</summary>
    public required KeptAdviceResponse Kept { get; init; }

    /// <summary>State of the site's feed; null where it has none. Not part of the advice.</summary>
    public required FeedStateResponse? Feed { get; init; }
}
