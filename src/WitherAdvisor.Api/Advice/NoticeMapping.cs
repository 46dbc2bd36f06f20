using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Fields;
using WitherAdvisor.Plans;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Plans;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Advice;

/// <summary>Limits as answers: fractions become percent, each value gets its unit, both become a sentence.</summary>
internal static class NoticeMapping
{
    public static NoticeResponse ToResponse(LimitNotice notice)
    {
        (string? unit, bool hard) = UnitAndRank(notice.Limit);
        bool isFraction = notice.Limit is LimitKind.TargetMoisture or LimitKind.Spread;
        return new()
        {
            Limit = notice.Limit,
            Hard = hard,
            Unit = unit,
            Allowed = isFraction ? Percent.Of(notice.Allowed) : notice.Allowed,
            Reached = isFraction ? Percent.Of(notice.Reached) : notice.Reached,
            Text = LimitWording.Sentence(Wordbook.English, notice, PersonUnits.Usual),
        };
    }

    private static (string? Unit, bool Hard) UnitAndRank(LimitKind limit) => limit switch
    {
        LimitKind.PlenumDryBulb or LimitKind.LeafTemperature => ("°C", true),
        LimitKind.HeaterCapacity => ("kW", false),
        LimitKind.HygrometricDifference => ("K", true),
        LimitKind.ShortestTimeSincePlucking or LimitKind.LongestTimeSincePlucking => ("h", true),
        LimitKind.TargetMoisture => ("% wet basis", true),
        LimitKind.AmbientAir => (null, true),
        LimitKind.Spread => ("percentage points", false),
        LimitKind.ReadyBy => ("h", false),
        LimitKind.WantedHygrometricDifference => ("K", false),
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, "No such limit."),
    };
}
