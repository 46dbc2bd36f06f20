using WitherAdvisor.Readings;

namespace WitherAdvisor.WeatherFeeds.Tests.Reading;

public sealed class UnitsTests
{
    [Fact]
    public void The_same_weather_in_other_known_units_is_the_same_within_their_rounding()
    {
        IReadOnlyList<WeatherReading> asked = Read.Good().Readings;
        FeedAnswer.Series other = Expect.Series(Read.Text(FeedFixture.Text("other-units.json")));

        // 0.05 °F, 0.0005 inch and 0.05 km/h: half of the last digit a server gives.
        Assert.All(asked.Zip(other.Readings), pair =>
        {
            Assert.Equal(pair.First.DryBulbC!.Value, pair.Second.DryBulbC!.Value, 0.03);
            Assert.Equal(pair.First.DewPointC!.Value, pair.Second.DewPointC!.Value, 0.03);
            Assert.Equal(pair.First.RainMm!.Value, pair.Second.RainMm!.Value, 0.0128);
            Assert.Equal(pair.First.WindMPerS!.Value, pair.Second.WindMPerS!.Value, 0.014);
        });
        Assert.Equal(4, other.Notes.Count(note => note.Code == "converted_units"));
    }

    // Exact by definition: 1 inch 25.4 mm, 1 mile 1,609.344 m, 1 knot 1,852 m/h, 32 °F = 0 °C.
    [Theory]
    [InlineData("temperature_2m", "°F", 68, 20)]
    [InlineData("precipitation", "inch", 0.5, 12.7)]
    [InlineData("wind_speed_10m", "km/h", 36, 10)]
    [InlineData("wind_speed_10m", "kn", 36, 18.52)]
    [InlineData("wind_speed_10m", "mp/h", 10, 4.4704)]
    [InlineData("wind_speed_10m", "mph", 10, 4.4704)]
    [InlineData("surface_pressure", "kPa", 84.5, 84_500)]
    [InlineData("surface_pressure", "Pa", 84_500, 84_500)]
    public void A_known_unit_is_converted_and_said(string name, string unit, double value, double expected)
    {
        FeedAnswer.Series series = Read.Good(body =>
        {
            body["hourly_units"]![name] = unit;
            for (int place = 0; place < 72; place++)
            {
                body.Column(name)[place] = value;
            }

            // A dew point above the dry bulb would be another fault.
            body.Column("dew_point_2m")[0] = 5.0;
        });

        WeatherReading hour = series.Readings[0];
        Assert.Contains(expected, new[] { hour.DryBulbC!.Value, hour.RainMm!.Value, hour.WindMPerS!.Value, hour.StationPressurePa!.Value }
            .Select(read => Math.Round(read, 9)));
        Assert.Equal(unit, Expect.Note<FeedNote.ConvertedUnits>(series).Came);
    }

    [Theory]
    [InlineData("temperature_2m", "K")]
    [InlineData("temperature_2m", "C")]
    [InlineData("dew_point_2m", "%")]
    [InlineData("relative_humidity_2m", "fraction")]
    [InlineData("precipitation", "cm")]
    [InlineData("precipitation", "MM")]
    [InlineData("precipitation", "")]
    [InlineData("wind_speed_10m", "Bft")]
    [InlineData("surface_pressure", "mmHg")]
    [InlineData("shortwave_radiation", "MJ/m²")]
    [InlineData("time", "unixtime")]
    public void An_unknown_unit_is_refused(string name, string unit) =>
        Expect.Refusal(RefusalReason.WrongUnits, Read.Spoiled(body => body["hourly_units"]![name] = unit));

    [Theory]
    [InlineData("precipitation")]
    [InlineData("shortwave_radiation")]
    [InlineData("time")]
    public void A_missing_unit_is_refused(string name) =>
        Expect.Refusal(RefusalReason.WrongUnits, Read.Spoiled(body => body["hourly_units"]!.AsObject().Remove(name)));
}
