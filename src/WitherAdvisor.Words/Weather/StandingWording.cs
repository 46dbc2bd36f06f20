using WitherAdvisor.Review;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Weather;

/// <summary>A value of the weather as a table shows it.</summary>
public static class StandingWording
{
    /// <summary>As a number, or "?" where it is not known.</summary>
    public static string Number(ReviewValue value, Func<double, double> shown, int decimals) =>
        value.Value is { } known ? Figures.Fixed(shown(known), decimals) : "?";
}
