using System.Text.Json.Nodes;
using WitherAdvisor.Readings;

namespace WitherAdvisor.WeatherFeeds.Tests.Reading;

public sealed class GoodAnswerTests
{
    [Fact]
    public void Every_hour_is_read_in_the_librarys_units()
    {
        JsonObject body = FeedFixture.ThreeDays();
        FeedAnswer.Series series = Read.Good();

        Assert.Empty(series.Notes);
        Assert.Equal(72, series.Readings.Count);
        for (int place = 0; place < 72; place++)
        {
            Assert.Equal(
                new WeatherReading(
                    new DateTimeOffset(2026, 6, 4, 0, 0, 0, TimeSpan.Zero).AddHours(place),
                    DryBulbC: body.Value("temperature_2m", place),
                    DewPointC: body.Value("dew_point_2m", place),
                    RainMm: body.Value("precipitation", place),
                    WindMPerS: body.Value("wind_speed_10m", place),
                    StationPressurePa: body.Value("surface_pressure", place) * 100,
                    ShortwaveWPerM2: body.Value("shortwave_radiation", place)),
                series.Readings[place]);
        }
    }

    [Fact]
    public void The_dew_point_wins_over_the_relative_humidity_in_whole_percent() =>
        Assert.All(Read.Good().Readings, hour => Assert.Null(hour.RelativeHumidity));

    [Fact]
    public void Where_the_dew_point_is_unknown_the_relative_humidity_counts()
    {
        WeatherReading hour = Read.Good(body => body.Column("dew_point_2m")[5] = null).Readings[5];

        Assert.Null(hour.DewPointC);
        Assert.Equal(FeedFixture.ThreeDays().Value("relative_humidity_2m", 5) / 100, hour.RelativeHumidity);
    }

    [Fact]
    public void Whole_numbers_are_numbers() =>
        Assert.Equal(17.0, Read.Good(body => body.Column("temperature_2m")[0] = 17).Readings[0].DryBulbC);

    [Fact]
    public void A_byte_order_mark_is_passed_over() =>
        Expect.Series(Read.Text("\uFEFF" + FeedFixture.Text("three-days.json")));

    [Fact]
    public void Provenance_says_where_and_when_the_series_comes_from()
    {
        FeedProvenance provenance = Read.Good().Provenance;

        Assert.Equal(
            new FeedProvenance("invented", "Invented weather", FeedSource.Forecast, FeedFixture.FetchedAt, FeedFixture.FetchedAt, 7, 80.75, 1_500, 1_500),
            provenance);
    }

    // Fetched at 10:20: rain labelled 11:00 fell, or will, from 10:00 to 11:00.
    [Theory]
    [InlineData(9, FeedHourKind.Analysis)]
    [InlineData(10, FeedHourKind.Analysis)]
    [InlineData(11, FeedHourKind.PartForecast)]
    [InlineData(12, FeedHourKind.Forecast)]
    public void Provenance_parts_what_has_been_from_what_is_forecast(int hour, FeedHourKind kind) =>
        Assert.Equal(kind, Read.Good().Provenance.KindOf(new DateTimeOffset(2026, 6, 5, hour, 0, 0, TimeSpan.Zero)));
}
