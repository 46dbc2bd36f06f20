using WitherAdvisor.Api.Sites;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Review;
using WitherAdvisor.Spells;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Weather;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>A day of a review as an answer.</summary>
internal static class ReviewDayMapping
{
    public static ReviewDayResponse ToResponse(ReviewDay day, SpellThresholds thresholds, SiteClock clock)
    {
        (string Field, ReviewValue Value)[] values =
        [
            ("rain_mm", day.RainMm),
            ("reference_evapotranspiration_mm", day.ReferenceMm),
            ("soil_depletion_mm", day.DepletionMm),
            ("water_stress_fraction", day.WaterStress),
            ("drying_power_kpa_m_per_s", day.DryingPowerKPaMPerS),
        ];
        return new()
        {
            From = clock.Local(day.From),
            To = clock.Local(day.To),
            EndsAhead = day.EndsAhead,
            RainMm = day.RainMm.Value,
            KnownRainMm = day.KnownRainMm,
            RainKnownHours = day.RainKnownH,
            ReferenceEvapotranspirationMm = day.ReferenceMm.Value,
            SoilDepletionMm = day.DepletionMm.Value,
            WaterStressFraction = day.WaterStress.Value,
            DryingPowerKpaMPerS = day.DryingPowerKPaMPerS.Value,
            Standing = values.Max(named => named.Value.Standing),
            Spell = ToResponse(day.Spell, thresholds),
            Unknown = ReviewMapping.Unknown(values),
        };
    }

    private static DaySpellResponse ToResponse(ReviewSpell spell, SpellThresholds thresholds) => new()
    {
        Kind = spell.Kind,
        DecidedBy = spell.Reason,
        Because = SpellReasonWording.Sentence(Wordbook.English, spell, thresholds),
        RainLastThreeDaysMm = spell.Spell.RainLast72HoursMm,
        RainLastTenDaysMm = spell.Spell.RainLast10DaysMm,
        RainOnLeafKgPerKg = spell.RainOnLeafKgPerKg,
        WaterStressFraction = spell.Spell.WaterStress,
        WaterStressStandardDeviationFraction = spell.Spell.WaterStressStandardDeviation,
        DryingPowerKpaMPerS = spell.Spell.DryingPowerKPaMPerS,
        DryingPowerThresholdKpaMPerS = spell.Spell.DryingPowerThresholdKPaMPerS,
    };
}
