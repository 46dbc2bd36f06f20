using WitherAdvisor.Advice;
using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Demo;
using WitherAdvisor.Api.Tests.Wording;
using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft.Records.Opening;
using WitherAdvisor.Readings;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Weather;
using Xunit;

namespace WitherAdvisor.Api.Tests.Records;

public sealed class KeptAssumptionTests
{
    private static readonly AdviceInputs Inputs = AdviceRequestMapping.ToDomain(InventedAdvice.Input("rain-wet"));
    private static readonly Assumption[] All =
        [.. ClosedFamilyJson.Cases(typeof(Assumption)).Where(one => one != typeof(Assumption.SaidThen)).Select(one => (Assumption)Example.Of(one))];

    [Fact]
    public void Every_assumption_comes_back_as_it_was_said_and_as_what_it_was_made_of() => Assert.Equal(
        All.Select(one => new Assumption.SaidThen(one.Code, AssumptionWording.Sentence(Wordbook.English, one), one)),
        Open(Kept()).Outcome.Assumptions);

    [Fact]
    public void Nothing_that_is_kept_beside_the_answer_holds_a_sentence() =>
        Assert.All(All, one => Assert.DoesNotContain(AssumptionWording.Sentence(Wordbook.English, one), Kept().OutcomeJson!, StringComparison.Ordinal));

    [Fact]
    public void A_sentence_that_was_altered_by_hand_is_what_is_shown()
    {
        KeptAdvice kept = Kept();
        KeptAdvice altered = kept with { AnswerJson = kept.AnswerJson.Replace("Wind is not known", "Wind was never read", StringComparison.Ordinal) };

        Assert.Contains(
            Open(altered).Outcome.Assumptions,
            one => AssumptionWording.Sentence(Wordbook.English, one).StartsWith("Wind was never read", StringComparison.Ordinal));
    }

    private static KeptAdvice Kept()
    {
        AdviceOutcome outcome = Advisor.Advise(Inputs.Request) with { Assumptions = All };
        return AdviceRecords.Keep("a-1", "b-1", DateTimeOffset.UnixEpoch, "0.0.0", Inputs, outcome, new ResponseWriter().Write(Inputs, outcome));
    }

    private static AdviceRecord Open(KeptAdvice kept) => Assert.IsType<OpenedRecord.Readable>(AdviceRecords.Open(kept)).Record;
}
