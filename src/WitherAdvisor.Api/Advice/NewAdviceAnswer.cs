using System.Diagnostics.CodeAnalysis;
using WitherAdvisor.Api.Advice.Answers;
using WitherAdvisor.Api.Feeds.Answers;

namespace WitherAdvisor.Api.Advice;

/// <summary>An advice just made and kept, and what is to be said beside it.</summary>
public sealed record NewAdviceAnswer : KeptAdviceAnswer
{
    [SetsRequiredMembers]
    public NewAdviceAnswer(KeptAdviceAnswer kept, FeedStateAnswer? feed)
        : base(kept) => Feed = feed;

    /// <summary>How it stands with the site's feed; null where it has none. No part of the advice.</summary>
    public FeedStateAnswer? Feed { get; }
}
