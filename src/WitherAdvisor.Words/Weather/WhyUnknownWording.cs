using WitherAdvisor.Review;

namespace WitherAdvisor.Words.Weather;

/// <summary>Why a value of a review is unknown, as the end of a sentence.</summary>
public static class WhyUnknownWording
{
    public static string Reason(WhyUnknown why) => why switch
    {
        WhyUnknown.Untold => "nobody read or foretold it",
        WhyUnknown.RainOfDay => "rain of too few of its hours is known",
        WhyUnknown.AirOfDay => "the air of too few of its hours is known",
        WhyUnknown.DaylightOfDay => "air and wind of too few of its daylight hours are known",
        WhyUnknown.ThreeDaysOfRain => "rain is known for less than three days before it ends",
        WhyUnknown.WeatherBefore => "rain of less than half of the 24 hours before is known, or no air at all",
        _ => throw new ArgumentOutOfRangeException(nameof(why), why, "No words for this reason."),
    };
}
