using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Sites;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Lots;

/// <summary>The small form that adds a lot to a batch: names of its fields, what it starts with, and how it is read.</summary>
public sealed class LotForm(Trough trough, WallClock clock, PersonUnits units, DateTimeOffset now)
{
    public const string LoadedAt = "lot_loaded_at";
    public const string GreenWeight = "lot_green_weight";
    public const string Division = "lot_division";
    public const string Field = "lot_field";
    public const string Feel = "lot_surface_feel";

    public const int LongestName = 80;

    /// <summary>What an untouched form holds: loaded now, the label of the batch.</summary>
    public static FilledForm Fresh(WallClock clock, DateTimeOffset now, LeafLabel label) => new(
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            [TimeFields.Date(LoadedAt)] = clock.DateField(now),
            [TimeFields.Time(LoadedAt)] = clock.Clock(now),
            [Division] = label.Division,
            [Field] = label.Field,
        },
        []);

    /// <summary>The lot as typed, expected where its hour is still to come; null where the reader found problems.</summary>
    /// <param name="onto">The label of the batch: what it tells beside division and field is known of leaf of the same field alone.</param>
    public LeafLot? Read(FormReader form, LeafLabel onto)
    {
        Wordbook words = form.Words;
        DateTimeOffset? loaded = form.Time(LoadedAt, words["batch.loaded_at"], clock, required: true);
        double? weight = form.Number(
            GreenWeight, words["batch.green_weight"], NumberRange.Weight(1, BatchRules.MostKg(trough), units), required: true);
        string? division = form.Text(Division, words["batch.division"], LongestName, required: true);
        string? field = form.Text(Field, words["batch.field"], LongestName, required: true);
        SurfaceFeel? feel = form.Choice<SurfaceFeel>(Feel, words["batch.feel"]);
        if (form.Problems.Count > 0)
        {
            return null;
        }

        LeafLabel label = division == onto.Division && field == onto.Field ? onto : new(division!, field!, null, null, null);
        return new(loaded!.Value, weight!.Value, label, SurfaceFeel: feel, IsExpected: loaded > now);
    }
}
