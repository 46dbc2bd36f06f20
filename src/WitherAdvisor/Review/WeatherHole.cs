namespace WitherAdvisor.Review;

/// <summary>A stretch that nobody read, longer than is drawn across; of the hours ahead, one that nobody forecast.</summary>
/// <param name="Quantity">What is missing.</param>
/// <param name="From">Start, exclusive.</param>
/// <param name="To">End, inclusive: the last hour of it.</param>
/// <param name="Instead">What stands in: what was forecast, or nothing.</param>
public sealed record WeatherHole(WeatherQuantity Quantity, DateTimeOffset From, DateTimeOffset To, ValueStanding Instead)
{
    /// <summary>Its length, hours.</summary>
    public double Hours => (To - From).TotalHours;
}
