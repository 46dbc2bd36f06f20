using System.Text.Json.Nodes;

namespace WitherAdvisor.InventedEstate;

/// <summary>A batch of leaf to show the service with, and the weather that goes with it.</summary>
/// <param name="Id">Short name, also of its forecast file.</param>
/// <param name="About">What it is to show.</param>
/// <param name="Trough">Where it lies.</param>
/// <param name="Stretch">Name of its weather: the readings' file without the ending.</param>
/// <param name="Field">Field number.</param>
/// <param name="Standard">Standard of plucking.</param>
/// <param name="PluckedFrom">First plucking.</param>
/// <param name="PluckedHours">From first to last plucking.</param>
/// <param name="GreenWeightKg">As weighed in, with its surface water.</param>
/// <param name="HoursToRolling">From loading to when rolling wants it.</param>
public sealed record DemoBatch(
    string Id,
    string About,
    string Trough,
    string Stretch,
    string Field,
    string Standard,
    DateTimeOffset PluckedFrom,
    double PluckedHours,
    double GreenWeightKg,
    double HoursToRolling)
{
    private const int ForecastHours = 24;
    private const double HoursToTheTrough = 1.5;

    public static IReadOnlyList<DemoBatch> All { get; } =
    [
        new("rain-wet", "leaf that has stood in rain for days", "trough-1", "wet-spell", "Field 7", "fine",
            new(2026, 6, 19, 8, 0, 0, Estate.Offset), 7.5, 1_340, 13),
        new("dry-windy", "leaf of a dry windy spell, to be withered gently", "trough-2", "dry-windy-spell", "Field 3", "fine",
            new(2026, 2, 19, 8, 0, 0, Estate.Offset), 7.5, 1_050, 7),
        new("ordinary", "leaf of an ordinary week, before the rain set in", "trough-3", "wet-spell", "Field 12", "medium",
            new(2026, 6, 13, 8, 0, 0, Estate.Offset), 7.5, 950, 10.5),
    ];

    public string ForecastFile => $"{Id}-forecast.csv";

    private DateTimeOffset PluckedTo => PluckedFrom.AddHours(PluckedHours);

    public DateTimeOffset LoadedAt => PluckedTo.AddHours(HoursToTheTrough);

    /// <summary>The night as it turned out, as a forecast that came true.</summary>
    public IEnumerable<HourOfWeather> Forecast(Stretch weather) =>
        weather.Between(LoadedAt, LoadedAt.AddHours(ForecastHours));

    /// <summary>The batch as the service is told of it, with the files of its weather.</summary>
    public JsonObject ToJson() => new()
    {
        ["id"] = Id,
        ["about"] = $"Invented: {About}.",
        ["readings"] = $"{Stretch}.csv",
        ["rain_totals"] = $"{Stretch}-rain-totals.json",
        ["forecast"] = ForecastFile,
        ["batch"] = new JsonObject
        {
            ["trough"] = Trough,
            ["label"] = new JsonObject
            {
                ["division"] = "Invented division",
                ["field"] = Field,
                ["cultivar"] = "Invented clone 1",
                ["bush_age"] = "mature",
                ["leaf_standard"] = Standard,
            },
            ["plucked_from"] = Instants.Text(PluckedFrom),
            ["plucked_to"] = Instants.Text(PluckedTo),
            ["loaded_at"] = Instants.Text(LoadedAt),
            ["green_weight_kg"] = GreenWeightKg,
            ["ready_by"] = Instants.Text(LoadedAt.AddHours(HoursToRolling)),
        },
    };
}
