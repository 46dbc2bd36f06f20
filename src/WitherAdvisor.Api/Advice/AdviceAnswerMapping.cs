using WitherAdvisor.Advice;
using WitherAdvisor.Api.Advice.Answers;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Plans.Explaining;

namespace WitherAdvisor.Api.Advice;

/// <summary>From the domain's outcome to the answer.</summary>
internal static class AdviceAnswerMapping
{
    public static AdviceAnswer ToAnswer(AdviceOutcome outcome, WitherClock clock)
    {
        var advised = outcome as AdviceOutcome.Advised;
        return new()
        {
            Status = advised is null ? AdviceStatus.CannotAdvise : AdviceStatus.Advised,
            Plan = advised is null ? null : PlanMapping.ToAnswer(advised, clock),
            Refusal = outcome is AdviceOutcome.CannotAdvise refused ? Refusal(refused) : null,
            Notices = [.. (advised?.Notices ?? []).Select(NoticeMapping.ToAnswer)],
            Curve = [.. (advised?.Curve ?? []).Select(point => BedMapping.ToAnswer(point, clock))],
            Leaf = outcome.Leaf is { } leaf ? LeafMapping.ToAnswer(leaf) : null,
            Spell = outcome.Leaf is { } known ? LeafMapping.ToAnswer(known.Spell) : null,
            Effects = [.. (advised?.Effects ?? []).Select(Effect)],
            Checks = [.. (advised?.Checks ?? []).Select(check => BedMapping.ToAnswer(check, clock))],
            Assumptions = [.. outcome.Assumptions.Select(LeafMapping.ToAnswer)],
            Cautions = advised is null ? CautionMapping.All : [.. CautionMapping.All, CautionMapping.HoldTheDifference],
            CoefficientSet = outcome.CoefficientSet,
            ModelVersion = ModelVersion.Current,
            CandidatesSimulated = outcome.CandidatesSimulated,
        };
    }

    private static RefusalAnswer Refusal(AdviceOutcome.CannotAdvise refused) => new()
    {
        Binding = [.. refused.Binding.Select(NoticeMapping.ToAnswer)],
        Reliefs = [.. refused.Reliefs.Select(ReliefMapping.ToAnswer)],
    };

    private static EffectAnswer Effect(FactorEffect effect) => new()
    {
        Code = effect.Code,
        StopChangeHours = effect.HoursChange,
        PlenumDryBulbChangeK = effect.PlenumDryBulbChangeK,
        TurnIntervalHours = effect.TurnIntervalHours,
    };
}
