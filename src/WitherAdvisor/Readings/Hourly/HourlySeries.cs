using WitherAdvisor.Air;

namespace WitherAdvisor.Readings.Hourly;

/// <summary>
/// Weather on whole hours of UTC, from readings in any order, at any minute, with gaps. Air and wind are drawn
/// straight across gaps of up to three hours and no further; rain and radiation are never drawn out at all.
/// </summary>
/// <remarks>Arrays inside hold not-a-number for unknown; what leaves this type is null instead.</remarks>
public sealed class HourlySeries
{
    private const double LeastCovered = 0.5;

    private readonly ReadingTimeline timeline;
    private readonly double sitePressurePa;
    private readonly SkySeen?[] sky;

    private HourlySeries(
        HourGrid grid, ReadingTimeline timeline, IReadOnlyList<RainTotal> rainTotals, double sitePressurePa)
    {
        Grid = grid;
        this.timeline = timeline;
        this.sitePressurePa = sitePressurePa;
        ReadOnlySpan<double> position = timeline.Position;
        DryBulbC = InstantValues.OnHours(position, timeline.DryBulbC, grid.Hours);
        HumidityRatio = InstantValues.OnHours(position, timeline.HumidityRatio, grid.Hours);
        DryBulbObserved = InstantValues.ObservedNear(position, timeline.DryBulbC, grid.Hours);
        HumidityObserved = InstantValues.ObservedNear(position, timeline.HumidityRatio, grid.Hours);
        AirObserved = [.. DryBulbObserved.Zip(HumidityObserved, (dryBulb, humidity) => dryBulb && humidity)];
        WindMPerS = InstantValues.OnHours(position, timeline.WindMPerS, grid.Hours);
        WindObserved = InstantValues.ObservedNear(position, timeline.WindMPerS, grid.Hours);
        Shortwave = HourSums.Of(position, timeline.ShortwaveWPerM2, grid.Hours);
        Rain = HourlyRain.Of(timeline, rainTotals, grid);
        ReadingCount = timeline.Count;
        sky = SkyByHour(timeline, grid.Hours);
        ImpossibleValues = timeline.ImpossibleReadings + Rain.ImpossibleTotals;
    }

    /// <summary>The hours.</summary>
    public HourGrid Grid { get; }

    /// <summary>Instants with a reading in reach of the hours.</summary>
    public int ReadingCount { get; }

    /// <summary>Readings and totals with a value that no weather can have; it was taken as unknown.</summary>
    public int ImpossibleValues { get; }

    /// <summary>At instants, °C.</summary>
    internal double[] DryBulbC { get; }

    /// <summary>At instants, kg/kg.</summary>
    internal double[] HumidityRatio { get; }

    /// <summary>At instants: whether temperature was read within half an hour.</summary>
    internal bool[] DryBulbObserved { get; }

    /// <summary>At instants: whether humidity was read within half an hour.</summary>
    internal bool[] HumidityObserved { get; }

    /// <summary>At instants: whether wind was read within half an hour.</summary>
    internal bool[] WindObserved { get; }

    /// <summary>At instants: whether temperature and humidity were read within half an hour, and not drawn between readings.</summary>
    internal bool[] AirObserved { get; }

    /// <summary>At instants, 10 m above ground, m/s.</summary>
    internal double[] WindMPerS { get; }

    /// <summary>By the hour, W/m².</summary>
    internal HourSums Shortwave { get; }

    internal HourlyRain Rain { get; }

    /// <summary>The hours from one time to another.</summary>
    /// <param name="sitePressurePa">Pressure of the air where it is used, and of readings that bring none, Pa.</param>
    public static HourlySeries Between(
        DateTimeOffset from,
        DateTimeOffset to,
        IReadOnlyList<WeatherReading> readings,
        IReadOnlyList<RainTotal> rainTotals,
        double sitePressurePa) => On(HourGrid.Around(from, to), readings, rainTotals, sitePressurePa);

