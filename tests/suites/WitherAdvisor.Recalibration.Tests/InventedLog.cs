using WitherAdvisor.InventedEstate;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Recalibration.Tests;

/// <summary>Two-year logs of invented lofts. Weather is dear to make, so lofts share a few seasons.</summary>
internal static class InventedLog
{
    private const int Days = 730;

    /// <summary>So many seasons of so many nights.</summary>
    public static IReadOnlyList<LoftNight>[] Seasons(int seasons, int nights)
    {
        var made = new IReadOnlyList<LoftNight>[seasons];
        Parallel.For(0, seasons, i => made[i] = LoftNight.Make(nights, Days, (ulong)i + 1));
        return made;
    }

    public static SplitMix64 Random(int number) => new(0xB17A + (ulong)number * 104_729);

    /// <summary>A loft as far from the defaults as those say, and its log.</summary>
    public static (HiddenLoft Loft, IReadOnlyList<LoggedWither> Log) Draw(int number, IReadOnlyList<LoftNight> nights)
    {
        SplitMix64 random = Random(number);
        HiddenLoft loft = HiddenLoft.Draw(random);
        return (loft, OutcomeLog.Write(loft, nights, random));
    }

    public static ObservedWither[] Noted(IReadOnlyList<LoggedWither> log) => [.. log.Select(one => one.Noted)];
}
