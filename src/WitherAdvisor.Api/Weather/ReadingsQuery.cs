using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Weather;

/// <summary>Which readings to answer with.</summary>
public sealed record ReadingsQuery : ICrossChecked
{
    private const int LongestDays = 92;

    /// <summary>Which of a caller's readings to list: observed or forecast.</summary>
    /// <example>observed</example>
    public required WeatherKind Kind { get; init; }

    /// <summary>First time, included.</summary>
    /// <example>2026-02-28T00:00:00+05:30</example>
    public required DateTimeOffset From { get; init; }

    /// <summary>Last time, included; at most 92 days later.</summary>
    /// <example>2026-03-02T00:00:00+05:30</example>
    public required DateTimeOffset To { get; init; }

    public IEnumerable<FieldError> CrossCheck()
    {
        if (To < From || To > From.AddDays(LongestDays))
        {
            yield return FieldError.Of("to", $"\"{Rfc3339.Format(To)}\"", $"at or after from, {Rfc3339.Format(From)}, by at most {LongestDays} days");
        }
    }
}
