namespace WitherAdvisor.Words.Model;

/// <summary>Where weather that came in is no longer believed, in words.</summary>
internal static class ScreeningConstantWording
{
    /// <summary>What it is.</summary>
    public static string Meaning(string code) => code switch
    {
        "still_thermometer" => "A thermometer that stands still for this long is not believed",
        "still_humidity" => "A relative humidity that stands still for this long is not believed",
        "still_humidity_range" => "… while the temperature moves by this",
        "calm_wind" => "Wind of 0 for this long is not believed",
        "most_rain_of_an_hour" => "More rain than this in an hour is not believed",
        "repeating_gauge" => "The same rain in so many readings in a row is not believed",
        "rain_like_inches" => "Days of six rainy hours or more that bring less than this (median) read like inches",
        "dry_gauge" => "A gauge without rain for so long is not believed",
        "dry_gauge_humidity" => "… if middays are this humid on a fifth of its days",
        "shifted_by_sun" => "Hours are doubted where noon by radiation is off by this",
        "shifted_by_temperature" => "… or the warmest hour by this",
        "pressure_off" => "Station pressure off its elevation's by this share is not believed",
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No words for this constant."),
    };
}
