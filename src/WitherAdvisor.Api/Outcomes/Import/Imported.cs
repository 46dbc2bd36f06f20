using WitherAdvisor.Api.Http;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>What came of an import, or why there was none.</summary>
internal sealed record Imported(ImportResponse? Answer, ProblemResult? Refusal)
{
    public static Imported Refuse(ProblemResult refusal) => new(null, refusal);
}
