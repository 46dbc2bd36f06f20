using System.Text.Json;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Loft.Kept.Weather;

/// <summary>
/// What a feed did and what is to be said of its weather, as kept: a code with its arguments. Version 0.1.0 kept sentences;
/// they come back as said then.
/// </summary>
public static class FeedCodesJson
{
    private static readonly JsonSerializerOptions Written = ClosedFamilyJson.Of(typeof(FeedFault), typeof(FeedNote));

    public static string Write(FeedFault fault) => JsonSerializer.Serialize(fault, Written);

    public static string Write(IReadOnlyList<FeedNote> notes) => JsonSerializer.Serialize(notes, Written);

    // No sentence begins with a brace.
    public static FeedFault ReadFault(string kept) => kept.StartsWith('{')
        ? JsonSerializer.Deserialize<FeedFault>(kept, Written)!
        : new FeedFault.SaidThen(kept);

    public static IReadOnlyList<FeedNote> ReadNotes(string kept)
    {
        using JsonDocument notes = JsonDocument.Parse(kept);
        return
        [
            .. notes.RootElement.EnumerateArray().Select(note => note.ValueKind == JsonValueKind.String
                ? new FeedNote.SaidThen(note.GetString()!)
                : note.Deserialize<FeedNote>(Written)!),
        ];
    }
}
