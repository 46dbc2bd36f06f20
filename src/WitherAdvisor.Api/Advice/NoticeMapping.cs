using WitherAdvisor.Advice;
using WitherAdvisor.Api.Advice.Answers;
using WitherAdvisor.Api.Input;

namespace WitherAdvisor.Api.Advice;

/// <summary>Limits as answers: fractions become percent, each value gets its unit, both become a sentence.</summary>
internal static class NoticeMapping
{
    public static NoticeAnswer ToAnswer(LimitNotice notice)
    {
        (string name, string? unit, bool hard) = Describe(notice.Limit);
        bool isFraction = notice.Limit is LimitKind.TargetMoisture or LimitKind.Spread;
        double? allowed = isFraction ? Percent.Of(notice.Allowed) : notice.Allowed;
        double? reached = isFraction ? Percent.Of(notice.Reached) : notice.Reached;
        return new()
        {
            Limit = notice.Limit,
            Hard = hard,
            Unit = unit,
            Allowed = allowed,
            Reached = reached,
            Text = Sentence(name, unit, allowed, reached),
        };
    }

    private static (string Name, string? Unit, bool Hard) Describe(LimitKind limit) => limit switch
    {
        LimitKind.PlenumDryBulb => ("Plenum dry bulb", "°C", true),
        LimitKind.HygrometricDifference => ("Hygrometric difference under the mesh", "K", true),
        LimitKind.ShortestTimeSincePlucking => ("Shortest time from the last plucking to rolling", "h", true),
        LimitKind.LongestTimeSincePlucking => ("Longest time from the first plucking to rolling", "h", true),
        LimitKind.TargetMoisture => ("Moisture at the stop", "% wet basis", true),
        LimitKind.Spread => ("Spread of moisture between layers", "percentage points", false),
        LimitKind.ReadyBy => ("Wanted ready-by time, from loading", "h", false),
        LimitKind.WantedHygrometricDifference => ("The site's wanted hygrometric difference", "K", false),
        LimitKind.AmbientAir => ("No ambient air is known to plan with", null, true),
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, "No such limit."),
    };

    private static string Sentence(string name, string? unit, double? allowed, double? reached) => (allowed, reached) switch
    {
        (null, null) => $"{name}.",
        ({ } most, null) => $"{name}: {most:0.##} {unit} wanted or allowed, no plan comes to it.",
        (null, { } came) => $"{name}: {came:0.##} {unit} reached.",
        ({ } most, { } came) => $"{name}: {most:0.##} {unit} wanted or allowed, {came:0.##} {unit} reached.",
    };
}
