using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Writing;

/// <summary>What the fan of a trough draws.</summary>
/// <remarks>
/// Power goes with the cube of the speed: the fan laws (ASHRAE Handbook – HVAC Systems and Equipment, ch. Fans; from memory).
/// </remarks>
internal static class FanPower
{
    /// <summary>kWh over the stages; null where nobody said what the fan draws.</summary>
    public static double? KWh(Trough trough, IReadOnlyList<PlanStage> stages) =>
        trough.FanKW * stages.Sum(stage => (stage.ToHour - stage.FromHour) * stage.RunShare * Math.Pow(stage.FanShare, 3));
}
