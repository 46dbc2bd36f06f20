using WitherAdvisor.Review;

namespace WitherAdvisor.Words.Weather;

/// <summary>Why a value of a review is unknown, as the end of a sentence.</summary>
public static class WhyUnknownWording
{
    public static string Reason(Wordbook words, WhyUnknown why) => words.Name(why);
}
