using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Loft.Intake;

/// <summary>What every batch keeps to, however it comes in. Times that are not known break no rule.</summary>
public static class BatchRules
{
    /// <summary>Chemical wither is kept well under 30 h (published: UPASI Tea Research Foundation).</summary>
    public const double MostHoursFromPluckingToLoading = 30;

    public const double MostHoursFromLoadingToReady = 48;

    /// <summary>Between the first lot of a batch and its last (from memory: leaf comes in through an afternoon).</summary>
    public const double MostHoursBetweenLots = 12;

    /// <summary>Most lots of a batch.</summary>
    public const int MostLots = 20;

    /// <summary>Most leaf that a trough takes, kg.</summary>
    public static double MostKg(Trough trough) => trough.AreaM2 * trough.MostLoadKgPerM2;

    public static IEnumerable<BatchFault> Times(
        DateTimeOffset? pluckedFrom, DateTimeOffset? pluckedTo, DateTimeOffset? loadedAt, DateTimeOffset? readyBy)
    {
        if (pluckedFrom is { } began && pluckedTo is { } ended && ended < began)
        {
            yield return new BatchFault.PluckingEndsBeforeItBegins(began, ended);
        }

        if (pluckedTo is { } last && loadedAt is { } loaded && loaded < last)
        {
            yield return new BatchFault.LoadedBeforePlucked(last, loaded);
        }

        if (pluckedFrom is { } first && loadedAt is { } onTrough && (onTrough - first).TotalHours > MostHoursFromPluckingToLoading)
        {
            yield return new BatchFault.PluckedTooLongAgo(first, onTrough, MostHoursFromPluckingToLoading);
        }

        if (loadedAt is { } start && readyBy is { } ready
            && (ready <= start || (ready - start).TotalHours > MostHoursFromLoadingToReady))
        {
            yield return new BatchFault.WantedAtAnImpossibleTime(start, ready, MostHoursFromLoadingToReady);
        }
    }

    public static IEnumerable<BatchFault> Load(double greenWeightKg, Trough trough, bool inLots = false)
    {
        if (greenWeightKg > MostKg(trough))
        {
            yield return new BatchFault.TooMuchLeaf(greenWeightKg, MostKg(trough), trough.AreaM2, trough.MostLoadKgPerM2, inLots);
        }
    }

    /// <summary>Of a lot that comes onto a batch: in any order of loading, but in one wither with the others.</summary>
    public static IEnumerable<BatchFault> Lot(LeafLot lot, Batch lying, Trough trough)
    {
        if (lying.GreenWeightKg + lot.GreenWeightKg > MostKg(trough))
        {
            yield return new BatchFault.TooMuchWithLot(lot.GreenWeightKg, lying.GreenWeightKg, MostKg(trough));
        }

        foreach (DateTimeOffset other in new[] { lying.LoadedAt, lying.LastLoadedAt }.Distinct())
        {
            if (Math.Abs((lot.LoadedAt - other).TotalHours) > MostHoursBetweenLots)
            {
                yield return new BatchFault.LotTooFarApart(lot.LoadedAt, other, MostHoursBetweenLots);
                break;
            }
        }
    }
}
