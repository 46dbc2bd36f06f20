using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Spells;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>Says in a sentence each what was not known of the weather and what was taken in its place.</summary>
internal static class MissingWeather
{
    private const int WantedDays = 60;
    private const int HoursInDay = 24;

    /// <summary>Missing hours not worth a sentence.</summary>
    private const double FewH = 1;

    public static List<Assumption> Of(HourlySeries series, HistoryGaps gaps, Spell spell)
    {
        var missing = new List<Assumption>();
        if (series.ReadingCount == 0 && gaps.RainKnownH < FewH)
        {
            missing.Add(new("no_history",
                $"No weather before plucking is known: water on the leaf and its moisture are usual values, and K_s is taken as {Stress(spell)}. {StaleWeather.WhatHelpsMost}"));
            AddImpossible(missing, series);
            return missing;
        }

        AddRain(missing, series.Rain, gaps, spell);
        AddAir(missing, gaps);
        AddImpossible(missing, series);
        return missing;
    }

    private static void AddRain(List<Assumption> missing, HourlyRain rain, HistoryGaps gaps, Spell spell)
    {
        if (gaps.RainKnownH < 0.9 * WantedDays * HoursInDay)
        {
            missing.Add(new("short_history",
                $"Rain is known for {gaps.RainKnownH / HoursInDay:0.#} of the {WantedDays} days wanted: soil water started from a guess, and K_s is {Stress(spell)}."));
        }

        if (gaps.UnknownRainIn72H >= FewH)
        {
            missing.Add(new("rain_unknown",
                $"Rain is unknown for {gaps.UnknownRainIn72H:0.#} of the 72 hours before plucking: about one chance in three of rain was taken for them."));
        }

        if (gaps.StatedRainIn72H >= FewH)
        {
            string laid = rain.IsLaidByFeed ? "they were laid on parts of a day as a feed tells of its rain, else spread evenly" : "they were spread evenly";
            missing.Add(new("rain_hours_unknown",
                $"Rain of {gaps.StatedRainIn72H:0.#} of the 72 hours before plucking is known only as totals: {laid}, and falling early or late is in the standard deviation."));
        }
    }

    private static void AddAir(List<Assumption> missing, HistoryGaps gaps)
    {
        if (gaps.UnknownAirIn72H > FewH)
        {
            missing.Add(new("air_unknown",
                $"Temperature or humidity is unknown for {gaps.UnknownAirIn72H} of the 72 hours before plucking: the mean of the same clock hours was taken, or 20 °C and 0.012 kg/kg where there is none."));
        }

        if (gaps.DrawnAirIn72H > FewH)
        {
            missing.Add(new("air_interpolated",
                $"Temperature or humidity of {gaps.DrawnAirIn72H} of the 72 hours before plucking was drawn straight between readings up to {InstantValues.LongestGapH:0} h apart."));
        }

        if (gaps.UnknownWindIn72H > FewH)
        {
            missing.Add(new("no_wind",
                $"Wind is unknown for {gaps.UnknownWindIn72H} of the 72 hours before plucking: the mean of the same clock hours was taken, or 2 m/s at 2 m height where there is none."));
        }

        if (gaps.UnmeasuredSunIn72H > HistoryGaps.ShortStretchH / 2)
        {
            missing.Add(new("no_radiation",
                $"Radiation was not measured in {gaps.UnmeasuredSunIn72H} of the 72 hours before plucking: it was worked out from each day's range of temperature, diffuse light only while it rained."));
        }
    }

    private static void AddImpossible(List<Assumption> missing, HourlySeries series)
    {
        if (series.ImpossibleValues > 0)
        {
            missing.Add(new("impossible_values",
                $"Values that no weather can have were taken as unknown, in {series.ImpossibleValues} of the readings or totals."));
        }
    }

    private static string Stress(Spell spell) => $"{spell.WaterStress:0.00} ± {spell.WaterStressStandardDeviation:0.00}";
}
