namespace WitherAdvisor.WeatherFeeds;

/// <summary>Which days of weather. Days are those of UTC, so ask for one more at each end than the site's own days need.</summary>
public abstract record FeedSpan
{
    private FeedSpan()
    {
    }

    /// <summary>The last days and the coming ones, of the feed's forecast host.</summary>
    public sealed record Around : FeedSpan
    {
        /// <summary>Today by UTC and the days round it.</summary>
        /// <param name="pastDays">Days before today, 0 to 92.</param>
        /// <param name="forecastDays">Days from today on, today included, 1 to 16.</param>
        /// <exception cref="ArgumentOutOfRangeException">More than a feed gives.</exception>
        public Around(int pastDays, int forecastDays)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(pastDays);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(pastDays, 92);
            ArgumentOutOfRangeException.ThrowIfLessThan(forecastDays, 1);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(forecastDays, 16);
            PastDays = pastDays;
            ForecastDays = forecastDays;
        }

        public int PastDays { get; }

        public int ForecastDays { get; }
    }

    /// <summary>Whole days, both ends included, of the feed's archive host.</summary>
    public sealed record Days : FeedSpan
    {
        private const int MostDays = 366;

        /// <summary>From the first day to the last.</summary>
        /// <exception cref="ArgumentOutOfRangeException">The last before the first, or more than a year.</exception>
        public Days(DateOnly first, DateOnly last)
        {
            int days = last.DayNumber - first.DayNumber + 1;
            ArgumentOutOfRangeException.ThrowIfLessThan(days, 1, nameof(last));
            ArgumentOutOfRangeException.ThrowIfGreaterThan(days, MostDays, nameof(last));
            First = first;
            Last = last;
        }

        public DateOnly First { get; }

        public DateOnly Last { get; }
    }
}
