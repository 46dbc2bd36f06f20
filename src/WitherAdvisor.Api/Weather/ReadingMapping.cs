using WitherAdvisor.Fields;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Weather;

/// <summary>A reading between the request and the domain.</summary>
internal static class ReadingMapping
{
    public static WeatherReading ToDomain(ReadingRequest input) => new(
        input.Time,
        input.DryBulbC,
        // What rounding put above the dry bulb is saturated air.
        input.DewPointC > input.DryBulbC ? input.DryBulbC : input.DewPointC,
        input.WetBulbC,
        Percent.ToFraction(input.RelativeHumidityPercent),
        input.RainMm,
        input.WindMPerS,
        input.StationPressureHpa * Pressure.PascalPerHectopascal,
        input.ShortwaveWPerM2,
        input.Instrument,
        input.RainMinutes,
        input.RainMinutesFrom,
        input.WeatherCode,
        input.VisibilityM);

    public static ReadingRequest ToRequest(WeatherReading reading) => new()
    {
        Time = reading.Time,
        DryBulbC = reading.DryBulbC,
        DewPointC = reading.DewPointC,
        WetBulbC = reading.WetBulbC,
        Instrument = reading.Instrument,
        RelativeHumidityPercent = Percent.Of(reading.RelativeHumidity),
        RainMm = reading.RainMm,
        RainMinutes = reading.RainMinutes,
        RainMinutesFrom = reading.RainMinutesFrom,
        WeatherCode = reading.WeatherCode,
        VisibilityM = reading.VisibilityM,
        WindMPerS = reading.WindMPerS,
        StationPressureHpa = reading.StationPressurePa / Pressure.PascalPerHectopascal,
        ShortwaveWPerM2 = reading.ShortwaveWPerM2,
    };
}