    /// <summary>The hours of a grid.</summary>
    public static HourlySeries On(
        HourGrid grid,
        IReadOnlyList<WeatherReading> readings,
        IReadOnlyList<RainTotal> rainTotals,
        double sitePressurePa) =>
        new(grid, ReadingTimeline.Of(readings, grid, sitePressurePa), rainTotals, sitePressurePa);

    /// <summary>The air at a time, which need not be a whole hour, at the site's pressure and never above saturation; null where unknown.</summary>
    public AirState? AirAt(DateTimeOffset time)
    {
        double position = Grid.PositionOf(time);
        if (position < 0 || position > Grid.Hours)
        {
            return null;
        }

        double dryBulbC = InstantValues.At(timeline.Position, timeline.DryBulbC, position);
        double humidityRatio = InstantValues.At(timeline.Position, timeline.HumidityRatio, position);
        return double.IsNaN(dryBulbC) || double.IsNaN(humidityRatio) ? null : Unsaturated(dryBulbC, humidityRatio);
    }

    /// <summary>Rain of the hour that ends at instant <paramref name="hour"/> (1 and up), mm; null where less than half of it is known.</summary>
    public double? RainMm(int hour) =>
        Rain.Known[hour] >= LeastCovered ? Rain.ObservedMm[hour] + Rain.StatedMm[hour] : null;

    /// <summary>Readings of the last so many hours whose rain is of a time that spacing alone tells: how many, and of how long most are; null where none.</summary>
    public (double LengthH, int Readings)? RainBySpacing(int lastHours)
    {
        var lengths = Enumerable.Range(0, timeline.Count)
            .Where(at => timeline.Position[at] > Grid.Hours - lastHours && timeline.Position[at] <= Grid.Hours && timeline.IsRainBySpacing(at))
            .GroupBy(at => timeline.RainH[at], (lengthH, same) => (lengthH, Readings: same.Count())).ToList();
        return lengths.Count == 0 ? null : (lengths.MaxBy(step => step.Readings).lengthH, lengths.Sum(step => step.Readings));
    }

    /// <summary>Mean global radiation of the hour that ends at instant <paramref name="hour"/>, W/m²; null where unknown.</summary>
    public double? ShortwaveWPerM2(int hour) =>
        Shortwave.Covered[hour] >= LeastCovered ? Shortwave.Amount[hour] / Shortwave.Covered[hour] : null;

    /// <summary>Wind at instant <paramref name="hour"/> (0 and up), 10 m above ground, m/s; null where unknown.</summary>
    public double? WindAtMPerS(int hour) => double.IsNaN(WindMPerS[hour]) ? null : WindMPerS[hour];

    /// <summary>What was last seen of the sky in the hour that ends at instant <paramref name="hour"/>; null where nobody said.</summary>
    internal SkySeen? SkyOf(int hour) => sky[hour];

    /// <summary>Relative humidity at instant <paramref name="hour"/>, 0 to 1; not a number where unknown.</summary>
    internal double RelativeHumidity(int hour) => new AirState(DryBulbC[hour], HumidityRatio[hour], sitePressurePa).RelativeHumidity;

    private static SkySeen?[] SkyByHour(ReadingTimeline timeline, int hours)
    {
        var seen = new SkySeen?[hours + 1];
        for (int at = 0; at < timeline.Count; at++)
        {
            int hour = (int)Math.Ceiling(timeline.Position[at]);
            if (hour >= 1 && hour <= hours && timeline.Sky[at] != default)
            {
                seen[hour] = timeline.Sky[at];
            }
        }

        return seen;
    }

    /// <summary>A straight line between two foggy hours lies above the saturation curve, which is hollow.</summary>
    private AirState Unsaturated(double dryBulbC, double humidityRatio) => new(
        dryBulbC,
        Math.Min(humidityRatio, MoistAir.SaturatedHumidityRatio(dryBulbC, sitePressurePa)),
        sitePressurePa);
}
