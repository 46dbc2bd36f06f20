using WitherAdvisor.Air;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Pages.Readings;
using WitherAdvisor.Readings;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class ReadingFormTests
{
    [Fact]
    public void A_wet_bulb_read_by_hand_is_saved_as_read_with_its_instrument()
    {
        (EnteredReading? entered, _) = Read((BulbFields.DryBulb, "25.6"), (BulbFields.WetBulb, "19.5"), (BulbFields.Instrument, "Unventilated"));

        Assert.Equal(
            new WeatherReading(Sample.LoadedAt, 25.6, WetBulbC: 19.5, Instrument: PsychrometerKind.Unventilated), entered!.Air);
    }

    [Fact]
    public void Fahrenheit_is_read_as_fahrenheit()
    {
        (EnteredReading? entered, _) = Read(
            new PersonUnits(TemperatureScale.Fahrenheit, WeightUnit.Kilogram), (BulbFields.DryBulb, "77"), (BulbFields.Humidity, "60"));

        Assert.Equal(25, entered!.Air!.DryBulbC);
        Assert.Equal(0.6, entered.Air.RelativeHumidity!.Value, 1e-12);
    }

    [Theory]
    [InlineData(BulbFields.WetBulb, "21", "cannot be above the dry bulb, 20.0 °C")]
    [InlineData(BulbFields.WetBulb, "1", "too low for air at 20.0 °C")]
    [InlineData(BulbFields.Instrument, "", "Choose the instrument")]
    [InlineData(BulbFields.DryBulb, "", "Enter the dry bulb too")]
    [InlineData(BulbFields.DryBulb, "68 F", "“68 F” is not a number")]
    [InlineData(BulbFields.DryBulb, "70", "-10 to 50 °C")]
    public void A_pair_that_cannot_be_is_told(string field, string typed, string text)
    {
        (EnteredReading? entered, FilledForm form) = Read(
            [(BulbFields.DryBulb, "20"), (BulbFields.WetBulb, "17"), (BulbFields.Instrument, "Sling"), (field, typed)]);

        Assert.Null(entered);
        FieldProblem problem = Assert.Single(form.Problems);
        Assert.Equal(field, problem.Field);
        Assert.Contains(text.Replace('-', '−'), problem.Text.Replace('-', '−'), StringComparison.Ordinal);
    }

    [Fact]
    public void Rain_since_the_last_reading_is_a_total_over_those_hours()
    {
        (EnteredReading? entered, _) = Read((ReadingForm.Rain, "4.5"), (ReadingForm.RainHours, "12"));

        Assert.Null(entered!.Air);
        Assert.Equal(new RainTotal(Sample.LoadedAt.AddHours(-12), Sample.LoadedAt, 4.5), entered.Rain);
    }

    [Fact]
    public void Rain_without_its_hours_is_told() =>
        Assert.Equal(ReadingForm.RainHours, Assert.Single(Read((ReadingForm.Rain, "4.5")).Form.Problems).Field);

    [Fact]
    public void A_reading_of_nothing_is_told() => Assert.Contains("give air, wind or rain", Assert.Single(Read([]).Form.Problems).Text, StringComparison.Ordinal);

    [Fact]
    public void A_reading_of_a_time_to_come_is_told()
    {
        (_, FilledForm form) = Read((BulbFields.DryBulb, "20"), (TimeFields.Time(ReadingForm.ReadAt), "16:30"));

        Assert.Contains("later than now, Tue 14 Jul 2026, 16:10", Assert.Single(form.Problems).Text, StringComparison.Ordinal);
    }

    private static (EnteredReading? Entered, FilledForm Form) Read(params (string Field, string Typed)[] typed) => Read(PersonUnits.Usual, typed);

    private static (EnteredReading? Entered, FilledForm Form) Read(PersonUnits units, params (string Field, string Typed)[] typed)
    {
        Dictionary<string, string> fields = new(ReadingForm.Fresh(new WallClock("Asia/Colombo"), Sample.LoadedAt), StringComparer.Ordinal);
        foreach ((string field, string text) in typed)
        {
            fields[field] = text;
        }

        FormReader reader = new(Wordbook.English, fields);
        EnteredReading? entered = new ReadingForm(Sample.Site, units).Read(reader, Sample.LoadedAt);
        return (entered, reader.Filled);
    }
}
