namespace WitherAdvisor.Readings.Sources;

/// <summary>
/// Hours whose rain a person read off a gauge as a total. What a feed or a forecast says of such hours is left out: the
/// hand wins, and hourly zeros would otherwise leave the total no hour to have fallen in.
/// </summary>
internal static class GaugedRain
{
    private static readonly TimeSpan HourBefore = TimeSpan.FromHours(1);

    /// <summary>Whether a total tells of any of the hour before a time.</summary>
    public static bool Tells(IReadOnlyList<RainTotal> totals, DateTimeOffset time)
    {
        for (int at = 0; at < totals.Count; at++)
        {
            // Differences, since a time at the edge of the calendar has no hour before it.
            if (totals[at].IsPossible && time > totals[at].From && time - totals[at].To < HourBefore)
            {
                return true;
            }
        }

        return false;
    }
}
