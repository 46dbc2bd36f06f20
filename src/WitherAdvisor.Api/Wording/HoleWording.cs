using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Wording;

/// <summary>What is missing of the weather, in words; quantities that miss the same hours share a sentence.</summary>
public static class HoleWording
{
    /// <summary>More would be read by nobody: the newest are told and the others counted.</summary>
    private const int Most = 8;

    public static string Name(WeatherQuantity quantity) => quantity switch
    {
        WeatherQuantity.Temperature => "temperature",
        WeatherQuantity.Humidity => "humidity",
        WeatherQuantity.Rain => "rain",
        WeatherQuantity.Wind => "wind",
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "No words for this quantity."),
    };

    /// <summary>Newest first.</summary>
    public static IReadOnlyList<string> Sentences(IReadOnlyList<WeatherHole> holes, DateTimeOffset now, WallClock clock)
    {
        IGrouping<(DateTimeOffset From, DateTimeOffset To, ValueStanding Instead), WeatherHole>[] stretches =
        [
            .. holes.GroupBy(hole => (hole.From, hole.To, hole.Instead)).OrderByDescending(stretch => stretch.Key.To),
        ];
        IEnumerable<string> told = stretches.Take(Most).Select(stretch => Sentence([.. stretch], now, clock));
        int others = stretches.Length - Most;
        return others > 0 ? [.. told, $"And {others} earlier {(others == 1 ? "stretch" : "stretches")}."] : [.. told];
    }

    private static string Sentence(List<WeatherHole> holes, DateTimeOffset now, WallClock clock)
    {
        WeatherHole first = holes[0];
        string names = Codes.Sentence(string.Join(", ", holes.Select(hole => Name(hole.Quantity))));
        string stretch = $"{clock.DateAndClock(first.From)} to {clock.DayAndClock(first.To)} ({Figures.Fixed(first.Hours, 0)} h)";
        string missing = first.Instead == ValueStanding.Foretold ? "not read; what was foretold stands in"
            : first.From >= now ? "not foretold"
            : "not known";
        return $"{names}, {stretch}: {missing}.";
    }
}
