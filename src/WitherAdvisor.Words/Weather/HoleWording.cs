using WitherAdvisor.Review;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Weather;

/// <summary>What is missing of the weather, in words; quantities that miss the same hours share a sentence.</summary>
public static class HoleWording
{
    /// <summary>More would be read by nobody: the newest are told and the others counted.</summary>
    private const int Most = 8;

    /// <summary>Newest first.</summary>
    public static IReadOnlyList<string> Sentences(Wordbook words, IReadOnlyList<WeatherHole> holes, DateTimeOffset now, WallClock clock)
    {
        IGrouping<(DateTimeOffset From, DateTimeOffset To, ValueStanding Instead), WeatherHole>[] stretches =
        [
            .. holes.GroupBy(hole => (hole.From, hole.To, hole.Instead)).OrderByDescending(stretch => stretch.Key.To),
        ];
        IEnumerable<string> told = stretches.Take(Most).Select(stretch => Sentence(words, [.. stretch], now, clock));
        int others = stretches.Length - Most;
        return others > 0 ? [.. told, words.Say("hole.others", ("count", others))] : [.. told];
    }

    private static string Sentence(Wordbook words, List<WeatherHole> holes, DateTimeOffset now, WallClock clock)
    {
        WeatherHole first = holes[0];
        string key = first.Instead == ValueStanding.Forecast ? "hole.forecast_instead"
            : first.From >= now ? "hole.not_forecast"
            : "hole.not_known";
        return words.Say(
            key,
            ("quantities", Codes.Sentence(string.Join(", ", holes.Select(hole => words.Name(hole.Quantity))))),
            ("from", clock.DateAndClock(first.From)),
            ("to", clock.DayAndClock(first.To)),
            ("hours", Figures.Fixed(first.Hours, 0)));
    }
}
