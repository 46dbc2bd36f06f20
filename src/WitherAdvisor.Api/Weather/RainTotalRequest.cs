using WitherAdvisor.Fields;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Weather;

/// <summary>Rain stated by hand for a stretch of time, as read off a gauge. Hours with a reading of their own keep it.</summary>
public record RainTotalRequest : ICrossChecked
{
    private const int LongestDays = 92;

    /// <summary>When the gauge was emptied.</summary>
    /// <example>2026-02-28T07:00:00+05:30</example>
    public required DateTimeOffset From { get; init; }

    /// <summary>When it was read; at most 92 days later.</summary>
    /// <example>2026-03-01T07:00:00+05:30</example>
    public required DateTimeOffset To { get; init; }

    /// <summary>Rain in that stretch.</summary>
    /// <example>12.5</example>
    [Measured(0, 3000)]
    public required double RainMm { get; init; }

    public IEnumerable<FieldError> CrossCheck()
    {
        if (To <= From || To > From.AddDays(LongestDays))
        {
            yield return FieldError.Of("to", $"\"{Rfc3339.Format(To)}\"", $"after from, {Rfc3339.Format(From)}, by at most {LongestDays} days");
        }
    }

    internal virtual RainTotal ToDomain() => new(From, To, RainMm);

    internal static RainTotalRequest Of(RainTotal total) => new() { From = total.From, To = total.To, RainMm = total.RainMm };
}
