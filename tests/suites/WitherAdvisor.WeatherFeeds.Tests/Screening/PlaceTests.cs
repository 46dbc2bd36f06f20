using WitherAdvisor.Readings;
using WitherAdvisor.WeatherFeeds.Screening;
using WitherAdvisor.WeatherFeeds.Tests.Reading;

namespace WitherAdvisor.WeatherFeeds.Tests.Screening;

public sealed class PlaceTests
{
    // The earth's mean radius of 6,371.0088 km (IUGG) makes a degree of a great circle 111.195 km.
    [Theory]
    [InlineData(0, 0, 0, 1, 111.195)]
    [InlineData(0, 0, 1, 0, 111.195)]
    [InlineData(60, 10, 60, 10, 0)]
    [InlineData(0, 179.5, 0, -179.5, 111.195)]
    [InlineData(90, 0, -90, 0, 20_015.1)]
    public void Distances_are_those_of_great_circles(double north, double east, double otherNorth, double otherEast, double km) =>
        Assert.Equal(km, Distance.Km(north, east, otherNorth, otherEast), 0.06);

    [Fact]
    public void A_cell_across_the_line_of_the_date_is_near()
    {
        var origin = Read.Origin with { Query = new("fiji", 7, 179.95, 1_500, new FeedSpan.Around(1, 2)) };

        FeedAnswer.Series series = Read.Good(body => body["longitude"] = -179.95, origin);

        Assert.DoesNotContain(series.Notes, note => note is FeedNote.FarCell);
    }

    [Fact]
    public void A_cell_of_a_coarse_model_is_said() =>
        Assert.Equal(56, Expect.Note<FeedNote.FarCell>(Read.Good(body => body["latitude"] = 7.5)).AwayKm, 0.5);

    [Theory]
    [InlineData(8.2, 80.7)]
    [InlineData(-7, 80.7)]
    [InlineData(7, 0)]
    [InlineData(0, 0)]
    public void Weather_of_another_place_is_refused(double latitude, double longitude) =>
        Expect.Refusal(RefusalReason.WrongPlace, Read.Spoiled(body =>
        {
            body["latitude"] = latitude;
            body["longitude"] = longitude;
        }));

    [Theory]
    [InlineData(1_490)]
    [InlineData(1_510)]
    public void Values_made_for_the_sites_elevation_are_left_as_they_are(double elevationM) =>
        Assert.Equal(Read.Good().Readings, Read.Good(body => body["elevation"] = elevationM).Readings);

    [Fact]
    public void Values_made_for_a_lower_cell_are_brought_up_to_the_site()
    {
        // 6.5 K/km over 400 m is 2.6 K. Standard pressure: 87,716 Pa at 1,200 m and 83,524 Pa at 1,600 m
        // by ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1, eq. 3.
        var origin = Read.Origin with { Query = new("higher", 7, 80.7, 1_600, new FeedSpan.Around(1, 2)) };
        FeedAnswer.Series series = Read.Good(body => body["elevation"] = 1_200.0, origin);

        Assert.All(Read.Good().Readings.Zip(series.Readings), pair =>
        {
            (WeatherReading cell, WeatherReading site) = pair;
            Assert.Equal(cell.DryBulbC!.Value - 2.6, site.DryBulbC!.Value, 1e-9);
            Assert.Equal(0.95221, (site.StationPressurePa / cell.StationPressurePa)!.Value, 2e-5);
            Assert.Equal(HumidityOf(cell), HumidityOf(site), 0.002);
            Assert.Equal(cell with { DryBulbC = null, DewPointC = null, StationPressurePa = null },
                site with { DryBulbC = null, DewPointC = null, StationPressurePa = null });
        });
        Assert.Equal(-2.6, Expect.Note<FeedNote.CorrectedElevation>(series).MovedK, 1e-9);
        Assert.Equal(1_200, series.Provenance.CellElevationM);
        Assert.Equal(1_600, series.Provenance.ReadingsElevationM);
    }

    [Fact]
    public void Values_made_for_another_height_altogether_are_refused() =>
        Expect.Refusal(RefusalReason.WrongPlace, Read.Spoiled(body => body["elevation"] = 400.0));

    [Fact]
    public void An_unsaid_elevation_is_said_to_be_unknown()
    {
        FeedAnswer.Series series = Read.Good(body => body["elevation"] = null);

        Assert.Equal(Read.Good().Readings, series.Readings);
        Expect.Note<FeedNote.UnknownElevation>(series);
        Assert.Null(series.Provenance.ReadingsElevationM);
    }

    // Magnus form with 17.625 and 243.04 (Alduchov and Eskridge 1996, eq. 21), not our own saturation pressure.
    private static double HumidityOf(WeatherReading hour) => Magnus(hour.DewPointC!.Value) / Magnus(hour.DryBulbC!.Value);

    private static double Magnus(double temperatureC) => Math.Exp(17.625 * temperatureC / (temperatureC + 243.04));
}
