namespace WitherAdvisor.Readings;

/// <summary>Rain stated by hand for a stretch of time, as read off a gauge. Hours with a reading of their own keep it.</summary>
/// <param name="From">Start, exclusive.</param>
/// <param name="To">End, inclusive.</param>
/// <param name="RainMm">Rain in it, mm.</param>
/// <param name="PatternMm">
/// What a feed tells of the same stretch, mm in each of so many equal parts of it: the gauge says how much, this says when.
/// Null where no feed tells.
/// </param>
public sealed record RainTotal(DateTimeOffset From, DateTimeOffset To, double RainMm, IReadOnlyList<double>? PatternMm = null)
{
    /// <summary>Most parts of a pattern: three months by the quarter of a day.</summary>
    public const int MostParts = 368;

    private const double MostMm = 20_000;

    /// <summary>A gauge can have shown it.</summary>
    internal bool IsPossible => To > From && RainMm is >= 0 and <= MostMm;
}
