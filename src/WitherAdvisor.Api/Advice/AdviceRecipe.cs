using System.Text.Json;
using WitherAdvisor.Advice;
using WitherAdvisor.Api.Http;

namespace WitherAdvisor.Api.Advice;

/// <summary>
/// The one way from what went in to what comes out, as bytes. Every advice, kept or not, first or replayed, takes
/// it, so that a kept advice can be made again byte for byte.
/// </summary>
internal static class AdviceRecipe
{
    /// <summary>What went in, as it is kept.</summary>
    public static byte[] Write(AdviceInput input) => JsonSerializer.SerializeToUtf8Bytes(input, JsonRules.Input);

    /// <summary>The answer to what was kept.</summary>
    public static byte[] Make(ReadOnlySpan<byte> keptInput)
    {
        AdviceInput input = JsonSerializer.Deserialize<AdviceInput>(keptInput, JsonRules.Input)!;
        AdviceOutcome outcome = Advisor.Advise(AdviceInputMapping.ToDomain(input));
        WitherClock clock = new(input.Site.TimeZone, input.Batch.LoadedAt);
        return JsonSerializer.SerializeToUtf8Bytes(AdviceAnswerMapping.ToAnswer(outcome, clock), JsonRules.Answer);
    }

    /// <summary>The answer to a request that is not kept.</summary>
    public static byte[] Make(AdviceInput input) => Make(Write(input));
}
