using System.Collections.Frozen;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Fields;
using WitherAdvisor.Readings;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Api.Feeds;

/// <summary>
/// Holds a feed to the ranges that callers are held to, so that kept weather can always be sent inline again. What is
/// outside becomes unknown, and is said.
/// </summary>
internal sealed class AllowedReadings
{
    private static readonly FrozenDictionary<string, FieldShape> Fields =
        ((ObjectShape)Shapes.Of(typeof(ReadingInput))).Fields
            .Where(field => field.Shape is NumberShape)
            .ToFrozenDictionary(field => field.Property.Name, StringComparer.Ordinal);

    private readonly SortedDictionary<string, (int Hours, DateTimeOffset First)> outside = new(StringComparer.Ordinal);

    public AllowedReadings(IEnumerable<WeatherReading> readings) =>
        Readings = [.. readings.Select(Of).Where(reading => reading.TellsAnything)];

    /// <summary>In the order given; those of which nothing remains are absent.</summary>
    public IReadOnlyList<WeatherReading> Readings { get; }

    /// <summary>What was left out.</summary>
    public IEnumerable<FeedNote> Notes => outside.Select(left => Note(Fields[left.Key], left.Value.Hours, left.Value.First));

    private static FeedNote.OutsideRange Note(FieldShape field, int hours, DateTimeOffset first)
    {
        NumberShape range = (NumberShape)field.Shape;
        return new(field.Name, range.Least, range.Most, range.Unit, hours, first);
    }

    private WeatherReading Of(WeatherReading reading)
    {
        ReadingInput shown = ReadingMapping.ToInput(reading);
        double? Kept(string field, double? value, double? own) => IsAllowed(field, value, reading.Time) ? own : null;
        return reading with
        {
            DryBulbC = Kept(nameof(ReadingInput.DryBulbC), shown.DryBulbC, reading.DryBulbC),
            DewPointC = Kept(nameof(ReadingInput.DewPointC), shown.DewPointC, reading.DewPointC),
            WetBulbC = Kept(nameof(ReadingInput.WetBulbC), shown.WetBulbC, reading.WetBulbC),
            RelativeHumidity = Kept(
                nameof(ReadingInput.RelativeHumidityPercent), shown.RelativeHumidityPercent, reading.RelativeHumidity),
            RainMm = Kept(nameof(ReadingInput.RainMm), shown.RainMm, reading.RainMm),
            WindMPerS = Kept(nameof(ReadingInput.WindMPerS), shown.WindMPerS, reading.WindMPerS),
            StationPressurePa = Kept(
                nameof(ReadingInput.StationPressureHpa), shown.StationPressureHpa, reading.StationPressurePa),
            ShortwaveWPerM2 = Kept(nameof(ReadingInput.ShortwaveWPerM2), shown.ShortwaveWPerM2, reading.ShortwaveWPerM2),
        };
    }

    private bool IsAllowed(string field, double? value, DateTimeOffset time)
    {
        NumberShape range = (NumberShape)Fields[field].Shape;
        if (value is null || (value >= range.Least && value <= range.Most))
        {
            return true;
        }

        outside[field] = outside.TryGetValue(field, out var before) ? (before.Hours + 1, before.First) : (1, time.ToUniversalTime());
        return false;
    }
}
