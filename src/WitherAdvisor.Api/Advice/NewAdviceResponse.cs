using System.Diagnostics.CodeAnalysis;
using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Api.Feeds.Responses;

namespace WitherAdvisor.Api.Advice;

/// <summary>An advice just made and kept, and what is to be said beside it.</summary>
public sealed record NewAdviceResponse : KeptAdviceResponse
{
    [SetsRequiredMembers]
    public NewAdviceResponse(KeptAdviceResponse kept, FeedStateResponse? feed)
        : base(kept) => Feed = feed;

    /// <summary>State of the site's feed; null where it has none. Not part of the advice.</summary>
    public FeedStateResponse? Feed { get; }
}
