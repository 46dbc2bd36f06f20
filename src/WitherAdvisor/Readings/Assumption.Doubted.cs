namespace WitherAdvisor.Readings;

/// <content>Weather that came in and is not believed as it came: what was found, with the numbers that show it.</content>
public abstract partial record Assumption
{
    /// <summary>The gauge read no rain for weeks of which the air tells otherwise: their rain was taken as unknown.</summary>
    /// <param name="DryDays">Without rain.</param>
    /// <param name="HumidDays">Of them, with air near saturation at midday.</param>
    public sealed record GaugeDry(int DryDays, int HumidDays) : Assumption
    {
        public override string Code => "gauge_dry";
    }

    /// <summary>The gauge told the same rain again and again: it was taken as unknown.</summary>
    /// <param name="RainMm">In each reading.</param>
    /// <param name="Readings">In a row.</param>
    public sealed record GaugeRepeats(double RainMm, int Readings) : Assumption
    {
        public override string Code => "gauge_repeats";
    }

    /// <summary>Rain reads like inches in a column of millimetres: it was taken as unknown.</summary>
    /// <param name="RainyDays">With many hours of rain.</param>
    /// <param name="MedianMm">Of their sums, as read.</param>
    public sealed record RainLikeInches(int RainyDays, double MedianMm) : Assumption
    {
        public override string Code => "rain_like_inches";
    }

    /// <summary>More rain in an hour than falls: it was taken as unknown.</summary>
    /// <param name="RainMm">The most that was read.</param>
    /// <param name="MostMm">Believed of an hour.</param>
    /// <param name="Readings">That told more.</param>
    public sealed record RainTooHeavy(double RainMm, double MostMm, int Readings) : Assumption
    {
        public override string Code => "rain_too_heavy";
    }

    /// <summary>Hours seem to bear the times of others: the readings were kept, and the estimate is less sure.</summary>
    /// <param name="ByHours">Later than the sun by so much; below 0 earlier.</param>
    /// <param name="BySun">Whether radiation shows it; else the day's course of temperature.</param>
    public sealed record HoursShifted(double ByHours, bool BySun) : Assumption
    {
        public override string Code => "hours_shifted";
    }

    /// <summary>The thermometer stood still: its readings were taken as unknown.</summary>
    /// <param name="DryBulbC">At which it stood.</param>
    /// <param name="Hours">For how long.</param>
    public sealed record ThermometerStill(double DryBulbC, double Hours) : Assumption
    {
        public override string Code => "thermometer_still";
    }

    /// <summary>Humidity stood still while the air warmed and cooled: it was taken as unknown.</summary>
    /// <param name="RelativeHumidity">At which it stood, 0 to 1.</param>
    /// <param name="Hours">For how long.</param>
    /// <param name="RangeK">Of the temperature meanwhile.</param>
    public sealed record HumidityStill(double RelativeHumidity, double Hours, double RangeK) : Assumption
    {
        public override string Code => "humidity_still";
    }

    /// <summary>Wind was 0 throughout: it was taken as unknown.</summary>
    /// <param name="Hours">For how long.</param>
    public sealed record WindAlwaysCalm(double Hours) : Assumption
    {
        public override string Code => "wind_always_calm";
    }

    /// <summary>The pressure of readings is not that of the site's elevation: it was taken as unknown.</summary>
    /// <param name="GivenPa">In the first of them.</param>
    /// <param name="UsualPa">At that elevation.</param>
    /// <param name="Readings">How many.</param>
    public sealed record PressureOfSeaLevel(double GivenPa, double UsualPa, int Readings) : Assumption
    {
        public override string Code => "pressure_of_sea_level";
    }

    /// <summary>More water was weighed on the leaf than leaf can carry: the most that it can was taken, and is doubted.</summary>
    /// <param name="GivenKgPerKg">As weighed.</param>
    /// <param name="MostKgPerKg">That leaf can carry.</param>
    public sealed record SurfaceWaterBeyondLeaf(double GivenKgPerKg, double MostKgPerKg) : Assumption
    {
        public override string Code => "surface_water_beyond_leaf";
    }
}
