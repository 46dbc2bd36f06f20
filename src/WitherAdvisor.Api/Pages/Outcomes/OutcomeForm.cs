using WitherAdvisor.Api.Outcomes;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Fields;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Outcomes;

/// <summary>The form of an outcome: names of its fields, and how it is read. Names are those of errors, so that each finds its field.</summary>
/// <param name="scales">Of the site's taster.</param>
/// <param name="units">The person's.</param>
/// <param name="airRows">Rows of air on the page, as set and as measured each.</param>
/// <param name="sampleRows">Rows of samples on the page.</param>
public sealed class OutcomeForm(IReadOnlyList<TasterScale> scales, PersonUnits units, int airRows, int sampleRows)
{
    public const string Withered = "withered_weight_kg";
    public const string Oven = "oven_moisture_wet_basis_percent";
    public const string Turns = "turns";
    public const string TurnedAt = "turned_at_hours";
    public const string Bottom = "layers.bottom_moisture_wet_basis_percent";
    public const string Middle = "layers.middle_moisture_wet_basis_percent";
    public const string Top = "layers.top_moisture_wet_basis_percent";
    public const string Verdict = "verdict";
    public const string Evenness = "evenness";
    public const string Faults = "faults";
    public const string Weather = "weather";
    public const string Note = "note";
    public const string EnteredBy = "entered_by";
    public const string Confirm = "confirm";
    public const string AirSet = "air_set";
    public const string AirMeasured = "air_measured";
    public const int FewestAirRows = 3;
    public const int FewestSampleRows = 2;

    private static readonly NumberRange Hours = NumberRange.Plain(0, OutcomeRequest.LongestHours, "h");

    public int AirRows => airRows;

    public int SampleRows => sampleRows;

    public static string Air(string list, int row, string value) => $"{list}[{row}].{value}";

    public static string Sample(int row, string value) => $"sample_weighings[{row}].{value}";

    public static string Mark(int scale) => $"marks[{scale}].mark";

    /// <summary>As many rows as the outcome has, and one to add to; never fewer than the usual.</summary>
    public static OutcomeForm For(IReadOnlyList<TasterScale> scales, PersonUnits units, OutcomeRequest? kept) => new(
        scales, units,
        Math.Max(FewestAirRows, 1 + Math.Max(kept?.AirSet?.Count ?? 0, kept?.AirMeasured?.Count ?? 0)),
        Math.Max(FewestSampleRows, 1 + (kept?.SampleWeighings?.Count ?? 0)));

    /// <summary>What was typed; where the reader found problems it is not whole.</summary>
    public OutcomeRequest Read(FormReader form) => new()
    {
        AirSet = [.. Rows(airRows, row => ReadAir(form, AirSet, row))],
        AirMeasured = [.. Rows(airRows, row => ReadAir(form, AirMeasured, row))],
        Turns = (int?)form.Number(Turns, form.Words["outcome.turns"], NumberRange.Plain(0, 72, form.Words["unit.turns"])),
        TurnedAtHours = ReadHours(form),
        WitheredWeightKg = form.Number(Withered, form.Words["outcome.withered_weight"], NumberRange.Weight(1, 30000, units)),
        OvenMoistureWetBasisPercent = form.Number(Oven, form.Words["outcome.oven"], Moisture(form)),
        Layers = new()
        {
            BottomMoistureWetBasisPercent = form.Number(Bottom, form.Words["outcome.bottom"], Moisture(form)),
            MiddleMoistureWetBasisPercent = form.Number(Middle, form.Words["outcome.middle"], Moisture(form)),
            TopMoistureWetBasisPercent = form.Number(Top, form.Words["outcome.top"], Moisture(form)),
        },
        SampleWeighings = [.. Rows(sampleRows, row => ReadSample(form, row))],
        Verdict = form.Choice<WitherVerdict>(Verdict, form.Words["outcome.verdict"]),
        Evenness = form.Choice<EvennessVerdict>(Evenness, form.Words["outcome.evenness"]),
        Marks = [.. scales.Index().Select(scale => ReadMark(form, scale.Index, scale.Item)).OfType<MarkRequest>()],
        Faults = LogLists.ReadTexts(form.Text(Faults, form.Words["outcome.faults"], 1600)),
        Weather = form.Text(Weather, form.Words["outcome.weather"], OutcomeRequest.LongestWords),
        Note = form.Text(Note, form.Words["outcome.note"], OutcomeRequest.LongestNote),
        EnteredBy = form.Text(EnteredBy, form.Words["outcome.entered_by"], OutcomeRequest.LongestWords),
        Confirm = LogLists.ReadTexts(form.Typed(Confirm)),
    };

    private static IEnumerable<T> Rows<T>(int count, Func<int, T?> read)
        where T : class => Enumerable.Range(0, count).Select(read).OfType<T>();

    private static NumberRange Moisture(FormReader form) => NumberRange.Plain(5, 95, form.Words["unit.wet_basis"]);

    private AirRequest? ReadAir(FormReader form, string list, int row)
    {
        string Label(string value) => form.Words.Say(
            "outcome.air_row.field",
            ("list", form.Words[list == AirSet ? "outcome.air_set" : "outcome.air_measured"]), ("row", row + 1), ("field", form.Words[value]));

        double? hour = form.Number(Air(list, row, "from_hour"), Label("air.from_hour"), Hours);
        double? dry = form.Number(Air(list, row, "dry_bulb_c"), Label("air.dry_bulb"), NumberRange.Temperature(0, 60, units));
        double? wet = form.Number(Air(list, row, "wet_bulb_c"), Label("air.wet_bulb"), NumberRange.Temperature(0, 45, units));
        double? difference = form.Number(
            Air(list, row, "hygrometric_difference_k"), Label("air.difference"), new(0, 30, units.DegreeSymbol, ToKelvin, units.DegreesApart));
        double? fan = form.Number(Air(list, row, "fan_share_percent"), Label("air.fan"), NumberRange.Plain(0, 100, "%"));
        return (dry ?? wet ?? difference ?? fan) is null
            ? null
            : new() { FromHour = hour ?? 0, DryBulbC = dry, WetBulbC = wet, HygrometricDifferenceK = difference, FanSharePercent = fan };
    }

    private double ToKelvin(double degrees) => degrees / units.DegreesApart(1);

    private static SampleWeighingRequest? ReadSample(FormReader form, int row)
    {
        double? hour = form.Number(Sample(row, "hour"), form.Words.Say("outcome.sample_hour", ("row", row + 1)), Hours);
        double? weight = form.Number(
            Sample(row, "weight_percent"), form.Words.Say("outcome.sample_weight", ("row", row + 1)), NumberRange.Plain(10, 120, "%"), required: hour is not null);
        return weight is { } known ? new() { Hour = hour ?? 0, WeightPercent = known } : null;
    }

    private static MarkRequest? ReadMark(FormReader form, int index, TasterScale scale) =>
        form.Number(Mark(index), scale.Name, NumberRange.Plain(scale.LeastMark, scale.MostMark, form.Words["unit.on_the_scale"])) is { } mark
            ? new() { Scale = scale.Name, Mark = mark }
            : null;

    private static List<double> ReadHours(FormReader form)
    {
        List<FieldError> errors = [];
        List<double> hours = [.. LogLists.ReadNumbers(form.Typed(TurnedAt), TurnedAt, errors).OfType<double>()];
        foreach (FieldError error in errors)
        {
            form.Refuse(TurnedAt, form.Words["outcome.turned_at"], form.Words.Say("outcome.turned_at.wanted", ("given", error.Given ?? "")));
        }

        return hours;
    }
}
