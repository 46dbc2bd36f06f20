using WitherAdvisor.Advice;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;

namespace WitherAdvisor.PlanSweep;

/// <summary>A situation as a maker would put it; everything in it is made up.</summary>
/// <param name="Climate">Air over the day and height of the loft.</param>
/// <param name="LoadKgPerM2">Leaf with its surface water.</param>
/// <param name="Moisture">Of the leaf without its surface water, wet basis, measured.</param>
/// <param name="SurfaceWater">On the leaf, kg per kg, measured.</param>
/// <param name="LoadedHour">Hour of the day.</param>
/// <param name="HoursSincePlucking">From first plucking to loading.</param>
/// <param name="SlowestFan">Share.</param>
/// <param name="HeaterKW">Of the trough; null for plenty.</param>
/// <param name="ReadyByHours">Wanted, hours from loading.</param>
/// <param name="Pace">Fuel or hours.</param>
public sealed record Situation(
    Climate Climate,
    double LoadKgPerM2,
    double Moisture,
    double SurfaceWater,
    double LoadedHour,
    double HoursSincePlucking,
    double SlowestFan,
    double? HeaterKW,
    double? ReadyByHours,
    WitherPace Pace = WitherPace.Balanced)
{
    private const double AreaM2 = 42;
    private const int DaysBefore = 10;
    private const int HoursAfter = 48;
    private static readonly DateTimeOffset Midnight = new(2026, 3, 10, 0, 0, 0, TimeSpan.FromHours(5.5));

    public AdviceOutcome.Advised Advise() => (AdviceOutcome.Advised)Advisor.Advise(Request());

    public AdviceRequest Request()
    {
        DateTimeOffset loaded = Midnight.AddHours(LoadedHour);
        return new(
            new Site(Climate.ElevationM, 7, 80, Site.UsualHotAirC, WitherStyle.Short with { Pace = Pace }),
            new Trough(AreaM2, SlowestFanShare: SlowestFan, HeaterKW: HeaterKW, FanKW: 3),
            new Batch(
                new LeafLabel("Invented", "Field", null, null, null), loaded.AddHours(-HoursSincePlucking),
                loaded.AddHours(-HoursSincePlucking / 3), loaded, LoadKgPerM2 * AreaM2, SurfaceWater, null, Moisture,
                loaded.AddHours(ReadyByHours ?? 0) is var readyBy && ReadyByHours is not null ? readyBy : null),
            [.. Hours(loaded, -24 * DaysBefore, 0)], [], [.. Hours(loaded, 1, HoursAfter)], new WitherCoefficients());
    }

    private IEnumerable<WeatherReading> Hours(DateTimeOffset loaded, int from, int to) =>
        Enumerable.Range(from, to - from + 1).Select(hour => Climate.At(loaded.AddHours(hour)));
}
