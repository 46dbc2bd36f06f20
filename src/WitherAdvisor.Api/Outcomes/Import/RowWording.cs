using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Outcomes;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Outcomes;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>How rows of an import are told.</summary>
/// <param name="Words">In what language.</param>
/// <param name="Warning">What looks odd.</param>
internal sealed record RowWording(Wordbook Words, Func<OutcomeOddity, ProblemWarning> Warning)
{
    /// <summary>As requests are answered: in English, places by the names of fields.</summary>
    public static RowWording OfRequests { get; } = new(Wordbook.English, OutcomeRefusals.Warning);

    /// <summary>In the words of a page, places as its forms name them.</summary>
    public static RowWording OfPages(Wordbook words) =>
        new(words, oddity => OutcomeRefusals.Warning(oddity) with { Text = OddityWording.Sentence(words, oddity) });
}
