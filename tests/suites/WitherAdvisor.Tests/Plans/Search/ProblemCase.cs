using WitherAdvisor.Ambient;
using WitherAdvisor.Plans.Search;

namespace WitherAdvisor.Tests.Plans.Search;

/// <summary>A problem that a property test can name in public.</summary>
public sealed class ProblemCase
{
    internal ProblemCase(PlanProblem problem) => Problem = problem;

    internal PlanProblem Problem { get; }

    public override string ToString() => $"{Problem} air {Problem.Ambient.At(0)} to {Problem.Ambient.At(12)}";
}
