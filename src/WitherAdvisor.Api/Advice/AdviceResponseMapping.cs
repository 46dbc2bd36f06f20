using WitherAdvisor.Advice;
using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Plans.Explaining;

namespace WitherAdvisor.Api.Advice;

/// <summary>From the domain's outcome to the answer.</summary>
internal static class AdviceResponseMapping
{
    public static AdviceResponse ToResponse(AdviceOutcome outcome, WitherClock clock)
    {
        var advised = outcome as AdviceOutcome.Advised;
        return new()
        {
            Status = advised is null ? AdviceStatus.CannotAdvise : advised.IsLeastBad ? AdviceStatus.LeastBad : AdviceStatus.Advised,
            Plan = advised is null ? null : PlanMapping.ToResponse(advised, clock),
            Refusal = outcome is AdviceOutcome.CannotAdvise refused ? Refusal(refused) : null,
            Broken = [.. (advised?.Broken ?? []).Select(NoticeMapping.ToResponse)],
            Reliefs = [.. (advised?.Reliefs ?? []).Select(ReliefMapping.ToResponse)],
            Notices = [.. (advised?.Notices ?? []).Select(NoticeMapping.ToResponse)],
            Curve = [.. (advised?.Curve ?? []).Select(point => BedMapping.ToResponse(point, clock))],
            Leaf = outcome.Leaf is { } leaf ? LeafMapping.ToResponse(leaf) : null,
            Spell = outcome.Leaf is { } known ? LeafMapping.ToResponse(known.Spell) : null,
            Effects = [.. (advised?.Effects ?? []).Select(Effect)],
            Checks = [.. (advised?.Checks ?? []).Select(check => BedMapping.ToResponse(check, clock))],
            Assumptions = [.. outcome.Assumptions.Select(LeafMapping.ToResponse)],
            Cautions = advised is null ? CautionMapping.All : [.. CautionMapping.All, CautionMapping.HoldTheDifference],
            CoefficientSet = outcome.CoefficientSet,
            ModelVersion = ModelVersion.Current,
            CandidatesSimulated = outcome.CandidatesSimulated,
        };
    }

    private static RefusalResponse Refusal(AdviceOutcome.CannotAdvise refused) => new()
    {
        Binding = [.. refused.Binding.Select(NoticeMapping.ToResponse)],
        Reliefs = [.. refused.Reliefs.Select(ReliefMapping.ToResponse)],
    };

    private static EffectResponse Effect(FactorEffect effect) => new()
    {
        Code = effect.Code,
        StopChangeHours = effect.HoursChange,
        PlenumDryBulbChangeK = effect.PlenumDryBulbChangeK,
        Turns = effect.Turns,
    };
}
