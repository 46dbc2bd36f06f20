namespace WitherAdvisor.InventedEstate;

/// <summary>June 2026: ordinary days with a shower now and then, then a week in which the rain sets in.</summary>
public static class WetSpell
{
    public static readonly DateTimeOffset FirstMidnight = new(2026, 6, 5, 0, 0, 0, Estate.Offset);

    private static readonly Day Fair = new(15.5, 21.2, 15.6, 0.5, 0.8, 2.6);
    private static readonly Day Showery = Fair with { HighestC = 20.5, DewPointC = 16.0, Cloud = 0.6, Showers = [new(16, 2, 2.0)] };
    private static readonly Day Drizzle = new(15.8, 19.5, 15.8, 0.85, 1.2, 2.4, new Shower(3, 3, 0.8), new Shower(13, 5, 1.2));
    private static readonly Day Rain = new(15.6, 18.0, 16.6, 0.95, 1.5, 2.8, new Shower(2, 6, 1.2), new Shower(9, 7, 1.6), new Shower(19, 4, 1.0));

    private static readonly Day[] Kinds =
    [
        Fair, Showery, Fair, Fair, Showery, Fair, Fair, Fair, Fair,
        Showery, Drizzle, Drizzle, Rain, Rain, Rain, Rain, Rain, Drizzle,
    ];

    public static Stretch Make(ulong seed)
    {
        SplitMix64 random = new(seed);
        Day[] days = [.. Kinds.Select(kind => kind.Varied(random))];
        IReadOnlyList<HourOfWeather> hours = HoursOfDays.Make(FirstMidnight, days, random);
        return new([.. hours.Skip(Stretch.GaugeHour)], RainOfDaysBefore(random));
    }

    /// <summary>Rain on two days of five, as before a monsoon.</summary>
    private static double[] RainOfDaysBefore(SplitMix64 random) =>
        [.. Enumerable.Range(0, Stretch.DaysBefore).Select(_ =>
            random.NextFraction() < 0.4 ? Math.Round(random.Between(10, 170)) / 10 : 0)];
}
