using System.Text.Json;
using WitherAdvisor.Readings;
using WitherAdvisor.WeatherFeeds.Asking;
using WitherAdvisor.WeatherFeeds.Screening;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Reading;

/// <summary>From the body of an answer to a series that can be believed, or a refusal.</summary>
internal static class AnswerReader
{
    public static FeedAnswer Read(ReadOnlyMemory<byte> body, AnswerOrigin origin)
    {
        if (JsonBody.Parse(body, out JsonDocument? document) is { } unreadable)
        {
            return unreadable;
        }

        using (document)
        {
            return Read(document!.RootElement, origin);
        }
    }

    private static FeedAnswer Read(JsonElement root, AnswerOrigin origin)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            return new Refused(RefusalReason.WrongShape, new FeedFault.ListOfPlaces());
        }

        if (ErrorBody.Reason(root) is string reason)
        {
            return new Refused(RefusalReason.BadRequest, new FeedFault.QuestionRefused(FeedText.Clean(reason, origin.Key)));
        }

        var notes = new NoteBook();
        return ZoneCheck.Refusal(root)
            ?? GridCell.Read(root, origin.Query, notes, out GridCell cell)
            ?? HourlyTable.Read(root, notes, out WeatherReading[] rows)
            ?? Series(rows, cell, origin, notes);
    }

    private static FeedAnswer Series(WeatherReading[] rows, GridCell cell, AnswerOrigin origin, NoteBook notes)
    {
        AskedHours asked = AskedHours.Of(origin.Query.Span, origin.FetchedAt);
        List<WeatherReading> hours = HourOrder.Of(rows, notes);
        List<WeatherReading> readings = [.. hours
            .Select(hour => cell.BringToSite(HumidityScreen.Of(hour, notes)))
            .Where(Knows)];
        if (SpanCheck.Refusal(readings, asked) is { } refused)
        {
            return refused;
        }

        DateTimeOffset asOf = AnswerDate.AsOf(origin, notes);
        readings = SpanCheck.Within(readings, asked, notes);
        SpanCheck.NoteMissing(readings, asked, origin, notes);
        SpanCheck.NoteShift(new(hours[0].Time, hours[^1].Time), asked, origin, notes);
        return new Series(readings, notes.Notes, new(
            origin.FeedName,
            origin.Attribution,
            origin.Query.Span is FeedSpan.Days ? FeedSource.Archive : FeedSource.Forecast,
            origin.FetchedAt,
            asOf,
            cell.LatitudeDeg,
            cell.LongitudeDeg,
            cell.ElevationM,
            cell.ElevationM is null ? null : origin.Query.ElevationM));
    }

    private static bool Knows(WeatherReading hour) => hour != new WeatherReading(hour.Time);
}
