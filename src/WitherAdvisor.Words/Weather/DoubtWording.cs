using WitherAdvisor.Readings;

namespace WitherAdvisor.Words.Weather;

/// <summary>What is not believed of weather that came in, and what to look at: a sentence each, SI units.</summary>
internal static class DoubtWording
{
    private const double PaPerHpa = 100;

    public static string Sentence(Wordbook words, Assumption doubt) => doubt switch
    {
        Assumption.GaugeDry dry => words.Say("assumption.gauge_dry", ("days", dry.DryDays), ("humid", dry.HumidDays)),
        Assumption.GaugeRepeats same => words.Say("assumption.gauge_repeats", ("rain", $"{same.RainMm:0.##}"), ("readings", same.Readings)),
        Assumption.RainLikeInches inches => words.Say("assumption.rain_like_inches", ("days", inches.RainyDays), ("median", $"{inches.MedianMm:0.0#}")),
        Assumption.RainTooHeavy heavy => words.Say(
            "assumption.rain_too_heavy", ("readings", heavy.Readings), ("rain", $"{heavy.RainMm:0.#}"), ("most", $"{heavy.MostMm:0}")),
        Assumption.HoursShifted { BySun: true } shifted => words.Say("assumption.hours_shifted.sun", ("hours", $"{shifted.ByHours:+0.#;−0.#}")),
        Assumption.HoursShifted shifted => words.Say("assumption.hours_shifted.temperature", ("hours", $"{shifted.ByHours:+0.#;−0.#}")),
        Assumption.ThermometerStill still => words.Say(
            "assumption.thermometer_still", ("temperature", $"{still.DryBulbC:0.0}"), ("hours", $"{still.Hours:0}")),
        Assumption.HumidityStill still => words.Say(
            "assumption.humidity_still", ("humidity", $"{100 * still.RelativeHumidity:0}"), ("hours", $"{still.Hours:0}"), ("range", $"{still.RangeK:0.0}")),
        Assumption.WindAlwaysCalm calm => words.Say("assumption.wind_always_calm", ("hours", $"{calm.Hours:0}")),
        Assumption.PressureOfSeaLevel pressure => words.Say(
            "assumption.pressure_of_sea_level",
            ("readings", pressure.Readings), ("given", $"{pressure.GivenPa / PaPerHpa:0}"), ("usual", $"{pressure.UsualPa / PaPerHpa:0}")),
        Assumption.SurfaceWaterBeyondLeaf water => words.Say(
            "assumption.surface_water_beyond_leaf", ("given", $"{water.GivenKgPerKg:0.00}"), ("most", $"{water.MostKgPerKg:0.00}")),
        _ => throw new ArgumentOutOfRangeException(nameof(doubt), doubt, "No words for this assumption."),
    };
}
