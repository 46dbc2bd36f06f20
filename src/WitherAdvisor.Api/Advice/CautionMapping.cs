using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Plans;

namespace WitherAdvisor.Api.Advice;

/// <summary>The cautions as answers: the same words as on the pages.</summary>
internal static class CautionMapping
{
    public static IReadOnlyList<CautionResponse> All { get; } =
    [
        new() { Code = "a_person_decides", Text = Cautions.Standing(Wordbook.English) },
        .. Cautions.All(Wordbook.English).Select(caution => new CautionResponse { Code = caution.Code, Text = caution.Full }),
    ];

    /// <summary>Of a plan whose air is held by what the night really is.</summary>
    public static CautionResponse HoldTheDifference { get; } = new() { Code = "hold_the_difference", Text = Cautions.HoldTheDifference(Wordbook.English) };
}
