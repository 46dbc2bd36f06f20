using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Units;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>The form of a new batch: names of its fields, what it starts with, and how it is read.</summary>
public sealed class BatchForm(StoredSite site, IReadOnlyList<StoredTrough> troughs, PersonUnits units)
{
    public const string Trough = "trough";
    public const string Division = "division";
    public const string Field = "field";
    public const string Cultivar = "cultivar";
    public const string Bushes = "bush_age";
    public const string Standard = "standard";
    public const string PluckedFrom = "plucked_from";
    public const string PluckedTo = "plucked_to";
    public const string LoadedAt = "loaded_at";
    public const string GreenWeight = "green_weight";
    public const string Feel = "surface_feel";
    public const string SurfaceWater = "surface_water";
    public const string Moisture = "moisture";
    public const string ReadyBy = "ready_by";

    private const int LongestName = 80;

    /// <summary>What an untouched form holds: loaded now, plucked today.</summary>
    public static IReadOnlyDictionary<string, string> Fresh(WallClock clock, DateTimeOffset now, string? troughId) =>
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            [Trough] = troughId ?? "",
            [TimeFields.Date(LoadedAt)] = clock.DateField(now),
            [TimeFields.Time(LoadedAt)] = clock.Clock(now),
            [TimeFields.Date(PluckedFrom)] = clock.DateField(now),
            [TimeFields.Date(PluckedTo)] = clock.DateField(now),
        };

    /// <summary>The batch as typed; null where the reader found problems.</summary>
    public EnteredBatch? Read(FormReader form)
    {
        Wordbook words = form.Words;
        WallClock clock = new(site.TimeZone, words);
        StoredTrough? trough = ReadTrough(form);
        string? division = form.Text(Division, words["batch.division"], LongestName, required: true);
        string? field = form.Text(Field, words["batch.field"], LongestName, required: true);
        string? cultivar = form.Text(Cultivar, words["batch.cultivar"], LongestName);
        BushAge? bushes = form.Choice<BushAge>(Bushes, words["batch.bushes"]);
        LeafStandard? standard = form.Choice<LeafStandard>(Standard, words["batch.standard"]);
        DateTimeOffset? from = form.Time(PluckedFrom, words["batch.plucked_from"], clock, required: true);
        DateTimeOffset? to = form.Time(PluckedTo, words["batch.plucked_to"], clock, required: true);
        DateTimeOffset? loaded = form.Time(LoadedAt, words["batch.loaded_at"], clock, required: true);
        double? weight = ReadWeight(form, trough);
        SurfaceFeel? feel = form.Choice<SurfaceFeel>(Feel, words["batch.feel"]);
        double? water = form.Number(SurfaceWater, words["batch.measured_water"], NumberRange.Percent(0, 0.6, words["unit.of_blotted_weight"]));
        double? moisture = form.Number(Moisture, words["batch.measured_moisture"], NumberRange.Percent(0.6, 0.9, words["unit.wet_basis"]));
        DateTimeOffset? ready = form.Time(ReadyBy, words["batch.ready_by"], clock);
        new BatchTimes(from, to, loaded, ready).Check(form, clock);
        LoftAir air = new LoftAirForm(site, units).Read(form, loaded);
        return form.Problems.Count > 0
            ? null
            : new EnteredBatch(
                trough!,
                new Batch(new LeafLabel(division!, field!, cultivar, bushes, standard), from!.Value, to!.Value, loaded!.Value,
                    weight!.Value, water, feel, moisture, ready),
                air);
    }

    private StoredTrough? ReadTrough(FormReader form)
    {
        StoredTrough? trough = troughs.FirstOrDefault(known => known.Id == form.Typed(Trough));
        if (trough is null)
        {
            form.Refuse(Trough, form.Words["batch.trough"], form.Words["batch.trough.wanted"]);
        }

        return trough;
    }

    private double? ReadWeight(FormReader form, StoredTrough? trough)
    {
        double most = (trough is null ? troughs : [trough]).Select(one => BatchRules.MostKg(one.Trough)).DefaultIfEmpty(1).Max();
        return form.Number(GreenWeight, form.Words["batch.green_weight"], NumberRange.Weight(1, most, units), required: true);
    }
}
