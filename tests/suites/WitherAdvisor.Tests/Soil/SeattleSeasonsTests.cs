using WitherAdvisor.Evaporation;
using WitherAdvisor.Soil;
using WitherAdvisor.Tests.Review;
using Xunit;

namespace WitherAdvisor.Tests.Soil;

/// <summary>Four real years through daily evapotranspiration and the root zone of tea: are seasons told apart?</summary>
public sealed class SeattleSeasonsTests
{
    private const double LatitudeDeg = 47.4;
    private const double ElevationM = 120;

    private static readonly IReadOnlyList<Day> Days = Run();

    [Theory]
    [InlineData(2012)]
    [InlineData(2013)]
    [InlineData(2014)]
    [InlineData(2015)]
    public void The_end_of_a_dry_summer_and_the_end_of_a_wet_winter_are_told_apart(int year)
    {
        double summer = MeanStress(year, 8, 9);
        double winter = MeanStress(year, 2, 3);

        Assert.True(summer < 0.7, $"August and September {year}: {summer:F2}");
        Assert.True(winter > 0.98, $"February and March {year}: {winter:F2}");
    }

    [Theory]
    [InlineData(7, 4.0, 6.5)]
    [InlineData(12, 0.2, 1.2)]
    public void Evapotranspiration_is_of_the_size_a_mild_mid_latitude_has_it(int month, double low, double high)
    {
        // FAO-56, table 2, from memory: temperate regions have 2 to 4 mm a day (humid) or 4 to 7 mm (dry) about 20 °C,
        // 1 to 3 mm about 10 °C. Seattle's July is dry and about 19 °C, its December wet and about 5 °C.
        double mean = Days.Where(day => day.Date.Month == month).Average(day => day.ReferenceMm);

        Assert.InRange(mean, low, high);
    }

    [Fact]
    public void What_fell_was_given_off_drained_or_stored()
    {
        double fell = Days.Sum(day => day.RainMm);
        double left = Days.Sum(day => day.Soil.GivenOffMm + day.Soil.DrainedMm) - Days[^1].Soil.DepletionMm;

        Assert.Equal(fell, left, 1e-6);
    }

    private static double MeanStress(int year, int firstMonth, int lastMonth) =>
        Days.Where(day => day.Date.Year == year && day.Date.Month >= firstMonth && day.Date.Month <= lastMonth)
            .Average(day => day.Soil.Stress);

    private static List<Day> Run()
    {
        var days = new List<Day>();
        double depletionMm = 0;
        foreach (ReferenceRow row in ReferenceRow.ReadAll("seattle/seattle-weather.csv"))
        {
            DateOnly date = DateOnly.ParseExact(row.Text("date"), "yyyy-MM-dd");
            double referenceMm = Evapotranspiration(row, date.DayOfYear);
            RootZoneDay soil = RootZone.Tea.Day(depletionMm, row.Number("precipitation"), referenceMm);
            depletionMm = soil.DepletionMm;
            days.Add(new(date, row.Number("precipitation"), referenceMm, soil));
        }

        return days;
    }

    /// <summary>Dew point taken as the lowest temperature, radiation from the range: FAO-56, eq. 48 and 50.</summary>
    private static double Evapotranspiration(ReferenceRow row, int dayOfYear)
    {
        double highestC = row.Number("temp_max");
        double lowestC = row.Number("temp_min");
        double vapourKPa = FaoAir.SaturationKPa(lowestC);
        double outside = SolarDay.Of(dayOfYear, LatitudeDeg).RadiationMJPerM2;
        double sunlight = Sunlight.FromTemperatureRange(outside, highestC - lowestC, ElevationM);
        double clearness = NetRadiation.Clearness(sunlight, Sunlight.ClearSky(outside, ElevationM));
        double net = NetRadiation.Shortwave(sunlight)
            - NetRadiation.LongwaveOfDay(highestC, lowestC, vapourKPa, clearness);
        double wind = FaoAir.WindAtTwoMetres(row.Number("wind"), 10);
        return Math.Max(
            ReferenceEvapotranspiration.OfDayMm(highestC, lowestC, vapourKPa, wind, net, FaoAir.PressureKPa(ElevationM)),
            0);
    }

    private sealed record Day(DateOnly Date, double RainMm, double ReferenceMm, RootZoneDay Soil);
}
