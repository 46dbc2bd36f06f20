using WitherAdvisor.InventedEstate;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>Weeks of invented weather: spells of days that follow one another by chance.</summary>
public static class Season
{
    public static readonly DateTimeOffset FirstMidnight = new(2026, 3, 1, 0, 0, 0, Estate.Offset);

    private static readonly Day Breezy = new(14.5, 22.5, 10.8, 0.12, 3.0, 6.0);
    private static readonly Day Fair = new(15.5, 21.5, 15.2, 0.45, 0.8, 2.6);
    private static readonly Day Showery = new(15.6, 20.5, 16.0, 0.60, 0.8, 2.6, new Shower(15, 3, 2.0));
    private static readonly Day Drizzle = new(15.8, 19.5, 15.8, 0.85, 1.2, 2.4, new Shower(3, 3, 0.8), new Shower(13, 5, 1.2));
    private static readonly Day Rain = new(15.6, 18.0, 16.6, 0.95, 1.5, 2.8, new Shower(2, 6, 1.2), new Shower(9, 7, 1.6), new Shower(19, 4, 1.0));

    /// <summary>Days that belong together; a spell of one kind lasts one to four weeks.</summary>
    private static readonly Day[][] Spells =
    [
        [Breezy, Breezy, Breezy, Fair],
        [Fair, Fair, Showery, Fair],
        [Rain, Drizzle, Showery, Rain],
    ];

    /// <summary>Hourly weather of so many days, every value known.</summary>
    public static IReadOnlyList<HourOfWeather> Make(int days, SplitMix64 random)
    {
        var kinds = new List<Day>();
        while (kinds.Count <= days)
        {
            Day[] spell = Spells[(int)(random.NextFraction() * Spells.Length)];
            int length = 7 + (int)(random.NextFraction() * 22);
            for (int day = 0; day < length; day++)
            {
                kinds.Add(Moved(spell[(int)(random.NextFraction() * spell.Length)].Varied(random), random));
            }
        }

        return HoursOfDays.Make(FirstMidnight, kinds[..(days + 1)], random);
    }

    /// <summary>Showers keep no timetable, and the air of one day is not the next one's.</summary>
    private static Day Moved(Day day, SplitMix64 random) => day with
    {
        DewPointC = day.DewPointC + random.Around(0, 1),
        Showers =
        [
            .. day.Showers.Select(shower => shower with
            {
                FromHour = Math.Clamp(shower.FromHour + (int)random.Between(-4, 5), 0, 24 - shower.Hours),
                MmPerHour = shower.MmPerHour * random.Between(0.3, 2),
            }),
        ],
    };
}
