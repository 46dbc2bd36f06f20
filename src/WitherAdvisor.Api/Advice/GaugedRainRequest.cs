using WitherAdvisor.Api.Weather;
using WitherAdvisor.Fields;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Advice;

/// <summary>Rain stated by hand for a stretch of time, as read off a gauge, and when in it a feed says that it fell. Hours with a reading of their own keep it.</summary>
public sealed record GaugedRainRequest : RainTotalRequest
{
    /// <summary>
    /// What a feed tells of the same stretch, in each of so many equal parts of it: the gauge says how much, this says when.
    /// Spread evenly when left out. Of a site that it keeps the service takes this from the feed.
    /// </summary>
    /// <example>[0, 0, 9.5, 1.2]</example>
    [Listed(RainTotal.MostParts, Fewest = 2)]
    [Measured(0, 3000)]
    public IReadOnlyList<double>? PatternMm { get; init; }

    internal override RainTotal ToDomain() => base.ToDomain() with { PatternMm = PatternMm };

    internal static new GaugedRainRequest Of(RainTotal total) =>
        new() { From = total.From, To = total.To, RainMm = total.RainMm, PatternMm = total.PatternMm };
}
