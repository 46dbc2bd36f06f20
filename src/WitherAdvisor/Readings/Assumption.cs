namespace WitherAdvisor.Readings;

/// <summary>Something not known, and what was taken in its place: one case for each code, with the numbers that belong to it.</summary>
public abstract partial record Assumption
{
    private Assumption()
    {
    }

    /// <summary>snake_case, for example "no_wind".</summary>
    public abstract string Code { get; }

    /// <summary>No weather before plucking is known: usual values were taken.</summary>
    /// <param name="WaterStress">K_s that was taken.</param>
    /// <param name="WaterStressStandardDeviation">Of it.</param>
    public sealed record NoHistory(double? WaterStress, double? WaterStressStandardDeviation) : Assumption
    {
        public override string Code => "no_history";
    }

    /// <summary>Too few days of rain are known to tell the soil water.</summary>
    /// <param name="KnownDays">Of rain.</param>
    /// <param name="WantedDays">Of rain.</param>
    /// <param name="WaterStress">K_s all the same.</param>
    /// <param name="WaterStressStandardDeviation">Of it.</param>
    public sealed record ShortHistory(
        double KnownDays, int WantedDays, double? WaterStress, double? WaterStressStandardDeviation) : Assumption
    {
        public override string Code => "short_history";
    }

    /// <summary>Rain is unknown: one chance in three of it was taken.</summary>
    /// <param name="UnknownHours">Of the 72 before plucking.</param>
    public sealed record RainUnknown(double UnknownHours) : Assumption
    {
        public override string Code => "rain_unknown";
    }

    /// <summary>Rain is known only as totals.</summary>
    /// <param name="StatedHours">Of the 72 before plucking.</param>
    /// <param name="LaidByFeed">Whether a feed told in which hours it fell; else it was spread evenly.</param>
    public sealed record RainHoursUnknown(double StatedHours, bool LaidByFeed) : Assumption
    {
        public override string Code => "rain_hours_unknown";
    }

    /// <summary>Nobody said of how long a time the rain of each reading is: the spacing of the readings told.</summary>
    /// <param name="Minutes">Of most of them.</param>
    /// <param name="Readings">How many, of the 72 h before plucking.</param>
    public sealed record RainStepsBySpacing(double Minutes, int Readings) : Assumption
    {
        public override string Code => "rain_steps_by_spacing";
    }

    /// <summary>Nobody saw fog or its absence: air near saturation for hours was taken for it.</summary>
    /// <param name="Hours">Of the 72 before plucking.</param>
    public sealed record FogByHumidity(int Hours) : Assumption
    {
        public override string Code => "fog_by_humidity";
    }

    /// <summary>Temperature or humidity is unknown: the mean of the same clock hours was taken.</summary>
    /// <param name="UnknownHours">Of the 72 before plucking.</param>
    public sealed record AirUnknown(int UnknownHours) : Assumption
    {
        public override string Code => "air_unknown";
    }

    /// <summary>Temperature or humidity was drawn straight between readings.</summary>
    /// <param name="DrawnHours">Of the 72 before plucking.</param>
    /// <param name="LongestGapHours">That a line is drawn across.</param>
    public sealed record AirInterpolated(int DrawnHours, double LongestGapHours) : Assumption
    {
        public override string Code => "air_interpolated";
    }

    /// <summary>Wind is unknown: the mean of the same clock hours was taken.</summary>
    /// <param name="UnknownHours">Of the 72 before plucking.</param>
    public sealed record NoWind(int UnknownHours) : Assumption
    {
        public override string Code => "no_wind";
    }

    /// <summary>Radiation was not measured: it was worked out from each day's range of temperature.</summary>
    /// <param name="UnmeasuredHours">Of the 72 before plucking.</param>
    public sealed record NoRadiation(int UnmeasuredHours) : Assumption
    {
        public override string Code => "no_radiation";
    }

    /// <summary>Values that no weather can have were taken as unknown.</summary>
    /// <param name="Values">How many readings or totals held one.</param>
    public sealed record ImpossibleValues(int Values) : Assumption
    {
        public override string Code => "impossible_values";
    }

    /// <summary>Nothing was read shortly before loading.</summary>
    /// <param name="AgeHours">Of the last reading at loading; null where nothing was ever read.</param>
    /// <param name="ForecastHours">For which a forecast was taken.</param>
    public sealed record WeatherStale(double? AgeHours, int ForecastHours) : Assumption
    {
        public override string Code => "weather_stale";
    }

    /// <summary>Before loading a forecast was taken where nothing was read: so many hours of each value.</summary>
    public sealed record ForecastUsed(
        int TemperatureHours, int HumidityHours, int RainHours, int WindHours, int RadiationHours) : Assumption
    {
        public override string Code => "forecast_used";
    }

    /// <summary>The air read last was not that of the forecast, which was moved to it.</summary>
    /// <param name="DryBulbK">By how much.</param>
    /// <param name="DewPointK">By how much.</param>
    /// <param name="HalvesInHours">In which half of the move wears off.</param>
    public sealed record ForecastBiasCorrected(double DryBulbK, double DewPointK, double HalvesInHours) : Assumption
    {
        public override string Code => "forecast_bias_corrected";
    }

    /// <summary>The air of the coming hours is not wholly in a forecast.</summary>
    /// <param name="UnknownHours">Without one.</param>
    /// <param name="Hours">That the wither may last.</param>
    /// <param name="FromDayBefore">Taken from the same hour of the day before.</param>
    /// <param name="Held">Held at the air last known.</param>
    public sealed record AirNotForecast(int UnknownHours, int Hours, int FromDayBefore, int Held) : Assumption
    {
        public override string Code => "air_not_forecast";
    }

    /// <summary>Leaf that has not come yet is in the plan.</summary>
    /// <param name="Lots">That are expected.</param>
    /// <param name="WeightKg">Of them all.</param>
    public sealed record LotsExpected(int Lots, double WeightKg) : Assumption
    {
        public override string Code => "lots_expected";
    }

    /// <summary>When lots were plucked nobody said: as long before loading as the first that tells it.</summary>
    /// <param name="Lots">Of which it is unknown.</param>
    public sealed record PluckingOfLotsUnknown(int Lots) : Assumption
    {
        public override string Code => "plucking_of_lots_unknown";
    }

    /// <summary>Told in a sentence by an answer that was given.</summary>
    /// <param name="SaidCode">Of it, as told then.</param>
    /// <param name="Sentence">As told then.</param>
    /// <param name="Meant">What it was made of; null where that is not known.</param>
    public sealed record SaidThen(string SaidCode, string Sentence, Assumption? Meant) : Assumption
    {
        public override string Code => SaidCode;
    }
}
