using WitherAdvisor.Readings;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Screening;

/// <summary>Weather that was looked over: what is believed of it, and what was found.</summary>
/// <param name="Readings">Without what is doubted; those of which nothing remains are absent.</param>
/// <param name="Faults">What was found.</param>
/// <remarks>Each rule stands in a file of its own. Good data is not accused: FALSE-ALARMS.md counts it over real years.</remarks>
public sealed record ScreenedWeather(IReadOnlyList<WeatherReading> Readings, IReadOnlyList<Assumption> Faults)
{
    private static readonly Func<WeatherToScreen, IEnumerable<WeatherFinding>>[] Rules =
    [
        StillThermometer.In, StillHumidity.In, CalmWind.In, PressureOffElevation.In,
        HeavyRain.In, RepeatingGauge.In, RainInInches.In, DryGauge.In, ShiftedHours.In,
    ];

    /// <summary>Hours by which the readings are later than the sun; null where they are not.</summary>
    public double? LateH => Faults.OfType<Assumption.HoursShifted>().FirstOrDefault()?.ByHours;

    /// <summary>Looks readings over.</summary>
    /// <param name="readings">Of what was read, in any order.</param>
    public static ScreenedWeather Of(Site site, IReadOnlyList<WeatherReading> readings)
    {
        if (readings.Count == 0)
        {
            return new(readings, []);
        }

        var weather = WeatherToScreen.Of(site, readings);
        List<WeatherFinding> findings = [.. Rules.SelectMany(rule => rule(weather))];
        return new(
            findings.Exists(finding => finding.Fault is not Assumption.HoursShifted) ? Believed(readings, findings) : readings,
            [.. findings.Select(finding => finding.Fault)]);
    }

    /// <summary>The same readings at the times that the sun tells; only to see what the doubt about them may change.</summary>
    public IReadOnlyList<WeatherReading> AtSunTime() => LateH is not { } lateH
        ? Readings
        : [.. Readings.Select(reading => reading with { Time = reading.Time.AddHours(-Math.Round(lateH)) })];

    private static IReadOnlyList<WeatherReading> Believed(IReadOnlyList<WeatherReading> readings, List<WeatherFinding> findings) =>
    [
        .. readings.Select(reading => findings.Aggregate(reading, (left, finding) => finding.Of(left))).Where(reading => reading.TellsAnything),
    ];
}
