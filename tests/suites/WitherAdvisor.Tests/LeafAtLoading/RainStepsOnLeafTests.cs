using WitherAdvisor.Coefficients;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using Xunit;

namespace WitherAdvisor.Tests.LeafAtLoading;

/// <summary>Equal water is equal leaf, however often the station reports it.</summary>
public sealed class RainStepsOnLeafTests
{
    private const double WithinShare = 0.03;

    public static TheoryData<int, double, double> Cases()
    {
        TheoryData<int, double, double> cases = [];
        foreach (int minutes in (int[])[5, 15, 30, 60, 360])
        {
            foreach (double rainMm in (double[])[0.6, 4, 22, 60])
            {
                // The rain of six hours is not known before they are over.
                foreach (double pluckedH in minutes > 60 ? (double[])[7] : [7, 8, 9])
                {
                    cases.Add(minutes, rainMm, pluckedH);
                }
            }
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Surface_water_of_any_step_is_that_of_the_hourly_one(int minutes, double rainMm, double pluckedH)
    {
        double hourly = Estimate(60, rainMm, pluckedH).SurfaceWaterKgPerKg.Value;
        LeafEstimate estimate = Estimate(minutes, rainMm, pluckedH);

        Assert.True(hourly > 0.003, $"{hourly} is no water to compare");
        Assert.InRange(estimate.SurfaceWaterKgPerKg.Value, hourly * (1 - WithinShare), hourly * (1 + WithinShare));
        Assert.Equal(Estimate(60, rainMm, pluckedH).Spell.RainLast72HoursMm!.Value, estimate.Spell.RainLast72HoursMm!.Value, 1e-9);
    }

    [Fact]
    public void A_step_that_spacing_alone_told_is_said()
    {
        Assert.Contains(new Assumption.RainStepsBySpacing(15, 24), Estimate(15, 22, 9).Missing);
        Assert.DoesNotContain(Estimate(15, 22, 9, stated: true).Missing, missing => missing is Assumption.RainStepsBySpacing);
        Assert.DoesNotContain(Estimate(60, 22, 9).Missing, missing => missing is Assumption.RainStepsBySpacing);
        Assert.DoesNotContain(Estimate(15, 0, 9).Missing, missing => missing is Assumption.RainStepsBySpacing);
    }

    /// <summary>Rain of the six hours up to 07:00, evenly; the air is read every hour.</summary>
    private static LeafEstimate Estimate(int minutes, double rainMm, double pluckedH, bool stated = false)
    {
        int steps = 60 * 24 * 20 / minutes;
        DateTimeOffset last = InventedDays.At(13);
        IEnumerable<WeatherReading> rain = Enumerable.Range(0, steps).Select(step => last.AddMinutes(-step * minutes)).Select(time => new WeatherReading(
            time,
            RainMm: time > InventedDays.At(1) && time <= InventedDays.At(7) ? rainMm * minutes / 360 : 0,
            RainMinutes: stated ? minutes : null));
        IEnumerable<WeatherReading> air = InventedDays.Wet.Hours(20, _ => null);
        return LeafFromWeather.Estimate(InventedDays.Site, [.. air, .. rain], [], InventedDays.Plucked(pluckedH, pluckedH), new WitherCoefficients());
    }
}
