namespace WitherAdvisor.InventedEstate;

/// <summary>February 2026: no rain since the middle of January, and a dry wind by day and night.</summary>
public static class DryWindySpell
{
    public static readonly DateTimeOffset FirstMidnight = new(2026, 2, 5, 0, 0, 0, Estate.Offset);

    private const int LastRainyDay = 40;

    private static readonly Day Breezy = new(14.5, 22.2, 11.2, 0.15, 2.5, 5.0);
    private static readonly Day Windy = new(14.8, 22.8, 10.4, 0.10, 3.5, 6.8);

    private static readonly Day[] Kinds =
    [
        Breezy, Breezy, Breezy, Windy, Breezy, Breezy, Windy, Windy, Breezy,
        Breezy, Windy, Windy, Windy, Windy, Windy, Windy, Windy, Breezy,
    ];

    public static Stretch Make(ulong seed)
    {
        SplitMix64 random = new(seed);
        Day[] days = [.. Kinds.Select(kind => kind.Varied(random))];
        IReadOnlyList<HourOfWeather> hours = HoursOfDays.Make(FirstMidnight, days, random);
        return new([.. hours.Skip(Stretch.GaugeHour)], RainOfDaysBefore(random));
    }

    /// <summary>Rain on every other day until the middle of January, then none for a month.</summary>
    private static double[] RainOfDaysBefore(SplitMix64 random) =>
        [.. Enumerable.Range(0, Stretch.DaysBefore).Select(day =>
            day < LastRainyDay && random.NextFraction() < 0.5 ? Math.Round(random.Between(10, 240)) / 10 : 0)];
}
