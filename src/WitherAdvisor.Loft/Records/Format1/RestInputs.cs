using System.Text.Json;
using WitherAdvisor.Advice;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Loft.Records.Format1;

/// <summary>Reads the request of REST, version 1, that release 0.1.0 kept with an advice.</summary>
internal static class RestInputs
{
    public static AdviceInputs Read(string requestJson)
    {
        using var document = JsonDocument.Parse(requestJson);
        RestFields request = new(document.RootElement);
        RestFields site = request.Object("site");
        RestFields trough = request.Object("trough");
        return new(site.Text("name"), site.Text("time_zone"), trough.Text("name"), Request(request, site, trough));
    }

    private static AdviceRequest Request(RestFields request, RestFields site, RestFields trough)
    {
        var batch = RestLeaf.Batch(request.Object("batch"));
        List<WeatherReading> read = Readings(request.List("weather"));
        return new(
            RestPlace.Site(site),
            RestPlace.Trough(trough),
            batch,
            read.FindAll(reading => reading.Time <= batch.LoadedAt),
            [.. request.List("rain_totals").Select(RainTotal)],
            AirAhead(read, Readings(request.List("forecast")), batch.LoadedAt),
            RestCoefficients.Read(request.ObjectOrNull("coefficients")));
    }

    /// <summary>What was read after loading is air of the night too: it stands last and wins.</summary>
    private static List<WeatherReading> AirAhead(List<WeatherReading> read, List<WeatherReading> forecast, DateTimeOffset loadedAt) =>
        [.. forecast.Concat(read.Where(reading => reading.Time > loadedAt)).OrderBy(reading => reading.Time)];

    private static List<WeatherReading> Readings(IReadOnlyList<RestFields> list) =>
        [.. list.Select(Reading).OrderBy(reading => reading.Time)];

    private static WeatherReading Reading(RestFields reading)
    {
        double? dryBulbC = reading.NumberOrNull("dry_bulb_c");
        double? dewPointC = reading.NumberOrNull("dew_point_c");
        return new(
            reading.Time("time"),
            dryBulbC,
            dewPointC > dryBulbC ? dryBulbC : dewPointC,
            reading.NumberOrNull("wet_bulb_c"),
            reading.NumberOrNull("relative_humidity_percent") / 100,
            reading.NumberOrNull("rain_mm"),
            reading.NumberOrNull("wind_m_per_s"),
            reading.NumberOrNull("station_pressure_hpa") * 100,
            reading.NumberOrNull("shortwave_w_per_m2"),
            reading.WordOrNull<Air.PsychrometerKind>("instrument"));
    }

    private static RainTotal RainTotal(RestFields total) =>
        new(total.Time("from"), total.Time("to"), total.Number("rain_mm"), total.NumbersOrNull("pattern_mm"));
}
