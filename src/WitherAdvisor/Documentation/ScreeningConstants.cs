using WitherAdvisor.Coefficients;
using WitherAdvisor.Screening;

namespace WitherAdvisor.Documentation;

/// <summary>Where weather that came in is no longer believed.</summary>
internal static class ScreeningConstants
{
    private const string Airports = "Derived: a real year of three airports never reached it (fixtures/airports)";
    private const string Memory = "From memory";

    public static IReadOnlyList<ModelConstant> All { get; } =
    [
        Of("still_thermometer", StillThermometer.LeastH, "h", CoefficientStatus.Derived, Airports),
        Of("still_humidity", StillHumidity.LeastH, "h", CoefficientStatus.Derived, Airports),
        Of("still_humidity_range", StillHumidity.LeastRangeK, "K", CoefficientStatus.FromMemory, Memory),
        Of("calm_wind", CalmWind.LeastH, "h", CoefficientStatus.FromMemory, Memory),
        Of("most_rain_of_an_hour", HeavyRain.MostMmInHour, "mm", CoefficientStatus.FromMemory, "From memory: an hour of a hundred years in the wet tropics brings 100 to 130 mm"),
        Of("repeating_gauge", RepeatingGauge.LeastReadings, "", CoefficientStatus.Derived, Airports),
        Of("rain_like_inches", RainInInches.LeastMedianMm, "mm", CoefficientStatus.Derived, Airports),
        Of("dry_gauge", DryGauge.LeastDays, "d", CoefficientStatus.CommonPractice, "Common practice, no published source"),
        Of("dry_gauge_humidity", DryGauge.HumidAtMidday, "1", CoefficientStatus.FromMemory, Memory),
        Of("shifted_by_sun", ShiftedHours.LeastBySunH, "h", CoefficientStatus.FromMemory, Memory),
        Of("shifted_by_temperature", ShiftedHours.LeastByTemperatureH, "h", CoefficientStatus.Derived, Airports),
        Of("pressure_off", PressureOffElevation.MostShare, "1", CoefficientStatus.Derived, "Extremes at sea level are 870 and 1084 hPa; short of storms weather moves pressure by 5 %"),
    ];

    private static ModelConstant Of(string code, double value, string unit, CoefficientStatus status, string source) =>
        new(code, ModelTopic.Weather, value, unit, status, source);
}
