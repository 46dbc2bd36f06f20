using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Search;

/// <summary>
/// The airs that a plan chooses from, on one way from the harshest to the gentlest: from the ceiling to the site's wanted
/// air, then less and less heat, then a slower and slower fan, then a fan that stands for part of the time. Leaf is ready
/// later with every step on it, so a wanted hour is met by one place, and a little more leaf moves the place a little.
/// </summary>
/// <param name="style">What the site steers by.</param>
/// <param name="wantedK">Hygrometric difference that it wants at its pace, K.</param>
/// <param name="slowestFanShare">The least share that the fan is set to.</param>
/// <param name="wet">Whether air meant for wet leaf may be held at first.</param>
internal sealed class AirScale(WitherStyle style, double wantedK, double slowestFanShare, bool wet)
{
    public const double Harshest = 0;
    public const double Wanted = 1;
    public const double Unheated = 2;
    public const double Slowest = 3;
    public const double Gentlest = 4;

    /// <summary>A fan that runs less than a quarter of the time is no wither any more (from memory).</summary>
    public const double LeastRunShare = 0.25;

    private readonly double ceilingK = style.HygrometricDifferenceCeilingK;
    private readonly double boostK = wet ? Math.Max(style.WetLeafHygrometricDifferenceCeilingK - style.HygrometricDifferenceCeilingK, 0) : 0;

    public HeldAir At(double place) => place switch
    {
        <= Wanted => Harsh(Wanted - place),
        <= Unheated => Gentle(wantedK * (Unheated - place)),
        <= Slowest => Gentle(0, Between(1, slowestFanShare, place - Unheated)),
        _ => Gentle(0, slowestFanShare, Between(1, LeastRunShare, place - Slowest)),
    };

    /// <summary>From the wanted air (0) to the ceiling (1).</summary>
    private HeldAir Harsh(double share)
    {
        double differenceK = Between(wantedK, ceilingK, share);
        return new(differenceK, differenceK + share * boostK);
    }

    private static HeldAir Gentle(double differenceK, double fanShare = 1, double runShare = 1) => new(differenceK, differenceK, fanShare, runShare);

    private static double Between(double from, double to, double share) => from + share * (to - from);
}
