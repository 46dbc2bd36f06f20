using WitherAdvisor.Api.Sites;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>An hour of a review as an answer.</summary>
internal static class ReviewHourMapping
{
    public static ReviewHourResponse ToResponse(ReviewHour hour, SiteClock clock) => new()
    {
        Time = clock.Local(hour.Time),
        IsAhead = hour.IsAhead,
        DryBulbC = hour.DryBulbC.Value,
        DewPointC = hour.DewPointC.Value,
        WetBulbC = hour.WetBulbC.Value,
        HygrometricDifferenceK = hour.HygrometricDifferenceK.Value,
        RainMm = hour.RainMm.Value,
        WindMPerS = hour.WindMPerS.Value,
        SurfaceWaterKgPerKg = hour.SurfaceWaterKgPerKg.Value,
        Standing = new()
        {
            DryBulb = hour.DryBulbC.Standing,
            Humidity = hour.DewPointC.Standing,
            Rain = hour.RainMm.Standing,
            Wind = hour.WindMPerS.Standing,
            SurfaceWater = hour.SurfaceWaterKgPerKg.Standing,
        },
        Unknown = ReviewMapping.Unknown(
            ("dry_bulb_c", hour.DryBulbC),
            ("dew_point_c", hour.DewPointC),
            ("wet_bulb_c", hour.WetBulbC),
            ("hygrometric_difference_k", hour.HygrometricDifferenceK),
            ("rain_mm", hour.RainMm),
            ("wind_m_per_s", hour.WindMPerS),
            ("surface_water_kg_per_kg", hour.SurfaceWaterKgPerKg)),
    };
}
