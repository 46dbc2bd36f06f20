using WitherAdvisor.Api.Weather;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>A feed is held to what callers are held to: one range a value.</summary>
public sealed class ReadingRangeTests
{
    private static readonly DateTimeOffset At = new(2026, 3, 1, 10, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Every_number_of_a_reading_has_the_range_of_its_field_in_a_request() => Assert.Equal(
        ((ObjectShape)Shapes.Of(typeof(ReadingRequest))).Fields
            .Where(field => field.Shape is NumberShape { Whole: false })
            .Select(field => (field.Name, field.Shape.Allowed))
            .Order(),
        ReadingRange.All.Select(range => (range.Name, $"{range.Least} to {range.Most} {range.Unit}")).Order());

    [Fact]
    public void A_range_is_of_the_value_that_it_is_named_after()
    {
        ReadingRequest sent = new()
        {
            Time = At,
            DryBulbC = 20,
            DewPointC = 15,
            WetBulbC = 17,
            RelativeHumidityPercent = 73,
            RainMm = 1.5,
            RainMinutes = 15,
            VisibilityM = 400,
            WindMPerS = 2,
            StationPressureHpa = 850,
            ShortwaveWPerM2 = 400,
        };
        WeatherReading reading = ReadingMapping.ToDomain(sent);

        Assert.All(ReadingRange.All, range =>
        {
            FieldShape field = ((ObjectShape)Shapes.Of(typeof(ReadingRequest))).Fields.Single(one => one.Name == range.Name);
            Assert.Equal((double)field.Property.GetValue(sent)!, range.Of(reading)!.Value, 1e-9);
            Assert.Null(range.Of(range.Without(reading)));
            Assert.All(ReadingRange.All.Where(other => other != range), other => Assert.NotNull(other.Of(range.Without(reading))));
        });
    }
}
