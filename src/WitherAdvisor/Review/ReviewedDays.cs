using WitherAdvisor.Canopy;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Evaporation;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Soil;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Review;

/// <summary>Reviews days.</summary>
internal sealed class ReviewedDays
{
    private const int HoursInDay = 24;

    private readonly LeafHistory history;
    private readonly KnownHours hours;
    private readonly WaterStressHistory stress;
    private readonly JudgedDay[] judged;
    private readonly DryingPower power;

    private ReviewedDays(LeafHistory history, KnownHours hours, WitherCoefficients coefficients, SpellThresholds thresholds)
    {
        this.history = history;
        this.hours = hours;
        var gaps = HistoryGaps.Of(history.Series);
        stress = WaterStressHistory.Of(history.Demand, history.Series.Rain, RootZone.Tea, DemandError.OfHistory(history.Series, gaps.IsDry));
        InterceptionStorage canopy = InterceptionStorage.Of(history, coefficients.CanopyCapacityMm, gaps.EvaporationError);
        judged = SpellHistory.Days(history, stress, canopy, CarriedWater.KgPerKgPerMm(coefficients), thresholds);
        power = DryingPower.Of(history.Demand);
    }

    public static IEnumerable<ReviewDay> Of(
        LeafHistory history, KnownHours hours, ReviewSpan span, WitherCoefficients coefficients, SpellThresholds thresholds)
    {
        ReviewedDays days = new(history, hours, coefficients, thresholds);
        return Enumerable.Range(days.judged.Length - span.DaysInAll, span.DaysInAll).Select(day => days.Review(day, span.Now));
    }

    private ReviewDay Review(int day, DateTimeOffset now)
    {
        int end = (day + 1) * HoursInDay;
        RainSum rain = RainSum.UpTo(history.Series.Rain, end, HoursInDay);
        bool tellsOfSoil = HistoryGaps.UpTo(history.Series, end).TellsOfSoil;
        ValueStanding standing = hours.LeastSure(end, HoursInDay);
        ReviewValue Value(double? value, WhyUnknown otherwise) =>
            value is double known ? ReviewValue.Known(known, standing) : ReviewValue.Unknown(otherwise);
        JudgedDay verdict = judged[day];
        return new(
            hours.Grid.InstantOf(end - HoursInDay),
            hours.Grid.InstantOf(end),
            hours.Grid.InstantOf(end) > now,
            Value(rain.Mm, WhyUnknown.RainOfDay),
            rain.FallenMm,
            rain.KnownShare * HoursInDay,
            Value(IsAirKnown(end) ? ReferenceMm(end) : null, WhyUnknown.AirOfDay),
            Value(tellsOfSoil ? stress.DepletionMm[day] : null, WhyUnknown.ThreeDaysOfRain),
            Value(tellsOfSoil ? stress.Mean[day] : null, WhyUnknown.ThreeDaysOfRain),
            stress.Error[day],
            Value(power.MeanOf(day), WhyUnknown.DaylightOfDay),
            new(verdict.ToSpell(stress.Error[day]), verdict.Numbers.RainOnLeafKgPerKg, verdict.Verdict.Reason));
    }

    /// <summary>What a day's mean hours are filled from is worth a sum only where half of the day is known.</summary>
    private bool IsAirKnown(int end)
    {
        int known = 0;
        for (int hour = end - HoursInDay + 1; hour <= end; hour++)
        {
            known += hours.Air(hour) == ValueStanding.Unknown ? 0 : 1;
        }

        return known >= HoursInDay / 2;
    }

    private double ReferenceMm(int end)
    {
        double sum = 0;
        for (int hour = end - HoursInDay + 1; hour <= end; hour++)
        {
            sum += history.Demand.ReferenceMm[hour];
        }

        return sum;
    }
}
