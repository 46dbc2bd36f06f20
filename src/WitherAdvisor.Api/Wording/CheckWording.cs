using WitherAdvisor.Plans.Explaining;

namespace WitherAdvisor.Api.Wording;

/// <summary>What a weight off the plan means and what to do about it.</summary>
public static class CheckWording
{
    private const double NoKelvin = 0.05;

    /// <summary>"Ready about Tue 22:40 on this air; to be back on time set the plenum 1.5 °C cooler."</summary>
    public static string Sentence(CheckResponse response, DateTimeOffset loadedAt, WallClock clock, PersonUnits units) =>
        $"{Ready(response.ReadyHour, loadedAt, clock)}; {Set(response, units)}.";

    private static string Ready(double? hour, DateTimeOffset loadedAt, WallClock clock) => hour is { } known
        ? $"ready about {clock.DayAndClock(WallClock.ToFiveMinutes(loadedAt.AddHours(known)))} on this air"
        : "on this air it does not get ready";

    private static string Set(CheckResponse response, PersonUnits units) => response.PlenumDryBulbChangeK switch
    {
        null when response.ReadyHour is null => "advise again with what was weighed",
        null => "leave the air and go by that time",
        { } small when Math.Abs(small) < NoKelvin => "leave the air as it is",
        { } cooler when cooler < 0 => $"to be back on time set the plenum {units.DifferenceText(-cooler)} cooler",
        { } warmer => $"to be back on time set the plenum {units.DifferenceText(warmer)} warmer",
    };
}
