using WitherAdvisor.Air;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>The weather of one batch: what it did to the leaf, what a station makes of it, and the air of the night.</summary>
/// <param name="LoadedAt">Hour 0.</param>
/// <param name="Truly">What the weather of the fields did.</param>
/// <param name="AsRead">What the station's readings say it did.</param>
/// <param name="Spell">As the readings say.</param>
/// <param name="Ambient">True air by the hour from loading.</param>
public sealed record LoftNight(
    DateTimeOffset LoadedAt, LeafFeatures Truly, LeafFeatures AsRead, SpellKind Spell, IReadOnlyList<AirState> Ambient)
{
    public const int HoursAhead = 40;
    private const int HistoryDays = 62;

    private static readonly Site Site = new(1_500, 7.0, 80.7, Site.UsualHotAirC, WitherStyle.Short);

    /// <summary>Nights over some days of one season, in order, evenly spread; weather is made once for all.</summary>
    public static IReadOnlyList<LoftNight> Make(int count, int days, ulong seed)
    {
        SplitMix64 random = Random(seed);
        IReadOnlyList<HourOfWeather> weather = Season.Make(HistoryDays + days + 3, random);
        return [.. Enumerable.Range(0, count).Select(i => One(weather, HistoryDays + (int)((long)i * days / count), random))];
    }

    /// <summary>The weather of that season, from two months before its first night.</summary>
    public static IReadOnlyList<HourOfWeather> Weather(int days, ulong seed) => Season.Make(HistoryDays + days + 3, Random(seed));

    private static SplitMix64 Random(ulong seed) => new(0x10F7 + seed * 7919);

    private static LoftNight One(IReadOnlyList<HourOfWeather> weather, int day, SplitMix64 random)
    {
        int loaded = day * 24 + 11 + (int)(random.NextFraction() * 10);
        DateTimeOffset loadedAt = weather[loaded].Time;
        DateTimeOffset pluckedTo = loadedAt.AddHours(-random.Between(0.5, 3));
        var leaf = new PluckedLeaf(pluckedTo.AddHours(-random.Between(1, 4)), pluckedTo, loadedAt);
        HourOfWeather[] before = [.. weather.Skip(loaded + 1 - HistoryDays * 24).Take(HistoryDays * 24)];
        List<WeatherReading> read = Observed.Read(before, random);
        double demand = Math.Exp(random.Around(0, 0.10));
        double capacity = new Coefficients.WitherCoefficients().CanopyCapacityMm;
        LeafEstimate estimate = LeafFromWeather.Estimate(Site, read, [], leaf, new());
        return new(
            loadedAt,
            LeafFromWeather.Features(Site, [.. before.Select(hour => Observed.AtTheField(hour, demand))], [], leaf, capacity),
            LeafFromWeather.Features(Site, read, [], leaf, capacity),
            estimate.Spell.Kind,
            [.. weather.Skip(loaded).Take(HoursAhead).Select(hour =>
                AirState.FromDewPoint(hour.DryBulbC, Math.Min(hour.DewPointC, hour.DryBulbC), hour.StationPressureHpa * 100))]);
    }
}
