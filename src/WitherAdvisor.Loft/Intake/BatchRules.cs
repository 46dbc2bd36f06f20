using WitherAdvisor.Sites;

namespace WitherAdvisor.Loft.Intake;

/// <summary>What every batch keeps to, however it comes in. Times that are not known break no rule.</summary>
public static class BatchRules
{
    /// <summary>Chemical wither is kept well under 30 h (published: UPASI Tea Research Foundation).</summary>
    public const double MostHoursFromPluckingToLoading = 30;

    public const double MostHoursFromLoadingToReady = 48;

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

    public static IEnumerable<BatchFault> Load(double greenWeightKg, Trough trough)
    {
        if (greenWeightKg > MostKg(trough))
        {
            yield return new BatchFault.TooMuchLeaf(greenWeightKg, MostKg(trough), trough.AreaM2, trough.MostLoadKgPerM2);
        }
    }
}
