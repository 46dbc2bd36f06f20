using System.Text.Json;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of Outcome, in the order selected; its version is the store's own business.</summary>
internal sealed record OutcomeRow(
    string BatchId,
    string AirSet,
    string AirMeasured,
    long? Turns,
    string TurnedAtHours,
    double? WitheredWeightKg,
    double? OvenMoistureWetBasis,
    double? BottomMoistureWetBasis,
    double? MiddleMoistureWetBasis,
    double? TopMoistureWetBasis,
    string SampleWeighings,
    string? Verdict,
    string? Evenness,
    string Marks,
    string Faults,
    string? Weather,
    string? Note,
    long EnteredAtMs,
    string? EnteredBy,
    string Confirmed)
{
    private const string NothingSaid = "[]";

    public static OutcomeRow Of(StoredOutcome stored)
    {
        var outcome = stored.Outcome;
        return new(
            stored.BatchId, Json(outcome.AirSet), Json(outcome.AirMeasured), outcome.Turns, Json(outcome.TurnedAtHours),
            outcome.WitheredWeightKg, outcome.OvenMoistureWetBasis,
            outcome.Layers.BottomWetBasis, outcome.Layers.MiddleWetBasis, outcome.Layers.TopWetBasis,
            Json(outcome.SampleWeighings), StoredWord.Of(outcome.Verdict), StoredWord.Of(outcome.Evenness),
            Json(outcome.Marks), Json(outcome.Faults), outcome.Weather, outcome.Note,
            stored.EnteredAt.ToUnixTimeMilliseconds(), stored.EnteredBy, Json(stored.Confirmed));
    }

    public StoredOutcome ToOutcome() => new(
        BatchId,
        new WitherOutcome
        {
            AirSet = List<AirHeld>(AirSet),
            AirMeasured = List<AirHeld>(AirMeasured),
            Turns = (int?)Turns,
            TurnedAtHours = List<double>(TurnedAtHours),
            WitheredWeightKg = WitheredWeightKg,
            OvenMoistureWetBasis = OvenMoistureWetBasis,
            Layers = new(BottomMoistureWetBasis, MiddleMoistureWetBasis, TopMoistureWetBasis),
            SampleWeighings = List<SampleWeighing>(SampleWeighings),
            Verdict = StoredWord.Read<WitherVerdict>(Verdict),
            Evenness = StoredWord.Read<EvennessVerdict>(Evenness),
            Marks = List<TasterMark>(Marks),
            Faults = List<string>(Faults),
            Weather = Weather,
            Note = Note,
        },
        DateTimeOffset.FromUnixTimeMilliseconds(EnteredAtMs), EnteredBy, List<string>(Confirmed));

    private static string Json<T>(IReadOnlyList<T> list) => list.Count == 0 ? NothingSaid : JsonSerializer.Serialize(list);

    private static IReadOnlyList<T> List<T>(string json) => json == NothingSaid ? [] : JsonSerializer.Deserialize<IReadOnlyList<T>>(json)!;
}
