using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using Xunit;

namespace WitherAdvisor.Tests.LeafAtLoading;

public sealed class MissingWeatherTests
{
    private static readonly IReadOnlyList<WeatherReading> Full = (InventedDays.Ordinary with { Light = 0.7 }).DryHours(70);

    private static readonly Assumption[] Said =
    [
        new Assumption.NoWind(72),
        new Assumption.NoRadiation(72),
        new Assumption.AirUnknown(72),
        new Assumption.AirInterpolated(48, 3),
        new Assumption.RainUnknown(72),
        new Assumption.ImpossibleValues(1),
    ];

    public static TheoryData<string> Gaps => [.. Said.Select(assumption => assumption.Code)];

    [Fact]
    public void A_full_history_lacks_nothing() => Assert.Empty(Missing(Full));

    [Theory]
    [MemberData(nameof(Gaps))]
    public void What_is_missing_is_said_with_its_number(string code) => Assert.Equal(
        Said.Single(assumption => assumption.Code == code),
        Assert.Single(Missing([.. With(code)]), missing => missing.Code == code));

    [Fact]
    public void A_short_history_tells_how_many_days_it_holds_and_how_sure_the_soil_is()
    {
        var said = Missing([.. With("short_history")]).OfType<Assumption.ShortHistory>().Single();

        Assert.Equal(9.5, said.KnownDays, 0.05);
        Assert.Equal(60, said.WantedDays);
        Assert.NotNull(said.WaterStress);
        Assert.NotNull(said.WaterStressStandardDeviation);
    }

    [Fact]
    public void One_unread_hour_just_before_plucking_is_said()
    {
        IReadOnlyList<WeatherReading> lastUnread = [.. Full.Select(reading => reading.Time == InventedDays.At(12) ? reading with { RainMm = null } : reading)];

        Assert.Equal([new Assumption.RainUnknown(1)], Missing(lastUnread));
    }

    [Fact]
    public void Totals_by_hand_are_said_to_leave_the_hours_open()
    {
        IReadOnlyList<WeatherReading> noRain = [.. Full.Select(reading => reading with { RainMm = null })];
        RainTotal[] stated = [new(InventedDays.At(-24 * 70), InventedDays.At(12), 100)];

        IReadOnlyList<Assumption> missing =
            LeafFromWeather.Estimate(InventedDays.Site, noRain, stated, InventedDays.Plucked(8, 12), new()).Missing;

        Assert.Equal("rain_hours_unknown", Assert.Single(missing).Code);
    }

    private static IEnumerable<WeatherReading> With(string gap) => gap switch
    {
        "no_wind" => Full.Select(reading => reading with { WindMPerS = null }),
        "no_radiation" => Full.Select(reading => reading with { ShortwaveWPerM2 = null }),
        "air_unknown" => Full.Select(reading => reading.Time > InventedDays.At(-70) ? reading with { DewPointC = null } : reading),
        "air_interpolated" => Full.Select(reading => (reading.Time - InventedDays.LastMidnight).TotalHours % 3 == 0 ? reading : reading with { DewPointC = null }),
        "rain_unknown" => Full.Select(reading => reading.Time > InventedDays.At(-60) ? reading with { RainMm = null } : reading),
        "short_history" => Full.Where(reading => reading.Time > InventedDays.At(-216)),
        _ => Full.Append(new(InventedDays.At(-5), DryBulbC: 400)),
    };

    private static IReadOnlyList<Assumption> Missing(IReadOnlyList<WeatherReading> readings) =>
        LeafFromWeather.Estimate(InventedDays.Site, readings, [], InventedDays.Plucked(8, 12), new()).Missing;
}
