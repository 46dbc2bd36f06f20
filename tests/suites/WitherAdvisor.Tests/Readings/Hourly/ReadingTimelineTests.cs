using WitherAdvisor.Air;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Readings.Hourly;

/// <summary>Readings of one instant: the later in the list wins, value by value, and what it does not tell is the earlier one's.</summary>
public sealed class ReadingTimelineTests
{
    private const double SitePressurePa = 85_000;

    private static readonly HourGrid Grid = HourGrid.Around(InventedDays.At(0), InventedDays.At(10));

    private static readonly WeatherReading Nothing = new(InventedDays.At(2));

    private static readonly WeatherReading Sling = Nothing with { DryBulbC = 20, WetBulbC = 16, Instrument = PsychrometerKind.Sling };

    private static readonly WeatherReading Air = Nothing with { DryBulbC = 20, RelativeHumidity = 0.6 };

    public static TheoryData<WeatherReading, WeatherReading, WeatherReading> OfOneInstant => new()
    {
        { Sling, Nothing with { WindMPerS = 1 }, Sling with { WindMPerS = 1 } },
        { Air, Sling with { DryBulbC = null }, Sling },
        { Sling, Air with { DryBulbC = null }, Air },
        { Sling with { Instrument = PsychrometerKind.Screen }, Sling, Sling },
        { Sling, Sling with { Instrument = PsychrometerKind.Screen }, Sling with { Instrument = PsychrometerKind.Screen } },
        { Air, Air with { DryBulbC = 22 }, Air with { DryBulbC = 22 } },
        { Air with { WindMPerS = 1 }, Nothing with { WindMPerS = 3 }, Air with { WindMPerS = 3 } },
        { Air with { WindMPerS = 1, RainMm = 2 }, Nothing with { RainMm = 4 }, Air with { WindMPerS = 1, RainMm = 4 } },
        { Air with { StationPressurePa = 80_000 }, Nothing with { RainMm = 0 }, Air with { StationPressurePa = 80_000, RainMm = 0 } },
        { Air with { StationPressurePa = 80_000 }, Nothing with { StationPressurePa = 90_000 }, Air with { StationPressurePa = 90_000 } },
        { Air with { ShortwaveWPerM2 = 100 }, Nothing with { RainMm = 0 }, Air with { ShortwaveWPerM2 = 100, RainMm = 0 } },
        { Air with { ShortwaveWPerM2 = 100 }, Nothing with { ShortwaveWPerM2 = 300 }, Air with { ShortwaveWPerM2 = 300 } },
    };

    [Theory]
    [MemberData(nameof(OfOneInstant))]
    public void Two_readings_of_one_instant_are_one(WeatherReading earlier, WeatherReading later, WeatherReading one)
    {
        Assert.Equal(Columns([one]), Columns([earlier, later]));
        // The same where the list has to be put in order first.
        WeatherReading before = Air with { Time = InventedDays.At(1) };
        Assert.Equal(Columns([before, one]), Columns([earlier, before, later]));
    }

    [Fact]
    public void Of_many_readings_of_two_instants_in_any_order_the_last_in_the_list_wins()
    {
        WeatherReading[] readings = [.. Enumerable.Range(0, 100).Select(i => Nothing with { Time = InventedDays.At(2 - i % 2), WindMPerS = i })];

        double[][] columns = Columns(readings);

        Assert.Equal([1, 2], columns[0].Select(position => position - Grid.PositionOf(InventedDays.At(0))));
        Assert.Equal([99, 98], columns[3]);
    }

    private static double[][] Columns(IReadOnlyList<WeatherReading> readings)
    {
        ReadingTimeline timeline = ReadingTimeline.Of(readings, Grid, SitePressurePa);
        return
        [
            [.. timeline.Position], [.. timeline.DryBulbC], [.. timeline.HumidityRatio], [.. timeline.WindMPerS], [.. timeline.RainMm], [.. timeline.ShortwaveWPerM2],
        ];
    }
}
