using System.Globalization;
using System.Text;
using WitherAdvisor.Bed;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Recalibration;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>The past of an invented loft as its own system would tell it to the service: weather, and a log of withers.</summary>
/// <param name="WeatherCsv">Hourly readings, in parts that a request may hold.</param>
/// <param name="LogCsv">Every wither, by the columns of the service's log.</param>
/// <param name="Loft">What is true of it.</param>
public sealed record PastOfLoft(IReadOnlyList<string> WeatherCsv, string LogCsv, HiddenLoft Loft)
{
    /// <summary>Area of its troughs, m².</summary>
    public const double AreaM2 = 40;

    private const int MostReadings = 4000;

    /// <summary>Whole years and weeks before the season that the weather is made for, so that it is over whatever the clock says.</summary>
    private static readonly TimeSpan Before = TimeSpan.FromDays(728);

    private const string LogHeader = """
        loaded_at,plucked_from,plucked_to,trough,division,field,cultivar,leaf_standard,green_weight_kg,measured_surface_water_kg_per_kg,surface_feel,measured_moisture_wet_basis_percent,on_trough_hours,air_measured_from_hours,air_measured_dry_bulb_c,air_measured_hygrometric_difference_k,turned_at_hours,withered_weight_kg,oven_moisture_wet_basis_percent,sample_hours,sample_weight_percent
        """;

    /// <summary>A loft whose every coefficient lies so many spreads from the default, toward faster withers.</summary>
    public static PastOfLoft Make(int outcomes, int days, ulong seed, double spreadsApart = 1.5)
    {
        SplitMix64 random = new(0x9A57 + seed);
        HiddenLoft loft = HiddenLoft.Apart(random, spreadsApart, faster: true);
        IReadOnlyList<LoggedWither> log = OutcomeLog.Write(loft, LoftNight.Make(outcomes, days, seed), random, grossShare: 0);
        return new(
            [.. LoftNight.Weather(days, seed).Chunk(MostReadings).Select(Weather)],
            string.Join("\r\n", log.Select((one, number) => Line(one.Noted, number)).Prepend(LogHeader.Trim())) + "\r\n",
            loft);
    }

    private static string Weather(HourOfWeather[] hours)
    {
        StringBuilder csv = new("time,dry_bulb_c,dew_point_c,rain_mm,wind_m_per_s,station_pressure_hpa,shortwave_w_per_m2\r\n");
        foreach (HourOfWeather hour in hours)
        {
            csv.AppendJoin(',', Time(hour.Time), Number(hour.DryBulbC), Number(Math.Min(hour.DewPointC, hour.DryBulbC)), Number(hour.RainMm),
                Number(hour.WindMPerS), Number(hour.StationPressureHpa), Number(hour.ShortwaveWPerM2)).Append("\r\n");
        }

        return csv.ToString();
    }

    private static string Line(ObservedWither wither, int number)
    {
        DateTimeOffset plucked = wither.LoadedAt.AddHours(-wither.Features.HoursFromField);
        InletAir[] air = [.. wither.AirByHour.Take((int)wither.HoursOnTrough + 1)];
        SampleWeighing? sample = wither.Found.Weighings?[0];
        return string.Join(',', [
            Time(wither.LoadedAt), Time(plucked), Time(plucked), "trough-1", "Invented division", $"Field {number}", wither.Cultivar, $"{wither.Standard}".ToLowerInvariant(),
            Number(wither.GreenWeightKg), Number(wither.AtLoading.SurfaceWaterKgPerKg), $"{wither.AtLoading.Feel}".ToLowerInvariant(), Number(100 * wither.AtLoading.MoistureWetBasis),
            Number(wither.HoursOnTrough), string.Join(';', air.Select((_, hour) => hour)), string.Join(';', air.Select(one => Number(one.DryBulbC))),
            string.Join(';', air.Select(one => Number(DifferenceK(one, wither.PressurePa)))), string.Join(';', wither.TurnHours.Select(hour => Number(hour))),
            Number(wither.Found.WitheredWeightKg), Number(100 * wither.Found.MoistureWetBasis), Number(sample?.Hour), Number(100 * sample?.WeightShare),
        ]);
    }

    /// <summary>What two thermometers would have shown: the difference that gives back the humidity, by halving.</summary>
    private static double DifferenceK(InletAir air, double pressurePa)
    {
        double low = 0;
        double high = 20;
        while (high - low > 1e-4)
        {
            double middle = (low + high) / 2;
            (low, high) = InletAir.FromDifference(air.DryBulbC, middle, pressurePa).HumidityRatio > air.HumidityRatio ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static string Time(DateTimeOffset time) => (time - Before).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    private static string Number(double? number) => number is { } known ? Math.Round(known, 4).ToString("R", CultureInfo.InvariantCulture) : "";
}
