using WitherAdvisor.Evaporation;
using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Spells;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>How much of a history is known, over all of it and shortly before plucking.</summary>
/// <param name="RainKnownH">Hours of known rain in all.</param>
/// <param name="UnknownRainIn72H">Hours without rain known, of the last 72.</param>
/// <param name="StatedRainIn72H">Hours known only as part of a longer total, of the last 72.</param>
/// <param name="RainKnownIn24H">Hours of known rain, of the last 24.</param>
/// <param name="UnknownAirIn72H">Hours without temperature or humidity, of the last 72.</param>
/// <param name="DrawnAirIn72H">Hours whose temperature or humidity is drawn straight between readings, of the last 72.</param>
/// <param name="UnknownWindIn72H">Hours without wind, of the last 72.</param>
/// <param name="UnmeasuredSunIn72H">Hours without measured radiation, of the last 72.</param>
/// <param name="EvaporationError">Standard deviation of what the air of the last 72 h asked, relative.</param>
/// <param name="IsDry">Hardly any rain in ten days: wind then does more of the drying.</param>
/// <remarks>
/// The rules of gaps, all of them. A hole is never dry weather.
/// Air and wind are drawn straight across gaps of up to 3 h (<see cref="InstantValues"/>) and said to be
/// (<see cref="MissingWeather"/>); rain and radiation are of the hour they were read for and are never drawn out
/// (<see cref="HourSums"/>). Hours before loading that nobody read take what was forecast, said to be, with a wider
/// standard deviation (<see cref="Readings.Sources.GapFilling"/>, <see cref="LeafWithGapsFilled"/>). What is still
/// unknown: air and wind take the mean of the same clock hour (<see cref="ClockHourFill"/>), rain is taken to have
/// fallen with one chance in three, and the share that is guessed widens every standard deviation. With less than
/// 12 h of rain in the last day the leaf's water is a usual value and not an estimate; with less than 72 h in all so is
/// its moisture. Nothing read for more than 3 h before loading is told as such, with the readings that would help most
/// (<see cref="Readings.Sources.StaleWeather"/>).
/// </remarks>
internal sealed record HistoryGaps(
    double RainKnownH,
    double UnknownRainIn72H,
    double StatedRainIn72H,
    double RainKnownIn24H,
    int UnknownAirIn72H,
    int DrawnAirIn72H,
    int UnknownWindIn72H,
    int UnmeasuredSunIn72H,
    double EvaporationError,
    bool IsDry)
{
    public const int ShortStretchH = 72;
    private const int HoursInDay = 24;

    private const int LongStretchH = 240;

    private static readonly double DryBelowMm = new SpellThresholds().DryRainIn10DaysBelowMm;

    /// <summary>Enough of the last day is known to say what stood on the leaf.</summary>
    public bool TellsOfLeaf => RainKnownIn24H >= HoursInDay / 2 && UnknownAirIn72H < ShortStretchH;

    /// <summary>Enough rain is known to say more of the soil than a guess.</summary>
    public bool TellsOfSoil => RainKnownH >= ShortStretchH;

    /// <summary>Of a whole series.</summary>
    public static HistoryGaps Of(HourlySeries series) => UpTo(series, series.Grid.Hours);

    /// <summary>Of a series up to an instant of it.</summary>
    public static HistoryGaps UpTo(HourlySeries series, int last)
    {
        double known = 0;
        double unknownIn72 = 0;
        double statedIn72 = 0;
        double knownIn24 = 0;
        for (int hour = 1; hour <= last; hour++)
        {
            double share = series.Rain.Known[hour];
            known += share;
            unknownIn72 += hour > last - ShortStretchH ? 1 - share : 0;
            statedIn72 += hour > last - ShortStretchH ? series.Rain.StatedShare(hour) : 0;
            knownIn24 += hour > last - HoursInDay ? share : 0;
        }

        int air = 0;
        int drawn = 0;
        int wind = 0;
        int sun = 0;
        for (int hour = Math.Max(last - ShortStretchH, 0) + 1; hour <= last; hour++)
        {
            bool unknown = double.IsNaN(series.DryBulbC[hour] + series.HumidityRatio[hour]);
            air += unknown ? 1 : 0;
            drawn += unknown || series.AirObserved[hour] ? 0 : 1;
            wind += double.IsNaN(series.WindMPerS[hour]) ? 1 : 0;
            sun += series.ShortwaveWPerM2(hour) is null ? 1 : 0;
        }

        bool isDry = RainSum.UpTo(series.Rain, last, LongStretchH).IsBelow(DryBelowMm);
        double error = DemandError.Of(MissingShares.Of(series, Math.Max(last - ShortStretchH, 0), last), isDry);
        return new(known, unknownIn72, statedIn72, knownIn24, air, drawn, wind, sun, error, isDry);
    }
}
