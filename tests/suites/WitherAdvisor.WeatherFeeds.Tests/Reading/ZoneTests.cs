namespace WitherAdvisor.WeatherFeeds.Tests.Reading;

/// <summary>Instants are those of GMT, which was asked, or there are none.</summary>
public sealed class ZoneTests
{
    [Fact]
    public void A_site_in_a_half_hour_zone_gets_the_instants_of_gmt()
    {
        // 05:30 at 80.7° E, where clocks are 5½ h ahead.
        DateTimeOffset local = new(2026, 6, 4, 5, 30, 0, TimeSpan.FromHours(5.5));

        Assert.Equal(local.ToUniversalTime(), Read.Good().Readings[0].Time);
    }

    [Fact]
    public void Labels_of_a_half_hour_zone_are_refused() =>
        Assert.Equal(new FeedFault.OffGmt(19_800), Expect.Refusal(
            RefusalReason.WrongZone, Read.Text(FeedFixture.Text("half-hour-zone.json"))).Fault);

    [Fact]
    public void A_day_on_which_clocks_change_has_24_hours_an_hour_apart()
    {
        // Belgium's clocks went from 02:00 to 03:00 on 29 March 2026, at 01:00 GMT (Directive 2000/84/EC).
        var origin = Read.Origin with
        {
            Query = new("in-belgium", 50.85, 4.35, 100, new FeedSpan.Days(new(2026, 3, 28), new(2026, 3, 30))),
        };

        FeedAnswer.Series series = Expect.Series(Read.Text(FeedFixture.Text("spring-forward.json"), origin));

        DateTimeOffset first = new(2026, 3, 28, 0, 0, 0, TimeSpan.Zero);
        Assert.Equal(Enumerable.Range(0, 72).Select(hour => first.AddHours(hour)), series.Readings.Select(hour => hour.Time));
        Assert.Equal(24, series.Readings.Count(hour => hour.Time.UtcDateTime.Day == 29));
        Assert.Equal(FeedSource.Archive, series.Provenance.Source);
    }

    [Theory]
    [InlineData(3_600, "GMT")]
    [InlineData(-1, "GMT")]
    [InlineData(7_200, "Europe/Brussels")]
    [InlineData(0, "Europe/London")]
    [InlineData(0, "")]
    public void Any_other_zone_is_refused(int offset, string zone) =>
        Expect.Refusal(RefusalReason.WrongZone, Read.Spoiled(body =>
        {
            body["utc_offset_seconds"] = offset;
            body["timezone"] = zone;
        }));

    [Theory]
    [InlineData("utc_offset_seconds")]
    [InlineData("timezone")]
    public void A_zone_that_is_not_said_is_refused(string name) =>
        Expect.Refusal(RefusalReason.WrongZone, Read.Spoiled(body => body.Remove(name)));

    [Fact]
    public void Labels_off_the_whole_hour_are_refused_whatever_offset_is_said() =>
        Expect.Refusal(RefusalReason.WrongZone, Read.Spoiled(body =>
        {
            for (int place = 0; place < 72; place++)
            {
                body.Column("time")[place] = body.Column("time")[place]!.GetValue<string>().Replace(":00", ":30", StringComparison.Ordinal);
            }
        }));
}
