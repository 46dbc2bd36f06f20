using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Outcomes;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>An outcome between request, domain and store.</summary>
internal static class OutcomeMapping
{
    public static WitherOutcome ToDomain(OutcomeRequest input) => new()
    {
        AirSet = [.. (input.AirSet ?? []).Select(ToDomain)],
        AirMeasured = [.. (input.AirMeasured ?? []).Select(ToDomain)],
        Turns = input.Turns ?? (input.TurnedAtHours is { Count: > 0 } hours ? hours.Count : null),
        TurnedAtHours = input.TurnedAtHours ?? [],
        WitheredWeightKg = input.WitheredWeightKg,
        OvenMoistureWetBasis = Percent.ToFraction(input.OvenMoistureWetBasisPercent),
        Layers = new(
            Percent.ToFraction(input.Layers?.BottomMoistureWetBasisPercent),
            Percent.ToFraction(input.Layers?.MiddleMoistureWetBasisPercent),
            Percent.ToFraction(input.Layers?.TopMoistureWetBasisPercent)),
        SampleWeighings = [.. (input.SampleWeighings ?? []).Select(one => new SampleWeighing(one.Hour, Percent.ToFraction(one.WeightPercent)))],
        Verdict = input.Verdict,
        Evenness = input.Evenness,
        Marks = [.. (input.Marks ?? []).Select(mark => new TasterMark(mark.Scale, mark.Mark))],
        Faults = input.Faults ?? [],
        Weather = input.Weather,
        Note = input.Note,
    };

    public static EnteredOutcome ToEntered(OutcomeRequest input) => new(ToDomain(input), input.EnteredBy, input.Confirm ?? []);

    public static OutcomeRequest ToRequest(StoredOutcome stored) => new()
    {
        AirSet = [.. stored.Outcome.AirSet.Select(ToRequest)],
        AirMeasured = [.. stored.Outcome.AirMeasured.Select(ToRequest)],
        Turns = stored.Outcome.Turns,
        TurnedAtHours = stored.Outcome.TurnedAtHours,
        WitheredWeightKg = stored.Outcome.WitheredWeightKg,
        OvenMoistureWetBasisPercent = Percent.Of(stored.Outcome.OvenMoistureWetBasis),
        Layers = ToRequest(stored.Outcome.Layers),
        SampleWeighings =
            [.. stored.Outcome.SampleWeighings.Select(one => new SampleWeighingRequest { Hour = one.Hour, WeightPercent = Percent.Of(one.WeightShare) })],
        Verdict = stored.Outcome.Verdict,
        Evenness = stored.Outcome.Evenness,
        Marks = [.. stored.Outcome.Marks.Select(mark => new MarkRequest { Scale = mark.Scale, Mark = mark.Mark })],
        Faults = stored.Outcome.Faults,
        Weather = stored.Outcome.Weather,
        Note = stored.Outcome.Note,
        EnteredBy = stored.EnteredBy,
        Confirm = stored.Confirmed,
    };

    private static LayersRequest? ToRequest(LayerMoistures layers) => layers == new LayerMoistures(null, null, null) ? null : new()
    {
        BottomMoistureWetBasisPercent = Percent.Of(layers.BottomWetBasis),
        MiddleMoistureWetBasisPercent = Percent.Of(layers.MiddleWetBasis),
        TopMoistureWetBasisPercent = Percent.Of(layers.TopWetBasis),
    };

    private static AirHeld ToDomain(AirRequest air) =>
        new(air.FromHour, air.DryBulbC, air.WetBulbC, air.HygrometricDifferenceK, Percent.ToFraction(air.FanSharePercent));

    private static AirRequest ToRequest(AirHeld air) => new()
    {
        FromHour = air.FromHour,
        DryBulbC = air.DryBulbC,
        WetBulbC = air.WetBulbC,
        HygrometricDifferenceK = air.HygrometricDifferenceK,
        FanSharePercent = Percent.Of(air.FanShare),
    };
}
