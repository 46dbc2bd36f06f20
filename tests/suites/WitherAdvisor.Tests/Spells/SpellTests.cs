using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Spells;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Spells;

public sealed class SpellTests
{
    [Fact]
    public void Three_wet_days_are_a_wet_spell()
    {
        Spell spell = At12(InventedDays.Wet.Hours(14, hour => hour > -72 ? 1 : 0));

        Assert.Equal(SpellKind.Wet, spell.Kind);
        Assert.Equal(72, spell.RainLast72HoursMm!.Value, 1e-9);
    }

    [Fact]
    public void Two_dry_windy_months_are_a_dry_windy_spell()
    {
        Spell spell = At12(InventedDays.DryWindy.DryHours(60));

        Assert.Equal(SpellKind.DryWindy, spell.Kind);
        Assert.Equal(0, spell.RainLast10DaysMm);
        Assert.InRange(spell.WaterStress!.Value, 0, 0.4);
        Assert.True(spell.DryingPowerKPaMPerS >= spell.DryingPowerThresholdKPaMPerS);
    }

    [Fact]
    public void A_week_of_dry_wind_is_enough_to_tell() =>
        Assert.Equal(SpellKind.DryWindy, At12(InventedDays.DryWindy.DryHours(8)).Kind);

    [Fact]
    public void A_shower_every_other_day_is_ordinary() =>
        Assert.Equal(SpellKind.Ordinary, At12(InventedDays.Ordinary.Hours(30, EveryOtherEvening)).Kind);

    [Fact]
    public void One_shower_does_not_end_a_dry_windy_season()
    {
        // The evening before: it stands on the leaf in the morning, and the season goes on.
        Spell spell = At(6, InventedDays.DryWindy.Hours(60, hour => hour == -3 ? 10 : 0));

        Assert.Equal(SpellKind.DryWindy, spell.Kind);
        Assert.Equal(10, spell.RainLast10DaysMm!.Value, 1e-9);
    }

    [Fact]
    public void The_same_shower_is_no_dry_windy_season_where_none_had_begun()
    {
        // Rain to the eighth day before, then the same dry wind and the same shower.
        Spell spell = At12(InventedDays.DryWindy.Hours(60, hour => hour == -3 ? 10 : hour < -190 ? EveryOtherEvening(hour) : 0));

        Assert.NotEqual(SpellKind.DryWindy, spell.Kind);
    }

    [Fact]
    public void Real_rain_ends_a_dry_windy_season() =>
        Assert.Equal(SpellKind.Wet, At12(InventedDays.DryWindy.Hours(60, hour => hour is >= -20 and < -10 ? 3 : 0)).Kind);

    [Fact]
    public void A_day_whose_wind_nobody_read_neither_ends_nor_begins_a_season()
    {
        IReadOnlyList<WeatherReading> season = InventedDays.DryWindy.DryHours(60);
        IReadOnlyList<WeatherReading> blind =
            [.. season.Select(reading => reading.Time > InventedDays.At(-100) ? reading with { WindMPerS = null } : reading)];
        IReadOnlyList<WeatherReading> never = [.. season.Select(reading => reading with { WindMPerS = null })];

        Assert.Equal(SpellKind.DryWindy, At12(blind).Kind);
        Assert.Null(At12(blind).DryingPowerKPaMPerS);
        Assert.Equal(SpellKind.Ordinary, At12(never).Kind);
    }

    [Fact]
    public void Dew_alone_is_no_wet_spell()
    {
        IReadOnlyList<WeatherReading> calm = (InventedDays.Ordinary with { SwingK = 6, WindMPerS = 0.5 }).DryHours(14);
        LeafEstimate dawn = LeafFromWeather.Estimate(InventedDays.Site, calm, [], InventedDays.Plucked(5, 6), new());

        Assert.True(dawn.SurfaceWaterKgPerKg.Value > 0.05);
        Assert.Equal(SpellKind.Ordinary, dawn.Spell.Kind);
    }

    [Fact]
    public void A_site_known_for_a_month_is_held_against_its_own_upper_quarter()
    {
        double ofWindySite = At12(InventedDays.DryWindy.DryHours(40)).DryingPowerThresholdKPaMPerS;
        double ofStillSite = At12((InventedDays.Ordinary with { WindMPerS = 1 }).DryHours(40)).DryingPowerThresholdKPaMPerS;
        double unknown = At12(InventedDays.DryWindy.DryHours(12)).DryingPowerThresholdKPaMPerS;

        Assert.True(ofStillSite < unknown && unknown < ofWindySite, $"{ofStillSite} {unknown} {ofWindySite}");
    }

    [Fact]
    public void Numbers_that_nobody_knows_are_null_and_not_0()
    {
        Spell spell = LeafFromWeather.Estimate(InventedDays.Site, [], [], InventedDays.Plucked(8, 12), new()).Spell;

        Assert.Null(spell.RainLast72HoursMm);
        Assert.Null(spell.RainLast10DaysMm);
        Assert.Null(spell.DryingPowerKPaMPerS);
        Assert.Equal(SpellKind.Ordinary, spell.Kind);
    }

    private static double? EveryOtherEvening(int hour) => (hour + 24_000) % 48 == 18 ? 9 : 0;

    private static Spell At12(IReadOnlyList<WeatherReading> readings) => At(12, readings);

    private static Spell At(double hour, IReadOnlyList<WeatherReading> readings) =>
        LeafFromWeather.Estimate(InventedDays.Site, readings, [], InventedDays.Plucked(hour - 1, hour), new()).Spell;
}
