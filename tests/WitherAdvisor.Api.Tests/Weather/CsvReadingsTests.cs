using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Weather;

public sealed class CsvReadingsTests(RunningService service)
{
    [Fact]
    public async Task Columns_go_by_name_in_any_order_and_an_empty_cell_is_unknown()
    {
        Loft loft = await Loft.Open(service);
        Reply reply = await Post(loft, """
            rain_mm,time,dry_bulb_c,relative_humidity_percent
            0.4,2026-03-01T07:00:00+05:30,19.4,85
            ,2026-03-01T08:00:00+05:30,-1.5,
            """);
        Assert.Equal("""{"received":2,"new":2}""", reply.Expect(200).Text);
        var readings = (await loft.Caller.Get($"{loft.Path}/weather?kind=observed&from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z")).Json["readings"]!;
        Assert.Equal(85, (double)readings[0]!["relative_humidity_percent"]!);
        Assert.Equal(-1.5, (double)readings[1]!["dry_bulb_c"]!);
        Assert.Null(readings[1]!["rain_mm"]);
    }

    [Fact]
    public async Task A_byte_order_mark_quotes_and_Windows_line_ends_are_taken()
    {
        Loft loft = await Loft.Open(service);
        (await Post(loft, "\uFEFF\"time\",\"dry_bulb_c\"\r\n\"2026-03-01T07:00:00Z\",\"19.4\"\r\n")).Expect(200);
    }

    [Fact]
    public async Task What_is_wrong_is_told_row_by_row_with_line_and_column_and_nothing_is_kept()
    {
        Loft loft = await Loft.Open(service);
        Reply reply = await Post(loft, """
            time,dry_bulb_c,wet_bulb_c,rain_mm
            2026-03-01T07:00:00+05:30,19.4,17,0
            2026-03-01T08:00:00,"1,5",17,0
            2026-03-01T09:00:00+05:30,19,20,0
            2026-03-01T07:00:00+05:30,19,17,0
            2026-03-01T10:00:00+05:30,19,17
            2026-03-01T11:00:00+05:30,19,17,NaN
            2026-03-01T12:00:00+05:30,99,17,0
            """);
        Assert.Equal(
            ["line 3, column time", "line 3, column dry_bulb_c", "line 4, column wet_bulb_c", "line 5, column time", "line 6", "line 7, column rain_mm", "line 8, column dry_bulb_c"],
            reply.ExpectInvalid("line 3, column time").Errors.Select(error => error.Field));
        Assert.Equal("\"1,5\"", reply.Errors[1].Given);
        Assert.Equal("-40 to 60 °C", reply.Errors[1].Allowed);
        Assert.Empty((await loft.Caller.Get($"{loft.Path}/weather?kind=observed&from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z")).Json["readings"]!.AsArray());
    }

    [Theory]
    [InlineData("time,temperature\n2026-03-01T07:00:00Z,19", "line 1")]
    [InlineData("time,dry_bulb_f\n2026-03-01T07:00:00Z,67", "line 1")]
    [InlineData("time,rain_mm,rain_mm\n2026-03-01T07:00:00Z,1,2", "line 1")]
    [InlineData("dry_bulb_c\n19", "line 1, column time")]
    [InlineData("time,dry_bulb_c\n", "line 2")]
    [InlineData("", "line 1, column time")]
    public async Task A_file_without_the_right_header_or_rows_is_refused(string csv, string field)
    {
        Loft loft = await Loft.Open(service);
        (await Post(loft, csv)).ExpectInvalid(field);
    }

    [Fact]
    public async Task More_readings_than_a_call_may_hold_are_refused()
    {
        Loft loft = await Loft.Open(service);
        DateTimeOffset first = new(2025, 1, 1, 0, 0, 0, TimeSpan.Zero);
        var rows = Enumerable.Range(0, 5001).Select(hour => $"{first.AddHours(hour):yyyy-MM-ddTHH:mm:ssZ},19");
        (await Post(loft, "time,dry_bulb_c\n" + string.Join('\n', rows))).ExpectInvalid("body");
    }

    private static Task<Reply> Post(Loft loft, string csv) =>
        loft.Caller.PostText(loft.Path + "/weather?kind=observed", csv, "text/csv");
}
