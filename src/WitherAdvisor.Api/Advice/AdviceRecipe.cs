using System.Text.Json;
using WitherAdvisor.Advice;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Advice;

/// <summary>
/// The one way from what went in to what comes out, as JSON. Every advice, kept or not, first or replayed, takes
/// it, so that a kept advice can be made again byte for byte.
/// </summary>
internal static class AdviceRecipe
{
    /// <summary>What went in, as it is kept.</summary>
    public static string Write(AdviceInput input) => JsonSerializer.Serialize(input, JsonRules.Input);

    /// <summary>The answer to what was kept.</summary>
    public static string Make(string keptInput)
    {
        AdviceInput input = Read(keptInput);
        WitherClock clock = new(input.Site.TimeZone, input.Batch.LoadedAt);
        return JsonSerializer.Serialize(AdviceAnswerMapping.ToAnswer(Outcome(input), clock), JsonRules.Answer);
    }

    /// <summary>The same as the domain has it, for pages that show it in a person's units.</summary>
    public static AdviceOutcome Outcome(string keptInput) => Outcome(Read(keptInput));

    /// <summary>What the domain is asked.</summary>
    public static AdviceRequest Request(string keptInput) => AdviceInputMapping.ToDomain(Read(keptInput));

    private static AdviceOutcome Outcome(AdviceInput input) => Advisor.Advise(AdviceInputMapping.ToDomain(input));

    private static AdviceInput Read(string keptInput) =>
        JsonSerializer.Deserialize<AdviceInput>(keptInput, JsonRules.Input)!;
}
