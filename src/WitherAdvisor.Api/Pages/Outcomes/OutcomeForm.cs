using WitherAdvisor.Api.Outcomes;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Wording;
using WitherAdvisor.Fields;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.Outcomes;

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

    private static readonly NumberRange Moisture = NumberRange.Plain(5, 95, "% wet basis");
    private static readonly NumberRange Hours = NumberRange.Plain(0, OutcomeInput.LongestHours, "h");

    public int AirRows => airRows;

    public int SampleRows => sampleRows;

    public static string Air(string list, int row, string value) => $"{list}[{row}].{value}";

    public static string Sample(int row, string value) => $"sample_weighings[{row}].{value}";

    public static string Mark(int scale) => $"marks[{scale}].mark";

    /// <summary>As many rows as the outcome has, and one to add to; never fewer than the usual.</summary>
    public static OutcomeForm For(IReadOnlyList<TasterScale> scales, PersonUnits units, OutcomeInput? kept) => new(
        scales, units,
        Math.Max(FewestAirRows, 1 + Math.Max(kept?.AirSet?.Count ?? 0, kept?.AirMeasured?.Count ?? 0)),
        Math.Max(FewestSampleRows, 1 + (kept?.SampleWeighings?.Count ?? 0)));

    /// <summary>What was typed; where the reader found problems it is not whole.</summary>
    public OutcomeInput Read(FormReader form) => new()
    {
        AirSet = [.. Rows(airRows, row => ReadAir(form, AirSet, row))],
        AirMeasured = [.. Rows(airRows, row => ReadAir(form, AirMeasured, row))],
        Turns = (int?)form.Number(Turns, "Turns", NumberRange.Plain(0, 72, "turns")),
        TurnedAtHours = ReadHours(form),
        WitheredWeightKg = form.Number(Withered, "Withered weight", NumberRange.Weight(1, 30000, units)),
        OvenMoistureWetBasisPercent = form.Number(Oven, "Moisture by the oven", Moisture),
        Layers = new()
        {
            BottomMoistureWetBasisPercent = form.Number(Bottom, "Moisture at the bottom", Moisture),
            MiddleMoistureWetBasisPercent = form.Number(Middle, "Moisture in the middle", Moisture),
            TopMoistureWetBasisPercent = form.Number(Top, "Moisture at the top", Moisture),
        },
        SampleWeighings = [.. Rows(sampleRows, row => ReadSample(form, row))],
        Verdict = form.Choice<WitherVerdict>(Verdict, "How far it was withered"),
        Evenness = form.Choice<EvennessVerdict>(Evenness, "How evenly"),
        Marks = [.. scales.Index().Select(scale => ReadMark(form, scale.Index, scale.Item)).OfType<MarkInput>()],
        Faults = LogLists.ReadTexts(form.Text(Faults, "Faults seen", 1600)),
        Weather = form.Text(Weather, "Weather in a word", OutcomeInput.LongestWords),
        Note = form.Text(Note, "Note", OutcomeInput.LongestNote),
        EnteredBy = form.Text(EnteredBy, "Entered by", OutcomeInput.LongestWords),
        Confirm = LogLists.ReadTexts(form.Typed(Confirm)),
    };

    private static IEnumerable<T> Rows<T>(int count, Func<int, T?> read)
        where T : class => Enumerable.Range(0, count).Select(read).OfType<T>();

    private AirInput? ReadAir(FormReader form, string list, int row)
    {
        string name = $"{(list == AirSet ? "Air set" : "Air measured")}, row {row + 1}";
        double? hour = form.Number(Air(list, row, "from_hour"), $"{name}, from hour", Hours);
        double? dry = form.Number(Air(list, row, "dry_bulb_c"), $"{name}, dry bulb", NumberRange.Temperature(0, 60, units));
        double? wet = form.Number(Air(list, row, "wet_bulb_c"), $"{name}, wet bulb", NumberRange.Temperature(0, 45, units));
        double? difference = form.Number(
            Air(list, row, "hygrometric_difference_k"), $"{name}, difference", new(0, 30, units.DegreeSymbol, ToKelvin, units.DegreesApart));
        double? fan = form.Number(Air(list, row, "fan_share_percent"), $"{name}, fan", NumberRange.Plain(0, 100, "%"));
        return (dry ?? wet ?? difference ?? fan) is null
            ? null
            : new() { FromHour = hour ?? 0, DryBulbC = dry, WetBulbC = wet, HygrometricDifferenceK = difference, FanSharePercent = fan };
    }

    private double ToKelvin(double degrees) => degrees / units.DegreesApart(1);

    private static SampleWeighingInput? ReadSample(FormReader form, int row)
    {
        double? hour = form.Number(Sample(row, "hour"), $"Sample {row + 1}, hour", Hours);
        double? weight = form.Number(
            Sample(row, "weight_percent"), $"Sample {row + 1}, weight", NumberRange.Plain(10, 120, "%"), required: hour is not null);
        return weight is { } known ? new() { Hour = hour ?? 0, WeightPercent = known } : null;
    }

    private static MarkInput? ReadMark(FormReader form, int index, TasterScale scale) =>
        form.Number(Mark(index), scale.Name, NumberRange.Plain(scale.LeastMark, scale.MostMark, "on the scale")) is { } mark
            ? new() { Scale = scale.Name, Mark = mark }
            : null;

    private static List<double> ReadHours(FormReader form)
    {
        List<FieldError> errors = [];
        List<double> hours = [.. LogLists.ReadNumbers(form.Typed(TurnedAt), TurnedAt, errors).OfType<double>()];
        foreach (FieldError error in errors)
        {
            form.Refuse(TurnedAt, "Turned at", $"“{error.Given}” was given; hours from loading with semicolons between them are wanted, such as 3; 6.5.");
        }

        return hours;
    }
}
