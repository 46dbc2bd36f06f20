namespace WitherAdvisor.Fields;

/// <summary>Percent outside, fractions inside.</summary>
internal static class Percent
{
    // So that 7 % comes back as 7 and not as 7.000000000000001.
    private const int DigitsThatCount = 10;

    public static double ToFraction(double percent) => percent / 100;

    public static double? ToFraction(double? percent) => percent / 100;

    public static double Of(double fraction) => Math.Round(fraction * 100, DigitsThatCount);

    public static double? Of(double? fraction) => fraction is { } known ? Of(known) : null;
}
