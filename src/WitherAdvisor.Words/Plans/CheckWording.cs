using WitherAdvisor.Plans.Explaining;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Plans;

/// <summary>What a weight off the plan means and what to do about it.</summary>
public static class CheckWording
{
    private const double NoKelvin = 0.05;

    /// <summary>"ready about Tue 22:40 with the air as it is; to be back on time set the plenum 1.5 °C cooler."</summary>
    public static string Sentence(Wordbook words, CheckResponse response, DateTimeOffset loadedAt, WallClock clock, PersonUnits units) =>
        words.Say("check.ready_and_set", ("ready", Ready(words, response.ReadyHour, loadedAt, clock)), ("set", Set(words, response, units)));

    private static string Ready(Wordbook words, double? hour, DateTimeOffset loadedAt, WallClock clock) => hour is { } known
        ? words.Say("check.ready_about", ("time", clock.DayAndClock(WallClock.ToFiveMinutes(loadedAt.AddHours(known)))))
        : words["check.never_ready"];

    private static string Set(Wordbook words, CheckResponse response, PersonUnits units) => response.PlenumDryBulbChangeK switch
    {
        null when response.ReadyHour is null => words["check.advise_again"],
        null => words["check.go_by_that_time"],
        { } small when Math.Abs(small) < NoKelvin => words["check.leave_the_air"],
        { } cooler when cooler < 0 => words.Say("check.set_cooler", ("difference", units.DifferenceText(-cooler))),
        { } warmer => words.Say("check.set_warmer", ("difference", units.DifferenceText(warmer))),
    };
}
