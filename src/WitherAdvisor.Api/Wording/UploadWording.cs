using WitherAdvisor.Api.Weather;

namespace WitherAdvisor.Api.Wording;

/// <summary>Choices of an upload in words.</summary>
public static class UploadWording
{
    public static string Name(KeptRows keep) => keep switch
    {
        KeptRows.AllOrNone => "all rows or none",
        KeptRows.GoodRows => "the good rows",
        _ => throw new ArgumentOutOfRangeException(nameof(keep), keep, "No words for this choice."),
    };

    public static string Test(KeptRows keep) => keep switch
    {
        KeptRows.AllOrNone => "One row that does not fit, and nothing is kept.",
        KeptRows.GoodRows => "Rows that do not fit are left out and listed.",
        _ => throw new ArgumentOutOfRangeException(nameof(keep), keep, "No words for this choice."),
    };

    public static string Name(WeatherKind kind) => kind switch
    {
        WeatherKind.Observed => "readings taken",
        WeatherKind.Forecast => "a forecast",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No words for this kind."),
    };
}
