using System.Text.Json.Nodes;
using WitherAdvisor.WeatherFeeds.Tests.Reading;

namespace WitherAdvisor.WeatherFeeds.Tests.Screening;

/// <summary>Hours that are missing, repeated, out of order, or of another day than asked.</summary>
public sealed class HoursTests
{
    [Fact]
    public void Missing_hours_stay_missing_and_are_said()
    {
        FeedAnswer.Series series = Read.Good(body => Each(body, column =>
        {
            column.RemoveAt(20);
            column.RemoveAt(20);
            column.RemoveAt(20);
        }));

        Assert.Equal(69, series.Readings.Count);
        Assert.Equal(
            new FeedNote.MissingHours(3, new(2026, 6, 4, 20, 0, 0, TimeSpan.Zero)), Expect.Note<FeedNote.MissingHours>(series));
    }

    [Fact]
    public void Hours_out_of_order_are_put_in_order_and_it_is_said()
    {
        FeedAnswer.Series series = Read.Good(body => Each(body, column =>
        {
            JsonNode? moved = column[10];
            column.RemoveAt(10);
            column.Add(moved);
        }));

        Assert.Equal(Read.Good().Readings, series.Readings);
        Expect.Note<FeedNote.UnsortedHours>(series);
    }

    [Fact]
    public void An_hour_that_comes_twice_alike_counts_once()
    {
        FeedAnswer.Series series = Read.Good(body => Each(body, column => column.Insert(11, column[10]!.DeepClone())));

        Assert.Equal(Read.Good().Readings, series.Readings);
        Expect.Note<FeedNote.RepeatedHours>(series);
    }

    [Fact]
    public void An_hour_that_comes_twice_differently_is_unknown_where_it_differs()
    {
        FeedAnswer.Series series = Read.Good(body =>
        {
            Each(body, column => column.Insert(11, column[10]!.DeepClone()));
            body.Column("precipitation")[10] = 0.0;
            body.Column("precipitation")[11] = 12.5;
            body.Column("wind_speed_10m")[10] = null;
        });

        Assert.Null(series.Readings[10].RainMm);
        Assert.Equal(Read.Good().Readings[10] with { RainMm = null }, series.Readings[10]);
        Assert.Equal("precipitation", Expect.Note<FeedNote.ContradictingHours>(series).Column);
    }

    [Fact]
    public void Past_only_is_said()
    {
        FeedAnswer.Series series = Read.Good(body => Each(body, column => Keep(column, 0, 35)));

        Assert.Equal(35, series.Readings.Count);
        Assert.Equal(FeedFixture.FetchedAt, Expect.Note<FeedNote.PastOnly>(series).After);
    }

    [Fact]
    public void A_day_that_a_model_does_not_foretell_is_said_to_be_past_only()
    {
        FeedAnswer.Series series = Read.Good(body => Each(body, column => Blank(column, 35)));

        Expect.Note<FeedNote.PastOnly>(series);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    public void A_clock_that_is_a_day_off_is_said_and_the_labels_are_believed(int days)
    {
        FeedAnswer.Series series = Read.Good(body => Relabel(body, days));

        Assert.Equal(Read.Good().Readings[0].Time.AddDays(days), series.Readings[0].Time);
        Assert.Equal(days, Expect.Note<FeedNote.ShiftedDays>(series).Days);
        Assert.Equal(24, Expect.Note<FeedNote.MissingHours>(series).Hours);
    }

    [Fact]
    public void At_midnight_a_day_of_difference_is_no_fault()
    {
        var origin = Read.Origin with { FetchedAt = new(2026, 6, 5, 23, 59, 58, TimeSpan.Zero) };

        Assert.DoesNotContain(Read.Good(body => Relabel(body, 1), origin).Notes, note => note is FeedNote.ShiftedDays);
    }

    [Theory]
    [InlineData(-365)]
    [InlineData(4)]
    public void Other_days_altogether_are_refused(int days) =>
        Expect.Refusal(RefusalReason.NoUsableHours, Read.Spoiled(body => Relabel(body, days)));

    [Fact]
    public void A_stray_hour_of_another_year_is_left_out_and_said()
    {
        FeedAnswer.Series series = Read.Good(body => body.Column("time")[0] = "1970-01-01T00:00");

        Assert.Equal(71, series.Readings.Count);
        Expect.Note<FeedNote.OutsideHours>(series);
    }

    [Fact]
    public void Three_hourly_values_are_refused_as_their_rain_may_be_of_three_hours() =>
        Expect.Refusal(RefusalReason.WrongShape, Read.Spoiled(body => Each(body, column =>
        {
            for (int place = 71; place >= 0; place--)
            {
                if (place % 3 != 0)
                {
                    column.RemoveAt(place);
                }
            }
        })));

    [Theory]
    [InlineData(-26)]
    [InlineData(-0.5)]
    [InlineData(24)]
    public void An_answer_dated_otherwise_than_our_clock_is_said(double hours)
    {
        FeedAnswer.Series series = Read.Good(origin: Read.Origin with { DatedAt = FeedFixture.FetchedAt.AddHours(hours) });

        Assert.Equal(TimeSpan.FromHours(Math.Abs(hours)), hours < 0
            ? Expect.Note<FeedNote.OldAnswer>(series).Before
            : Expect.Note<FeedNote.ClockDiffers>(series).After);
    }

    [Fact]
    public void Hours_after_the_date_of_an_old_answer_count_as_forecast()
    {
        FeedProvenance provenance = Read.Good(origin: Read.Origin with { DatedAt = FeedFixture.FetchedAt.AddHours(-5) }).Provenance;

        Assert.Equal(FeedFixture.FetchedAt, provenance.FetchedAt);
        Assert.Equal(FeedHourKind.Forecast, provenance.KindOf(FeedFixture.FetchedAt.AddHours(-1)));
    }

    private static void Each(JsonObject body, Action<JsonArray> change)
    {
        foreach (KeyValuePair<string, JsonNode?> column in body["hourly"]!.AsObject())
        {
            change(column.Value!.AsArray());
        }
    }

    private static void Keep(JsonArray column, int from, int count)
    {
        while (column.Count > from + count)
        {
            column.RemoveAt(column.Count - 1);
        }
    }

    private static void Blank(JsonArray column, int from)
    {
        for (int place = from; place < column.Count; place++)
        {
            column[place] = column[place]!.GetValueKind() == System.Text.Json.JsonValueKind.String ? column[place]!.DeepClone() : null;
        }
    }

    private static void Relabel(JsonObject body, int days)
    {
        JsonArray labels = body.Column("time");
        for (int place = 0; place < labels.Count; place++)
        {
            labels[place] = Read.Good().Readings[place].Time.AddDays(days).ToString("yyyy-MM-dd'T'HH:mm");
        }
    }
}
