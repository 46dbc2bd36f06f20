using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Wording;

/// <summary>Readings that would help, in words.</summary>
public static class WantedWording
{
    public static string Sentence(WantedReading wanted, WallClock clock) => wanted.Kind switch
    {
        WantedKind.Bulbs => "Dry bulb and wet bulb now.",
        WantedKind.Rain => wanted.Since is { } since
            ? $"Rain since {clock.DayAndClock(since)}: read the gauge, or say that none fell."
            : "Rain: read the gauge, or say that none fell.",
        WantedKind.Wind => "Wind now.",
        _ => throw new ArgumentOutOfRangeException(nameof(wanted), wanted.Kind, "No words for this reading."),
    };
}
