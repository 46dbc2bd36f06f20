using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Pages.Batches;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Pages.Readings;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Units;
using WitherAdvisor.Words;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class BatchFormTests
{
    private static readonly PersonUnits Imperial = new(TemperatureScale.Fahrenheit, WeightUnit.Pound);

    [Fact]
    public void A_full_form_becomes_the_batch_that_was_meant()
    {
        (EnteredBatch? entered, _) = Read(Filled(
            (BatchForm.Cultivar, "Invented 1"), (BatchForm.Bushes, "Young"), (BatchForm.Standard, "Coarse"),
            (BatchForm.Feel, "Wet"), (BatchForm.SurfaceWater, "12"), (BatchForm.Moisture, "77.5"),
            (TimeFields.Date(BatchForm.ReadyBy), "2026-07-15"), (TimeFields.Time(BatchForm.ReadyBy), "04:00")));

        Assert.NotNull(entered);
        Assert.Equal(new LeafLabel("Lower", "7", "Invented 1", BushAge.Young, LeafStandard.Coarse), entered.Batch.Label);
        Assert.Equal(new DateTimeOffset(2026, 7, 14, 10, 40, 0, TimeSpan.Zero), entered.Batch.LoadedAt);
        Assert.Equal(new DateTimeOffset(2026, 7, 14, 22, 30, 0, TimeSpan.Zero), entered.Batch.ReadyBy);
        Assert.Equal(1176, entered.Batch.GreenWeightKg);
        Assert.Equal(SurfaceFeel.Wet, entered.Batch.SurfaceFeel);
        Assert.Equal(0.12, entered.Batch.MeasuredSurfaceWaterKgPerKg!.Value, 1e-12);
        Assert.Equal(0.775, entered.Batch.MeasuredMoistureWetBasis!.Value, 1e-12);
        Assert.Null(entered.Air.Reading);
        Assert.Empty(entered.Air.RainTotals);
    }

    [Fact]
    public void What_nobody_said_stays_unknown()
    {
        (EnteredBatch? entered, _) = Read(Filled());

        Assert.NotNull(entered);
        Assert.Equal(new LeafLabel("Lower", "7", null, null, null), entered.Batch.Label);
        Assert.Null(entered.Batch.SurfaceFeel);
        Assert.Null(entered.Batch.MeasuredSurfaceWaterKgPerKg);
        Assert.Null(entered.Batch.MeasuredMoistureWetBasis);
        Assert.Null(entered.Batch.ReadyBy);
    }

    // NIST SP 811: 1 lb = 0.453 592 37 kg exactly.
    [Fact]
    public void Pounds_are_read_as_pounds()
    {
        (EnteredBatch? entered, _) = Read(Filled((BatchForm.GreenWeight, "2500")), Imperial);

        Assert.Equal(1133.980925, entered!.Batch.GreenWeightKg, 1e-9);
    }

    [Theory]
    [InlineData(BatchForm.GreenWeight, "1,200", "“1,200” is not a number", "1 to 1470 kg is allowed")]
    [InlineData(BatchForm.GreenWeight, "NaN", "“NaN” is not a number", "1 to 1470 kg is allowed")]
    [InlineData(BatchForm.GreenWeight, "1e3", "“1e3” is not a number", "1 to 1470 kg is allowed")]
    [InlineData(BatchForm.GreenWeight, "1471", "1471 kg is out of range", "1 to 1470 kg is allowed")]
    [InlineData(BatchForm.GreenWeight, "", "Nothing entered", "needed")]
    [InlineData(BatchForm.Division, "", "Nothing entered", "needed")]
    [InlineData(BatchForm.Division, "two\nlines", "9 characters", "on one line")]
    [InlineData(BatchForm.Moisture, "40", "40 % wet basis is out of range", "60 to 90 % wet basis is allowed")]
    [InlineData(BatchForm.SurfaceWater, "-1", "-1 %", "0 to 60 %")]
    [InlineData(BatchForm.Feel, "Soggy", "“Soggy” is not on the list", "choose from")]
    [InlineData(BatchForm.Feel, "2", "“2” is not on the list", "choose from")]
    [InlineData(BatchForm.Trough, "t9", "Choose one", "troughs")]
    [InlineData(LoftAirForm.RainDay, "-3", "-3 mm is out of range", "0 to")]
    public void A_wrong_field_is_told_what_was_given_and_what_is_allowed(string field, string typed, string given, string allowed)
    {
        (EnteredBatch? entered, FilledForm form) = Read(Filled((field, typed)));

        Assert.Null(entered);
        FieldProblem problem = Assert.Single(form.Problems);
        Assert.Equal(field, problem.Field);
        Assert.Contains(given, problem.Text, StringComparison.Ordinal);
        Assert.Contains(allowed, problem.Text, StringComparison.Ordinal);
        Assert.Equal(typed, form[field]);
    }

    [Theory]
    [InlineData(BatchForm.PluckedTo, "03:00", "is before plucking began")]
    [InlineData(BatchForm.LoadedAt, "10:00", "is before plucking ended")]
    [InlineData(BatchForm.LoadedAt, "26:00", "a 24-hour time")]
    [InlineData(BatchForm.LoadedAt, "", "Nothing entered")]
    public void Times_out_of_order_are_told(string field, string time, string text)
    {
        (EnteredBatch? entered, FilledForm form) = Read(Filled((TimeFields.Time(field), time)));

        Assert.Null(entered);
        Assert.Contains(text, Assert.Single(form.Problems).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Leaf_wanted_before_it_was_loaded_is_told()
    {
        (_, FilledForm form) = Read(Filled(
            (TimeFields.Date(BatchForm.ReadyBy), "2026-07-14"), (TimeFields.Time(BatchForm.ReadyBy), "09:00")));

        Assert.Equal(BatchForm.ReadyBy, Assert.Single(form.Problems).Field);
    }

    [Theory]
    [InlineData("2026-07-13", "10:09")]
    [InlineData("2026-07-13", "10:10")]
    [InlineData("2026-07-14", "14:30")]
    [InlineData("2026-07-14", "14:31")]
    public void The_form_agrees_with_the_interface_on_when_leaf_may_have_been_plucked(string date, string time)
    {
        (EnteredBatch? entered, _) = Read(Filled((TimeFields.Date(BatchForm.PluckedFrom), date), (TimeFields.Time(BatchForm.PluckedFrom), time)));

        DateTimeOffset from = new WallClock("Asia/Colombo").Read(date, time)!.Value;
        BatchRequest input = new()
        {
            Label = new() { Division = "Lower", Field = "7" },
            PluckedFrom = from,
            PluckedTo = Sample.LoadedAt.AddHours(-1).AddMinutes(-40),
            LoadedAt = Sample.LoadedAt,
            GreenWeightKg = 1176,
        };
        Assert.Equal(!input.CrossCheck().Any(), entered is not null);
    }

    [Theory]
    [InlineData("2026-07-14", "16:10")]
    [InlineData("2026-07-14", "16:11")]
    [InlineData("2026-07-16", "16:10")]
    [InlineData("2026-07-16", "16:11")]
    public void The_form_agrees_with_the_interface_on_when_leaf_may_be_wanted(string date, string time)
    {
        (EnteredBatch? entered, _) = Read(Filled((TimeFields.Date(BatchForm.ReadyBy), date), (TimeFields.Time(BatchForm.ReadyBy), time)));

        BatchRequest input = new()
        {
            Label = new() { Division = "Lower", Field = "7" },
            PluckedFrom = Sample.LoadedAt.AddHours(-8),
            PluckedTo = Sample.LoadedAt.AddHours(-2),
            LoadedAt = Sample.LoadedAt,
            GreenWeightKg = 1176,
            ReadyBy = new WallClock("Asia/Colombo").Read(date, time),
        };
        Assert.Equal(!input.CrossCheck().Any(), entered is not null);
    }

    [Fact]
    public void All_that_is_wrong_is_told_at_once() => Assert.Equal(
        [BatchForm.Trough, BatchForm.Division, BatchForm.Field, BatchForm.PluckedFrom, BatchForm.PluckedTo, BatchForm.LoadedAt, BatchForm.GreenWeight],
        Read(new Dictionary<string, string>(StringComparer.Ordinal)).Form.Problems.Select(problem => problem.Field));

    [Fact]
    public void Rain_sums_are_kept_as_they_were_read()
    {
        (EnteredBatch? entered, _) = Read(Filled((LoftAirForm.RainDay, "12"), (LoftAirForm.RainThreeDays, "61"), (LoftAirForm.RainTenDays, "61")));

        DateTimeOffset loaded = Sample.LoadedAt;
        Assert.Equal(
            [new RainTotal(loaded.AddDays(-1), loaded, 12), new(loaded.AddDays(-3), loaded, 61), new(loaded.AddDays(-10), loaded, 61)],
            entered!.Air.RainTotals);
    }

    [Fact]
    public void A_longer_rain_sum_alone_covers_all_of_its_time() => Assert.Equal(
        [new RainTotal(Sample.LoadedAt.AddDays(-3), Sample.LoadedAt, 61)],
        Read(Filled((LoftAirForm.RainThreeDays, "61"))).Entered!.Air.RainTotals);

    [Fact]
    public void More_rain_in_a_day_than_in_three_is_told()
    {
        (_, FilledForm form) = Read(Filled((LoftAirForm.RainDay, "12"), (LoftAirForm.RainThreeDays, "5")));

        FieldProblem problem = Assert.Single(form.Problems);
        Assert.Equal(LoftAirForm.RainThreeDays, problem.Field);
        Assert.Contains("5.0 mm is less than the 12 mm", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Air_read_at_loading_is_a_reading_of_that_time()
    {
        (EnteredBatch? entered, _) = Read(Filled((BulbFields.DryBulb, "20"), (BulbFields.Humidity, "85"), (BulbFields.Wind, "2.5")));

        Assert.Equal(new WeatherReading(Sample.LoadedAt, 20, RelativeHumidity: 0.85, WindMPerS: 2.5), entered!.Air.Reading);
    }

    [Fact]
    public async Task The_page_keeps_what_was_typed_and_leads_from_the_summary_to_the_field()
    {
        (_, FilledForm form) = Read(Filled((BatchForm.GreenWeight, "1,200"), (BatchForm.Division, "<i>\"Lower\"")));

        string html = await PageText.Html<NewBatchPage>(new
        {
            Sample.Site,
            Troughs = Array.Empty<WitherAdvisor.Api.Pages.Home.TroughOnHand>(),
            LastReading = (DateTimeOffset?)null,
            Form = form,
            Sample.View().Page,
        });

        Assert.Contains("<a href=\"#green_weight\">Green weight</a>", html, StringComparison.Ordinal);
        Assert.Contains("id=\"green_weight\"", html, StringComparison.Ordinal);
        Assert.Contains("value=\"1,200\"", html, StringComparison.Ordinal);
        Assert.Contains("aria-describedby=\"green_weight-hint green_weight-problem\"", html, StringComparison.Ordinal);
        Assert.Contains("value=\"&lt;i&gt;&quot;Lower&quot;\"", html, StringComparison.Ordinal);
        Assert.Contains("squeeze a handful", html, StringComparison.Ordinal);
        Assert.Contains("token-of-this-page", html, StringComparison.Ordinal);
    }

    [Fact]
    public void An_untouched_form_is_loaded_now_by_the_sites_clock()
    {
        FilledForm form = new(BatchForm.Fresh(new WallClock("Asia/Colombo"), Sample.LoadedAt, "t2"), []);

        Assert.Equal("2026-07-14", form[TimeFields.Date(BatchForm.LoadedAt)]);
        Assert.Equal("16:10", form[TimeFields.Time(BatchForm.LoadedAt)]);
        Assert.Equal("t2", form[BatchForm.Trough]);
    }

    private static Dictionary<string, string> Filled(params (string Field, string Typed)[] changes)
    {
        Dictionary<string, string> typed = new(StringComparer.Ordinal)
        {
            [BatchForm.Trough] = "t2",
            [BatchForm.Division] = "Lower",
            [BatchForm.Field] = "7",
            [TimeFields.Date(BatchForm.PluckedFrom)] = "2026-07-14",
            [TimeFields.Time(BatchForm.PluckedFrom)] = "08:00",
            [TimeFields.Date(BatchForm.PluckedTo)] = "2026-07-14",
            [TimeFields.Time(BatchForm.PluckedTo)] = "14:30",
            [TimeFields.Date(BatchForm.LoadedAt)] = "2026-07-14",
            [TimeFields.Time(BatchForm.LoadedAt)] = "16:10",
            [BatchForm.GreenWeight] = "1176",
        };
        foreach ((string field, string text) in changes)
        {
            typed[field] = text;
        }

        return typed;
    }

    private static (EnteredBatch? Entered, FilledForm Form) Read(Dictionary<string, string> typed, PersonUnits? units = null)
    {
        FormReader reader = new(Wordbook.English, typed);
        EnteredBatch? entered = new BatchForm(Sample.Site, [Sample.Trough], units ?? PersonUnits.Usual).Read(reader);
        return (entered, reader.Filled);
    }
}
