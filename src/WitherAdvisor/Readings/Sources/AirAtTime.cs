using WitherAdvisor.Air;

namespace WitherAdvisor.Readings.Sources;

/// <summary>The air of a reading.</summary>
internal readonly record struct AirAtTime(DateTimeOffset Time, double DryBulbC, double DewPointC)
{
    /// <summary>Of those readings that tell it whole, by time; of one time the last in the list counts.</summary>
    public static AirAtTime[] Of(IEnumerable<WeatherReading> readings, double sitePressurePa) =>
    [
        .. from reading in readings
           let screened = ScreenedReading.Of(reading)
           where screened.DryBulbC is not null
           let humidityRatio = ScreenedReading.HumidityRatio(screened, sitePressurePa)
           where !double.IsNaN(humidityRatio)
           let air = new AirState(screened.DryBulbC!.Value, humidityRatio, screened.StationPressurePa ?? sitePressurePa)
           group new AirAtTime(reading.Time, air.DryBulbC, air.DewPointC) by reading.Time.UtcTicks into instant
           orderby instant.Key
           select instant.Last(),
    ];
}
