using System.Text.Json.Nodes;
using WitherAdvisor.Readings;
using WitherAdvisor.WeatherFeeds.Tests.Reading;

namespace WitherAdvisor.WeatherFeeds.Tests.Screening;

public sealed class HumidityScreenTests
{
    [Theory]
    [InlineData(101)]
    [InlineData(105)]
    public void A_relative_humidity_a_little_over_100_is_100(int percent)
    {
        FeedAnswer.Series series = WithoutDewPoint(body => body.Column("relative_humidity_2m")[6] = percent);

        Assert.Equal(1, series.Readings[6].RelativeHumidity);
        Expect.Note<FeedNote.ClampedHumidity>(series);
    }

    [Theory]
    [InlineData(106)]
    [InlineData(850)]
    public void A_relative_humidity_far_over_100_is_unknown(int percent)
    {
        FeedAnswer.Series series = WithoutDewPoint(body => body.Column("relative_humidity_2m")[6] = percent);

        Assert.Null(series.Readings[6].RelativeHumidity);
        Expect.Note<FeedNote.ImpossibleValues>(series);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    public void A_dew_point_a_little_over_the_dry_bulb_is_the_dry_bulb(double overK)
    {
        FeedAnswer.Series series = WithDewPointOver(overK);

        Assert.Equal(18, series.Readings[6].DewPointC);
        Expect.Note<FeedNote.ClampedDewPoint>(series);
    }

    [Theory]
    [InlineData(0.6)]
    [InlineData(10)]
    public void A_dew_point_far_over_the_dry_bulb_is_unknown_and_the_relative_humidity_counts(double overK)
    {
        FeedAnswer.Series series = WithDewPointOver(overK);
        WeatherReading hour = series.Readings[6];

        Assert.Null(hour.DewPointC);
        Assert.Equal(FeedFixture.ThreeDays().Value("relative_humidity_2m", 6) / 100, hour.RelativeHumidity);
        Expect.Note<FeedNote.RefusedDewPoint>(series);
    }

    private static FeedAnswer.Series WithDewPointOver(double overK) => Read.Good(body =>
    {
        body.Column("temperature_2m")[6] = 18.0;
        body.Column("dew_point_2m")[6] = 18.0 + overK;
    });

    private static FeedAnswer.Series WithoutDewPoint(Action<JsonObject> change) => Read.Good(body =>
    {
        body["hourly"]!.AsObject().Remove("dew_point_2m");
        change(body);
    });
}
