using WitherAdvisor.Evaporation;
using Xunit;

namespace WitherAdvisor.Tests.Evaporation;

public sealed class SolarDayTests
{
    [Theory]
    [InlineData(355, 70, 0.0)]
    [InlineData(172, 70, 24.0)]
    [InlineData(81, 0, 12.0)]
    public void The_polar_night_is_dark_the_polar_day_has_no_end(int dayOfYear, double latitudeDeg, double daylightH) =>
        Assert.Equal(daylightH, SolarDay.Of(dayOfYear, latitudeDeg).DaylightH, 1e-6);

    [Theory]
    [InlineData(7, 80.7)]
    [InlineData(47.4, -122.3)]
    [InlineData(-1.2, 179.9)]
    public void The_hours_of_a_day_add_up_to_the_day_wherever_it_is(double latitudeDeg, double longitudeDeg)
    {
        SolarDay day = SolarDay.Of(100, latitudeDeg);
        double sum = 0;
        for (int hour = 0; hour < 24; hour++)
        {
            double middle = day.HourAngleRad(hour + 0.5, longitudeDeg);
            sum += day.RadiationBetweenMJPerM2(middle - Math.PI / 24, middle + Math.PI / 24);
        }

        Assert.Equal(day.RadiationMJPerM2, sum, 1e-9);
    }
}
