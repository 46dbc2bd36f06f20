using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Api.Wording;

/// <summary>A maker's verdicts in words.</summary>
public static class OutcomeWording
{
    public static string Name(WitherVerdict verdict) => verdict switch
    {
        WitherVerdict.Under => "under-withered",
        WitherVerdict.Right => "right",
        WitherVerdict.Over => "over-withered",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "No words for this verdict."),
    };

    public static string Name(EvennessVerdict evenness) => evenness switch
    {
        EvennessVerdict.Even => "even",
        EvennessVerdict.Uneven => "uneven",
        _ => throw new ArgumentOutOfRangeException(nameof(evenness), evenness, "No words for this verdict."),
    };
}
