using WitherAdvisor.Review;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Weather;

/// <summary>Readings that would help, in words.</summary>
public static class WantedWording
{
    public static string Sentence(Wordbook words, WantedReading wanted, WallClock clock) => wanted is { Kind: WantedKind.Rain, Since: { } since }
        ? words.Say("wanted_kind.rain.since", ("time", clock.DayAndClock(since)))
        : words.Name(wanted.Kind);
}
