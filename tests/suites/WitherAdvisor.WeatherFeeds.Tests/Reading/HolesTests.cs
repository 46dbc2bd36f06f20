using WitherAdvisor.Readings;

namespace WitherAdvisor.WeatherFeeds.Tests.Reading;

/// <summary>A hole is unknown, never 0, and said.</summary>
public sealed class HolesTests
{
    private static readonly string[] Optional = ["wind_speed_10m", "surface_pressure", "shortwave_radiation"];

    [Fact]
    public void Nulls_at_both_ends_are_unknown_and_said()
    {
        FeedAnswer.Series series = Read.Good(body =>
        {
            foreach (int place in new[] { 0, 1, 70, 71 })
            {
                body.Column("precipitation")[place] = null;
            }
        });

        Assert.Equal(72, series.Readings.Count);
        Assert.All(new[] { 0, 1, 70, 71 }, place => Assert.Null(series.Readings[place].RainMm));
        Assert.Equal(68, series.Readings.Count(hour => hour.RainMm is not null));
        Assert.Equal(new FeedNote.UnknownHours("precipitation", 4, new(2026, 6, 4, 0, 0, 0, TimeSpan.Zero)), Expect.Note<FeedNote.UnknownHours>(series));
    }

    [Fact]
    public void A_column_of_nulls_is_unknown_in_every_hour()
    {
        FeedAnswer.Series series = Read.Good(body => Empty(body, "precipitation"));

        Assert.All(series.Readings, hour => Assert.Null(hour.RainMm));
        Assert.Equal(new FeedNote.UnknownHours("precipitation", 72, new(2026, 6, 4, 0, 0, 0, TimeSpan.Zero)), Expect.Note<FeedNote.UnknownHours>(series));
    }

    [Fact]
    public void Without_any_temperature_there_is_nothing_to_go_by() =>
        Expect.Refusal(RefusalReason.NoUsableHours, Read.Spoiled(body => Empty(body, "temperature_2m")));

    [Fact]
    public void Hours_of_which_nothing_is_known_are_absent_and_said()
    {
        FeedAnswer.Series series = Read.Good(body =>
        {
            foreach (var column in body["hourly"]!.AsObject().Where(column => column.Key != "time"))
            {
                column.Value!.AsArray()[71] = null;
                column.Value!.AsArray()[70] = null;
            }
        });

        Assert.Equal(70, series.Readings.Count);
        Assert.Equal(2, Expect.Note<FeedNote.MissingHours>(series).Hours);
    }

    [Fact]
    public void A_column_that_may_be_missing_is_unknown_and_said() => Assert.All(Optional, name =>
    {
        FeedAnswer.Series series = Read.Good(body => body["hourly"]!.AsObject().Remove(name));

        Assert.Equal(name, Expect.Note<FeedNote.MissingColumn>(series).Column);
        Assert.All(series.Readings, hour => Assert.True(
            new[] { hour.WindMPerS, hour.StationPressurePa, hour.ShortwaveWPerM2 }.Count(value => value is null) == 1));
    });

    [Fact]
    public void One_of_the_two_humidities_is_enough_and_none_is_too_little()
    {
        FeedAnswer.Series series = Read.Good(body => body["hourly"]!.AsObject().Remove("dew_point_2m"));
        Assert.All(series.Readings, hour => Assert.NotNull(hour.RelativeHumidity));

        Expect.Refusal(RefusalReason.WrongShape, Read.Spoiled(body =>
        {
            body["hourly"]!.AsObject().Remove("dew_point_2m");
            body["hourly"]!.AsObject().Remove("relative_humidity_2m");
        }));
    }

    // The first three are how stations and models write "missing"; the rest cannot be weather.
    [Theory]
    [InlineData("temperature_2m", -9999)]
    [InlineData("precipitation", -9999)]
    [InlineData("shortwave_radiation", -999)]
    [InlineData("precipitation", -0.1)]
    [InlineData("precipitation", 900)]
    [InlineData("temperature_2m", 85)]
    [InlineData("temperature_2m", 1e300)]
    [InlineData("wind_speed_10m", -1)]
    [InlineData("surface_pressure", 84.65)]
    [InlineData("relative_humidity_2m", -9999)]
    [InlineData("dew_point_2m", -9999)]
    public void What_no_weather_can_have_is_unknown_and_said(string name, double value)
    {
        FeedAnswer.Series series = Read.Good(body => body.Column(name)[9] = value);
        WeatherReading hour = series.Readings[9];

        double? read = name switch
        {
            "temperature_2m" => hour.DryBulbC,
            "precipitation" => hour.RainMm,
            "shortwave_radiation" => hour.ShortwaveWPerM2,
            "wind_speed_10m" => hour.WindMPerS,
            "surface_pressure" => hour.StationPressurePa,
            "relative_humidity_2m" => hour.RelativeHumidity,
            _ => hour.DewPointC,
        };
        Assert.Null(read);
        Assert.Equal(name, Expect.Note<FeedNote.ImpossibleValues>(series).Column);
    }

    [Fact]
    public void A_number_beyond_all_numbers_is_unknown()
    {
        string body = FeedFixture.Text("three-days.json").Replace("\"precipitation\": [", "\"precipitation\": [1e999, ", StringComparison.Ordinal);
        int end = body.IndexOf(", ", body.IndexOf("1e999, ", StringComparison.Ordinal) + 7, StringComparison.Ordinal);
        body = body.Remove(end, body.IndexOf(", ", end + 2, StringComparison.Ordinal) - end);

        FeedAnswer.Series series = Expect.Series(Read.Text(body));

        Assert.Null(series.Readings[0].RainMm);
        Expect.Note<FeedNote.ImpossibleValues>(series);
    }

    private static void Empty(System.Text.Json.Nodes.JsonObject body, string name)
    {
        for (int place = 0; place < 72; place++)
        {
            body.Column(name)[place] = null;
        }
    }
}
