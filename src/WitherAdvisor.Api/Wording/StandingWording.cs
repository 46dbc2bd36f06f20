using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Wording;

/// <summary>How a value came to be known, in words.</summary>
public static class StandingWording
{
    public static string Name(ValueStanding standing) => standing switch
    {
        ValueStanding.Read => "read",
        ValueStanding.Filled => "partly filled in",
        ValueStanding.Foretold => "foretold",
        ValueStanding.Unknown => "not known",
        _ => throw new ArgumentOutOfRangeException(nameof(standing), standing, "No words for this standing."),
    };

    /// <summary>A value as a number, or "?" where it is not known.</summary>
    public static string Number(ReviewValue value, Func<double, double> shown, int decimals) =>
        value.Value is { } known ? Figures.Fixed(shown(known), decimals) : "?";
}
