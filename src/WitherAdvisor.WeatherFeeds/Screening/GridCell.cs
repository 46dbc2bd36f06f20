using System.Text.Json;
using WitherAdvisor.Readings;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Screening;

/// <summary>The piece of the model that answered, and what that means for the site.</summary>
/// <param name="LatitudeDeg">Degrees north.</param>
/// <param name="LongitudeDeg">Degrees east.</param>
/// <param name="ElevationM">What the values were made for, m; null where the feed does not say.</param>
/// <param name="Lift">Brings a reading to the site's elevation; null where it is there already or nothing is known.</param>
internal sealed record GridCell(double LatitudeDeg, double LongitudeDeg, double? ElevationM, ElevationCorrection? Lift)
{
    /// <summary>Half of a coarse cell of 100 km, and some more: beyond it the answer is of another place.</summary>
    private const double FarthestKm = 120;

    /// <summary>Half of a usual cell of 25 km, corner to corner, and some more.</summary>
    private const double FarKm = 30;

    private static readonly GridCell Nowhere = new(0, 0, null, null);

    public WeatherReading BringToSite(WeatherReading hour) => Lift?.Apply(hour) ?? hour;

    /// <summary>Null where the answer can be for the site.</summary>
    public static Refused? Read(JsonElement root, FeedQuery query, NoteBook notes, out GridCell cell)
    {
        cell = Nowhere;
        if (Number(root, "latitude") is not double latitudeDeg || Number(root, "longitude") is not double longitudeDeg)
        {
            return new(RefusalReason.WrongShape, new FeedFault.PlaceUnsaid());
        }

        double awayKm = Distance.Km(query.LatitudeDeg, query.LongitudeDeg, latitudeDeg, longitudeDeg);
        if (!(awayKm <= FarthestKm))
        {
            return new(RefusalReason.WrongPlace, new FeedFault.OtherPlace(awayKm));
        }

        if (awayKm > FarKm)
        {
            notes.Say(new FeedNote.FarCell(awayKm));
        }

        double? elevationM = Number(root, "elevation");
        if (ElevationCorrection.Between(elevationM, query.ElevationM, notes, out ElevationCorrection? lift) is { } tooFar)
        {
            return tooFar;
        }

        cell = new(latitudeDeg, longitudeDeg, elevationM, lift);
        return null;
    }

    private static double? Number(JsonElement root, string name) =>
        root.TryGetProperty(name, out JsonElement element) && element.ValueKind == JsonValueKind.Number
            && element.TryGetDouble(out double value) && double.IsFinite(value)
            ? value
            : null;
}
