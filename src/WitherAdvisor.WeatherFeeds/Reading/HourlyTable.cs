using System.Text.Json;
using WitherAdvisor.Readings;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Reading;

/// <summary>The "hourly" part of an answer, as rows in the library's own units.</summary>
internal static class HourlyTable
{
    private const string TimeUnit = "iso8601";

    /// <summary>Null where it has the agreed shape; <paramref name="rows"/> then holds a row for each label, as they came.</summary>
    public static Refused? Read(JsonElement root, NoteBook notes, out WeatherReading[] rows)
    {
        rows = [];
        if (!Has(root, "hourly", JsonValueKind.Object, out JsonElement hourly)
            || !Has(root, "hourly_units", JsonValueKind.Object, out JsonElement units))
        {
            return new(RefusalReason.WrongShape, new FeedFault.NoHourlyValues());
        }

        if (!Has(hourly, "time", JsonValueKind.Array, out JsonElement labels))
        {
            return new(RefusalReason.WrongShape, new FeedFault.NoTimes());
        }

        if (!Has(units, "time", JsonValueKind.String, out JsonElement form) || form.GetString() != TimeUnit)
        {
            return new(RefusalReason.WrongUnits, new FeedFault.OtherTimes(TimeUnit));
        }

        if (HourLabels.Read(labels, out DateTimeOffset[] hours) is { } badLabel)
        {
            return badLabel;
        }

        return Fill(new HourlyColumn(hourly, units, hours, notes), hours, out rows);
    }

    private static Refused? Fill(HourlyColumn column, DateTimeOffset[] hours, out WeatherReading[] rows)
    {
        rows = [];
        var values = new Dictionary<HourlyVariable, double?[]>();
        foreach (HourlyVariable variable in HourlyVariable.All)
        {
            if (column.Read(variable, out double?[]? read) is { } refused)
            {
                return refused;
            }

            if (read is not null)
            {
                values.Add(variable, read);
            }
        }

        if (Lacking(values) is { } lacking)
        {
            return new(RefusalReason.WrongShape, lacking);
        }

        rows = [.. hours.Select((hour, place) => Row(hour, variable => values.GetValueOrDefault(variable)?[place]))];
        return null;
    }

    // Wind, pressure and radiation have fallbacks that say so; for these there is none.
    private static FeedFault? Lacking(Dictionary<HourlyVariable, double?[]> values) =>
        !values.ContainsKey(HourlyVariable.DryBulbC) ? new FeedFault.ColumnLacking(HourlyVariable.DryBulbC.Name)
        : !values.ContainsKey(HourlyVariable.RainMm) ? new FeedFault.ColumnLacking(HourlyVariable.RainMm.Name)
        : !values.ContainsKey(HourlyVariable.DewPointC) && !values.ContainsKey(HourlyVariable.RelativeHumidity) ? new FeedFault.HumidityLacking()
        : null;

    private static WeatherReading Row(DateTimeOffset hour, Func<HourlyVariable, double?> value) => new(
        hour,
        DryBulbC: value(HourlyVariable.DryBulbC),
        DewPointC: value(HourlyVariable.DewPointC),
        RelativeHumidity: value(HourlyVariable.RelativeHumidity),
        RainMm: value(HourlyVariable.RainMm),
        WindMPerS: value(HourlyVariable.WindMPerS),
        StationPressurePa: value(HourlyVariable.StationPressurePa),
        ShortwaveWPerM2: value(HourlyVariable.ShortwaveWPerM2));

    private static bool Has(JsonElement parent, string name, JsonValueKind kind, out JsonElement child) =>
        parent.TryGetProperty(name, out child) && child.ValueKind == kind;
}
