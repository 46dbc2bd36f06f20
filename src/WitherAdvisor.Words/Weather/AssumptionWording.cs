using WitherAdvisor.Readings;

namespace WitherAdvisor.Words.Weather;

/// <summary>What was not known and what was taken in its place, in a sentence each, SI units.</summary>
public static class AssumptionWording
{
    /// <summary>A sentence that was given is told as it was given, unless English says the same today: then the page's words say it.</summary>
    public static Told Tell(Wordbook words, Assumption assumption) => assumption switch
    {
        Assumption.SaidThen then => Told.Again(words, then.Sentence, book => then.Meant is { } meant ? Sentence(book, meant) : null),
        _ => Told.Now(Sentence(words, assumption)),
    };

    public static string Sentence(Wordbook words, Assumption assumption) => assumption switch
    {
        Assumption.NoHistory no => words.Say(
            "assumption.no_history", ("stress", Stress(no.WaterStress, no.WaterStressStandardDeviation)), WhatHelps(words)),
        Assumption.ShortHistory few => words.Say(
            "assumption.short_history",
            ("known", $"{few.KnownDays:0.#}"), ("wanted", few.WantedDays), ("stress", Stress(few.WaterStress, few.WaterStressStandardDeviation))),
        Assumption.RainUnknown rain => words.Say("assumption.rain_unknown", ("hours", $"{rain.UnknownHours:0.#}")),
        Assumption.RainHoursUnknown { LaidByFeed: true } rain =>
            words.Say("assumption.rain_hours_unknown.laid", ("hours", $"{rain.StatedHours:0.#}")),
        Assumption.RainHoursUnknown rain => words.Say("assumption.rain_hours_unknown.spread", ("hours", $"{rain.StatedHours:0.#}")),
        Assumption.RainStepsBySpacing steps => words.Say("assumption.rain_steps_by_spacing", ("readings", steps.Readings), ("minutes", $"{steps.Minutes:0}")),
        Assumption.FogByHumidity fog => words.Say("assumption.fog_by_humidity", ("hours", fog.Hours)),
        Assumption.AirUnknown air => words.Say("assumption.air_unknown", ("hours", air.UnknownHours)),
        Assumption.AirInterpolated air =>
            words.Say("assumption.air_interpolated", ("hours", air.DrawnHours), ("gap", $"{air.LongestGapHours:0}")),
        Assumption.NoWind wind => words.Say("assumption.no_wind", ("hours", wind.UnknownHours)),
        Assumption.NoRadiation sun => words.Say("assumption.no_radiation", ("hours", sun.UnmeasuredHours)),
        Assumption.ImpossibleValues impossible => words.Say("assumption.impossible_values", ("values", impossible.Values)),
        Assumption.WeatherStale stale => Stale(words, stale),
        Assumption.ForecastUsed taken => words.Say("assumption.forecast_used", ("counts", string.Join(", ", Counts(words, taken)))),
        Assumption.ForecastBiasCorrected moved => words.Say(
            "assumption.forecast_bias_corrected",
            ("dry_bulb", $"{moved.DryBulbK:+0.0;−0.0;0.0}"), ("dew_point", $"{moved.DewPointK:+0.0;−0.0;0.0}"), ("half", $"{moved.HalvesInHours:0}")),
        Assumption.AirNotForecast air => words.Say(
            "assumption.air_not_forecast",
            ("unknown", air.UnknownHours), ("hours", air.Hours), ("what_was_done", string.Join("; ", Done(words, air)))),
        Assumption.LotsExpected expected => words.Say("assumption.lots_expected", ("lots", expected.Lots), ("weight", $"{expected.WeightKg:0.#}")),
        Assumption.PluckingOfLotsUnknown lots => words.Say("assumption.plucking_of_lots_unknown", ("lots", lots.Lots)),
        Assumption.SaidThen then => Tell(words, then).Text,
        _ => DoubtWording.Sentence(words, assumption),
    };

    private static string Stress(double? waterStress, double? standardDeviation) => $"{waterStress:0.00} ± {standardDeviation:0.00}";

    private static (string, object) WhatHelps(Wordbook words) => ("what_helps", words["assumption.what_helps_most"]);

    private static string Stale(Wordbook words, Assumption.WeatherStale stale)
    {
        string instead = stale.ForecastHours > 0
            ? words.Say("assumption.weather_stale.forecast", ("hours", stale.ForecastHours))
            : words["assumption.weather_stale.not_forecast"];
        return stale.AgeHours is { } age
            ? words.Say("assumption.weather_stale", ("age", $"{age:0.#}"), ("instead", instead), WhatHelps(words))
            : words.Say("assumption.weather_stale.never", ("instead", instead), WhatHelps(words));
    }

    private static IEnumerable<string> Counts(Wordbook words, Assumption.ForecastUsed taken)
    {
        (string Value, int Hours)[] counts =
        [
            ("temperature", taken.TemperatureHours),
            ("humidity", taken.HumidityHours),
            ("rain", taken.RainHours),
            ("wind", taken.WindHours),
            ("radiation", taken.RadiationHours),
        ];
        return counts.Where(count => count.Hours > 0).Select(count => words.Say($"assumption.forecast_used.{count.Value}", ("hours", count.Hours)));
    }

    private static IEnumerable<string> Done(Wordbook words, Assumption.AirNotForecast air) =>
    [
        .. air.FromDayBefore > 0 ? (string[])[words.Say("assumption.air_not_forecast.day_before", ("hours", air.FromDayBefore))] : [],
        .. air.Held > 0 ? (string[])[words.Say("assumption.air_not_forecast.held", ("hours", air.Held))] : [],
        words["assumption.air_not_forecast.less_sure"],
    ];
}
