using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Explaining;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Advice;

/// <summary>An advice, or a refusal that says which limit binds and what would relieve it.</summary>
/// <param name="Leaf">What the leaf was taken to be; null where not even that could be said.</param>
/// <param name="Assumptions">What was not known and what was taken in its place.</param>
/// <param name="CoefficientSet">Name of the set that made it.</param>
/// <param name="CandidatesSimulated">Beds simulated for this answer: for the search, the effects and the cases that may be true.</param>
public abstract record AdviceOutcome(
    LeafEstimate? Leaf,
    IReadOnlyList<Assumption> Assumptions,
    string CoefficientSet,
    int CandidatesSimulated)
{
    /// <summary>A plan: within every hard limit, or the least bad one where none can be kept.</summary>
    /// <param name="Plan">What to set, for how long, when to turn, when to stop.</param>
    /// <param name="Curve">How the bed is expected to dry under it.</param>
    /// <param name="ReadyHours">Hours from loading to target moisture, with the plan's air kept on.</param>
    /// <param name="FinalMoistureWetBasis">Moisture of the bed's mean when the plan stops, wet basis.</param>
    /// <param name="Effects">How the plan would differ without each factor.</param>
    /// <param name="Checks">When to weigh, what to expect, what to do if it is not so.</param>
    /// <param name="Notices">Limits that shaped the plan, and soft wishes it could not meet.</param>
    /// <param name="Reliefs">What would meet a wish that the plan could not, each tried by simulation.</param>
    public sealed record Advised(
        WitherPlan Plan,
        IReadOnlyList<CurvePoint> Curve,
        Percentiles ReadyHours,
        Percentiles FinalMoistureWetBasis,
        IReadOnlyList<FactorEffect> Effects,
        IReadOnlyList<WeighingCheck> Checks,
        IReadOnlyList<LimitNotice> Notices,
        IReadOnlyList<Relief> Reliefs,
        LeafEstimate KnownLeaf,
        IReadOnlyList<Assumption> Assumptions,
        string CoefficientSet,
        int CandidatesSimulated)
        : AdviceOutcome(KnownLeaf, Assumptions, CoefficientSet, CandidatesSimulated)
    {
        /// <summary>The hard limits that cannot be kept whatever is done; none where the plan keeps them all.</summary>
        public IReadOnlyList<LimitNotice> Broken { get; init; } = [];

        /// <summary>Whether this is only the least bad of what can be done.</summary>
        public bool IsLeastBad => Broken.Count > 0;
    }

    /// <summary>No plan at all: too little is known.</summary>
    /// <param name="Binding">What stands in the way.</param>
    /// <param name="Reliefs">What would make a plan possible, each tried by simulation where it names a number.</param>
    public sealed record CannotAdvise(
        IReadOnlyList<LimitNotice> Binding,
        IReadOnlyList<Relief> Reliefs,
        LeafEstimate? Leaf,
        IReadOnlyList<Assumption> Assumptions,
        string CoefficientSet,
        int CandidatesSimulated)
        : AdviceOutcome(Leaf, Assumptions, CoefficientSet, CandidatesSimulated);
}
