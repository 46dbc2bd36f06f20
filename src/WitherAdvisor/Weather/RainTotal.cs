namespace WitherAdvisor.Weather;

/// <summary>Rain stated by hand for a stretch of time, as read off a gauge. Hours with a reading of their own keep it.</summary>
/// <param name="From">Start, exclusive.</param>
/// <param name="To">End, inclusive.</param>
/// <param name="RainMm">Rain in it, mm.</param>
public sealed record RainTotal(DateTimeOffset From, DateTimeOffset To, double RainMm)
{
    private const double MostMm = 20_000;

    /// <summary>A gauge can have shown it.</summary>
    internal bool IsPossible => To > From && RainMm is >= 0 and <= MostMm;
}
