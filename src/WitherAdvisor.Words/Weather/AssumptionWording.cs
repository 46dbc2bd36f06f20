using WitherAdvisor.Readings;

namespace WitherAdvisor.Words.Weather;

/// <summary>What was not known and what was taken in its place, in a sentence each, SI units.</summary>
public static class AssumptionWording
{
    private const string WhatHelpsMost = "Dry bulb and wet bulb read now, and whether it has rained since, would help most.";

    public static string Sentence(Assumption assumption) => assumption switch
    {
        Assumption.NoHistory no =>
            $"No weather before plucking is known: water on the leaf and its moisture are usual values, and K_s is taken as {Stress(no.WaterStress, no.WaterStressStandardDeviation)}. {WhatHelpsMost}",
        Assumption.ShortHistory few =>
            $"Rain is known for {few.KnownDays:0.#} of the {few.WantedDays} days wanted: soil water started from a guess, and K_s is {Stress(few.WaterStress, few.WaterStressStandardDeviation)}.",
        Assumption.RainUnknown rain =>
            $"Rain is unknown for {rain.UnknownHours:0.#} of the 72 hours before plucking: about one chance in three of rain was taken for them.",
        Assumption.RainHoursUnknown rain =>
            $"Rain of {rain.StatedHours:0.#} of the 72 hours before plucking is known only as totals: {Laid(rain)}, and falling early or late is in the standard deviation.",
        Assumption.AirUnknown air =>
            $"Temperature or humidity is unknown for {air.UnknownHours} of the 72 hours before plucking: the mean of the same clock hours was taken, or 20 °C and 0.012 kg/kg where there is none.",
        Assumption.AirInterpolated air =>
            $"Temperature or humidity of {air.DrawnHours} of the 72 hours before plucking was drawn straight between readings up to {air.LongestGapHours:0} h apart.",
        Assumption.NoWind wind =>
            $"Wind is unknown for {wind.UnknownHours} of the 72 hours before plucking: the mean of the same clock hours was taken, or 2 m/s at 2 m height where there is none.",
        Assumption.NoRadiation sun =>
            $"Radiation was not measured in {sun.UnmeasuredHours} of the 72 hours before plucking: it was worked out from each day's range of temperature, diffuse light only while it rained.",
        Assumption.ImpossibleValues impossible =>
            $"Values that no weather can have were taken as unknown, in {impossible.Values} of the readings or totals.",
        Assumption.WeatherStale stale => Stale(stale),
        Assumption.ForetoldTaken taken =>
            $"Before loading, what was foretold was taken where nothing was read: {string.Join(", ", Counts(taken))}.",
        Assumption.ForecastMoved moved =>
            $"The air read last was not the air foretold: the forecast was moved by {moved.DryBulbK:+0.0;−0.0;0.0} K, its dew point by {moved.DewPointK:+0.0;−0.0;0.0} K, wearing off by half every {moved.HalvesInHours:0} h.",
        Assumption.AirNotForetold air => NotForetold(air),
        Assumption.SaidThen then => then.Sentence,
        _ => throw new ArgumentOutOfRangeException(nameof(assumption), assumption, "No words for this assumption."),
    };

    private static string Stress(double? waterStress, double? standardDeviation) => $"{waterStress:0.00} ± {standardDeviation:0.00}";

    private static string Laid(Assumption.RainHoursUnknown rain) => rain.LaidByFeed
        ? "they were laid on parts of a day as a feed tells of its rain, else spread evenly"
        : "they were spread evenly";

    private static string Stale(Assumption.WeatherStale stale)
    {
        string hours = stale.AgeHours is { } age ? $" in the {age:0.#} h" : "";
        string instead = stale.ForecastHours > 0
            ? $"what was foretold was taken for {stale.ForecastHours} of those hours"
            : "nothing was foretold for those hours either";
        return $"Nothing was read{hours} before loading: {instead}. {WhatHelpsMost}";
    }

    private static IEnumerable<string> Counts(Assumption.ForetoldTaken taken)
    {
        (string Name, int Hours)[] counts =
        [
            ("temperature", taken.TemperatureHours),
            ("humidity", taken.HumidityHours),
            ("rain", taken.RainHours),
            ("wind", taken.WindHours),
            ("radiation", taken.RadiationHours),
        ];
        return counts.Where(value => value.Hours > 0).Select(value => $"{value.Name} {value.Hours} h");
    }

    private static string NotForetold(Assumption.AirNotForetold air)
    {
        string dayBefore = air.FromDayBefore > 0 ? $" {air.FromDayBefore} taken from the same hour of the day before;" : "";
        string held = air.Held > 0 ? $" {air.Held} held at the air last known;" : "";
        return $"Ambient air is not foretold for {air.UnknownHours} of the {air.Hours} hours that the wither may last:{dayBefore}{held} ready times are less sure.";
    }
}
