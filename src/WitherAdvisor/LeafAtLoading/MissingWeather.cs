using WitherAdvisor.Canopy;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Spells;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>Names what was not known of the weather and what was taken in its place.</summary>
internal static class MissingWeather
{
    private const int WantedDays = 60;
    private const int HoursInDay = 24;
    private const double MinutesInHour = 60;

    /// <summary>Water of fog on the leaf not worth a word, mm.</summary>
    private const double LittleMm = 0.01;

    /// <summary>Missing hours not worth a word.</summary>
    private const double FewH = 1;

    public static List<Assumption> Of(HourlySeries series, HistoryGaps gaps, InterceptionStorage canopy, Spell spell)
    {
        var missing = new List<Assumption>();
        if (series.ReadingCount == 0 && gaps.RainKnownH < FewH)
        {
            missing.Add(new Assumption.NoHistory(spell.WaterStress, spell.WaterStressStandardDeviation));
            AddImpossible(missing, series);
            return missing;
        }

        AddRain(missing, series.Rain, gaps, spell);
        AddRainSteps(missing, series);
        AddFog(missing, canopy);
        AddAir(missing, gaps);
        AddImpossible(missing, series);
        return missing;
    }

    private static void AddRain(List<Assumption> missing, HourlyRain rain, HistoryGaps gaps, Spell spell)
    {
        if (gaps.RainKnownH < 0.9 * WantedDays * HoursInDay)
        {
            missing.Add(new Assumption.ShortHistory(gaps.RainKnownH / HoursInDay, WantedDays, spell.WaterStress, spell.WaterStressStandardDeviation));
        }

        if (gaps.UnknownRainIn72H >= FewH)
        {
            missing.Add(new Assumption.RainUnknown(gaps.UnknownRainIn72H));
        }

        if (gaps.StatedRainIn72H >= FewH)
        {
            missing.Add(new Assumption.RainHoursUnknown(gaps.StatedRainIn72H, rain.IsLaidByFeed));
        }
    }

    private static void AddRainSteps(List<Assumption> missing, HourlySeries series)
    {
        if (series.RainBySpacing(HistoryGaps.ShortStretchH) is var (lengthH, readings))
        {
            missing.Add(new Assumption.RainStepsBySpacing(Math.Round(lengthH * MinutesInHour), readings));
        }
    }

    private static void AddFog(List<Assumption> missing, InterceptionStorage canopy)
    {
        FogDeposit fog = canopy.Fog;
        int first = Math.Max(fog.Mm.Length - HistoryGaps.ShortStretchH, 0);
        int hours = Enumerable.Range(first, fog.Mm.Length - first).Count(hour => fog.Mm[hour] > 0 && !fog.IsSeen[hour]);
        if (hours > 0 && canopy.FogMm >= LittleMm)
        {
            missing.Add(new Assumption.FogByHumidity(hours));
        }
    }

    private static void AddAir(List<Assumption> missing, HistoryGaps gaps)
    {
        if (gaps.UnknownAirIn72H > FewH)
        {
            missing.Add(new Assumption.AirUnknown(gaps.UnknownAirIn72H));
        }

        if (gaps.DrawnAirIn72H > FewH)
        {
            missing.Add(new Assumption.AirInterpolated(gaps.DrawnAirIn72H, InstantValues.LongestGapH));
        }

        if (gaps.UnknownWindIn72H > FewH)
        {
            missing.Add(new Assumption.NoWind(gaps.UnknownWindIn72H));
        }

        if (gaps.UnmeasuredSunIn72H > HistoryGaps.ShortStretchH / 2)
        {
            missing.Add(new Assumption.NoRadiation(gaps.UnmeasuredSunIn72H));
        }
    }

    private static void AddImpossible(List<Assumption> missing, HourlySeries series)
    {
        if (series.ImpossibleValues > 0)
        {
            missing.Add(new Assumption.ImpossibleValues(series.ImpossibleValues));
        }
    }
}
