using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Weather;

public sealed class CsvReadingsTests(RunningService service)
{
    [Fact]
    public async Task Columns_go_by_name_in_any_order_and_an_empty_cell_is_unknown()
    {
        TestLoft loft = await TestLoft.Open(service);
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
        TestLoft loft = await TestLoft.Open(service);
        (await Post(loft, "\uFEFF\"time\",\"dry_bulb_c\"\r\n\"2026-03-01T07:00:00Z\",\"19.4\"\r\n")).Expect(200);
    }

    [Fact]
    public async Task What_is_wrong_is_told_row_by_row_with_line_and_column_and_nothing_is_kept()
    {
        TestLoft loft = await TestLoft.Open(service);
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
        TestLoft loft = await TestLoft.Open(service);
        (await Post(loft, csv)).ExpectInvalid(field);
    }

    [Fact]
    public async Task Where_the_caller_so_chooses_the_good_rows_are_kept_and_each_refused_one_is_told()
    {
        TestLoft loft = await TestLoft.Open(service);
        Reply reply = await loft.Caller.PostText(loft.Path + "/weather?kind=observed&keep=good_rows", """
            time,dry_bulb_c,wet_bulb_c,rain_mm
            2026-03-01T07:00:00+05:30,19.4,17,0
            2026-03-01T08:00:00,"1,5",17,0
            2026-03-01T09:00:00+05:30,19,20,0
            2026-03-01T09:00:00+05:30,19,18,0
            2026-03-01T07:00:00+05:30,25,17,0
            2026-03-01T10:00:00+05:30,19,17
            """, "text/csv");

        var answer = reply.Expect(200).Json;
        Assert.Equal(6, (int)answer["received"]!);
        Assert.Equal(2, (int)answer["kept"]!);
        Assert.Equal(2, (int)answer["new"]!);
        Assert.Equal([3, 4, 6, 7], answer["refused"]!.AsArray().Select(row => (int)row!["line"]!));
        Assert.Equal(["line 3, column time", "line 3, column dry_bulb_c"], answer["refused"]![0]!["errors"]!.AsArray().Select(error => (string)error!["field"]!));
        Assert.Equal("\"1,5\"", (string)answer["refused"]![0]!["errors"]![1]!["given"]!);
        Assert.Equal("-40 to 60 °C", (string)answer["refused"]![0]!["errors"]![1]!["allowed"]!);
        var kept = (await loft.Caller.Get($"{loft.Path}/weather?kind=observed&from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z")).Json["readings"]!.AsArray();
        Assert.Equal([19.4, 19], kept.Select(reading => (double)reading!["dry_bulb_c"]!));
        Assert.Equal(18, (double)kept[1]!["wet_bulb_c"]!);
    }

    [Fact]
    public async Task Good_rows_alone_give_an_empty_list_of_refused_ones_and_none_is_a_refusal()
    {
        TestLoft loft = await TestLoft.Open(service);
        const string path = "/weather?kind=observed&keep=good_rows";
        Assert.Equal(
            """{"received":1,"new":1,"kept":1,"refused":[]}""",
            (await loft.Caller.PostText(loft.Path + path, "time,dry_bulb_c\n2026-03-01T07:00:00Z,19", "text/csv")).Expect(200).Text);
        (await loft.Caller.PostText(loft.Path + path, "time,dry_bulb_c\n2026-03-01T07:00:00Z,199", "text/csv")).ExpectInvalid("line 2, column dry_bulb_c");
        (await loft.Caller.PostText(loft.Path + path, "time,dry_bulb_f\n2026-03-01T07:00:00Z,66", "text/csv")).ExpectInvalid("line 1");
    }

    [Fact]
    public async Task What_to_keep_is_a_choice_for_CSV_and_spelt_exactly()
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.PostText(loft.Path + "/weather?kind=observed&keep=good_rows", """[{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 19}]""")).ExpectInvalid("keep");
        (await loft.Caller.PostText(loft.Path + "/weather?kind=observed&keep=good", "time,dry_bulb_c\n2026-03-01T07:00:00Z,19", "text/csv")).ExpectInvalid("keep");
        (await loft.Caller.PostText(loft.Path + "/weather?kind=observed&keep=all_or_none", "time,dry_bulb_c\n2026-03-01T07:00:00Z,19", "text/csv")).Expect(200);
    }

    [Fact]
    public async Task More_readings_than_a_call_may_hold_are_refused()
    {
        TestLoft loft = await TestLoft.Open(service);
        DateTimeOffset first = new(2025, 1, 1, 0, 0, 0, TimeSpan.Zero);
        var rows = Enumerable.Range(0, 5001).Select(hour => $"{first.AddHours(hour):yyyy-MM-ddTHH:mm:ssZ},19");
        (await Post(loft, "time,dry_bulb_c\n" + string.Join('\n', rows))).ExpectInvalid("body");
    }

    private static Task<Reply> Post(TestLoft loft, string csv) =>
        loft.Caller.PostText(loft.Path + "/weather?kind=observed", csv, "text/csv");
}
