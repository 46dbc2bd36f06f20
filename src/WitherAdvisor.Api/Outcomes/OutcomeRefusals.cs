using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Outcomes;
using static WitherAdvisor.Loft.Outcomes.OutcomeLimits;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>Why an outcome was not kept, as problems: fields by the names that a request gives them, reasons as sentences.</summary>
internal static class OutcomeRefusals
{
    /// <summary>Null where it was kept.</summary>
    public static ProblemResult? Problem(OutcomeEntryResult result, string batchId) => result switch
    {
        OutcomeEntryResult.Kept => null,
        OutcomeEntryResult.UnknownBatch => Http.Problem.Unknown("batch", batchId),
        OutcomeEntryResult.StillOnTrough => Http.Problem.Conflict(
            "still-on-trough", "The batch is still on its trough.", $"Say first when batch '{batchId}' was unloaded."),
        OutcomeEntryResult.EndedOtherwise ended => AlreadyEnded.Batch(ended.Batch),
        OutcomeEntryResult.Impossible impossible => Http.Problem.InvalidInput([.. impossible.Faults.Select(Error)]),
        OutcomeEntryResult.Unusual unusual => Http.Problem.Unusual([.. unusual.Oddities.Select(Warning)]),
        _ => throw new ArgumentOutOfRangeException(nameof(result), result, "Nobody has said what this is answered with."),
    };

    public static FieldError Error(OutcomeFault fault) => fault switch
    {
        OutcomeFault.HeavierThanGreen heavier => Of(fault, $"{heavier.WitheredKg}", $"at most green_weight_kg, {heavier.GreenKg} kg"),
        OutcomeFault.LighterThanDryMatter lighter => Of(fault, $"{lighter.WitheredKg}",
            $"above {lighter.DryKg:0.#} kg, the dry matter that was in it: more water cannot have left than there was"),
        OutcomeFault.AfterUnloading after => Of(fault, $"{after.Hour}", $"at most {after.HoursOnTrough:0.##} h, when the leaf was unloaded"),
        OutcomeFault.UnknownScale { Scales.Count: 0 } unknown => Of(fault, $"\"{unknown.Scale}\"", "one of the site's taster scales; it has none yet"),
        OutcomeFault.UnknownScale unknown => Of(fault, $"\"{unknown.Scale}\"",
            "one of the site's taster scales: " + string.Join(", ", unknown.Scales.Select(scale => scale.Name))),
        OutcomeFault.OffScale off => Of(fault, $"{off.Mark}", $"{off.Scale.LeastMark} to {off.Scale.MostMark} on the scale"),
        OutcomeFault.ScaleTwice twice => Of(fault, $"\"{twice.Scale}\"", "each scale once"),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "Nobody has said how this is told."),
    };

    public static ProblemWarning Warning(OutcomeOddity oddity) => new() { Code = oddity.Word, Field = Field(oddity.Place), Text = Text(oddity) };

    private static FieldError Of(OutcomeFault fault, string given, string allowed) => FieldError.Of(Field(fault.Place), given, allowed);

    private static string Text(OutcomeOddity oddity) => oddity switch
    {
        OutcomeOddity.OutturnUnusual odd =>
            $"The outturn is {odd.Outturn * 100:0.#} % of green weight; usual is {LeastOutturn * 100} to {MostOutturn * 100} %.",
        OutcomeOddity.OvenUnusual odd =>
            $"Withered leaf of {odd.MoistureWetBasis * 100:0.#} % moisture is unusual; usual is {DriestOven * 100} to {WettestOven * 100} %.",
        OutcomeOddity.OvenAgainstWeight odd =>
            $"By the weights and the oven the green leaf would have held {odd.GreenMoistureWetBasis * 100:0.#} % moisture; leaf holds {DriestGreenLeaf * 100} to {WettestGreenLeaf * 100} %. One of the three is wrong.",
        OutcomeOddity.HoursUnusual odd => $"The leaf was {odd.HoursOnTrough:0.##} h on the trough; usual is {FewestHours} to {MostHours} h.",
        OutcomeOddity.TurnsUnusual odd => $"{odd.Turns} turns are more than {MostTurnsAnHour} an hour.",
        OutcomeOddity.AirTooHot odd => $"{Field(odd.Place)} is {odd.DryBulbC} °C; leaf reddens above {HottestC} °C.",
        OutcomeOddity.DifferenceUnusual odd =>
            $"A hygrometric difference of {odd.DifferenceK:0.#} K is unusual under the mesh; {WidestDifferenceK} K is much.",
        OutcomeOddity.LayersFarApart odd => $"The samples lie {odd.Apart * 100:0.#} points of moisture apart; {WidestLayerSpread * 100} is much.",
        OutcomeOddity.SampleGainedWeight odd =>
            $"The sample weighed {odd.Share * 100:0.#} % after {odd.LeastBefore * 100:0.#} %: leaf under air does not gain weight.",
        OutcomeOddity.SampleAgainstWeight odd =>
            $"The whole bed weighs more of its green weight than its sample did ({odd.LeastShare * 100:0.#} %) by over {SampleAgainstBed * 100:0.#} points.",
        _ => throw new ArgumentOutOfRangeException(nameof(oddity), oddity, "Nobody has said how this is told."),
    };

    private static string Field(OutcomePlace place) => place.Term switch
    {
        OutcomeTerm.WitheredWeight => "withered_weight_kg",
        OutcomeTerm.OvenMoisture => "oven_moisture_wet_basis_percent",
        OutcomeTerm.Layers => "layers",
        OutcomeTerm.Unloading => "unloaded_at",
        OutcomeTerm.Turns => "turns",
        OutcomeTerm.TurnedAt => $"turned_at_hours[{place.Index}]",
        OutcomeTerm.AirSetFromHour => $"air_set[{place.Index}].from_hour",
        OutcomeTerm.AirSetDryBulb => $"air_set[{place.Index}].dry_bulb_c",
        OutcomeTerm.AirSetDifference => $"air_set[{place.Index}].hygrometric_difference_k",
        OutcomeTerm.AirMeasuredFromHour => $"air_measured[{place.Index}].from_hour",
        OutcomeTerm.AirMeasuredDryBulb => $"air_measured[{place.Index}].dry_bulb_c",
        OutcomeTerm.AirMeasuredDifference => $"air_measured[{place.Index}].hygrometric_difference_k",
        OutcomeTerm.SampleHour => $"sample_weighings[{place.Index}].hour",
        OutcomeTerm.SampleWeight => $"sample_weighings[{place.Index}].weight_percent",
        OutcomeTerm.MarkScale => $"marks[{place.Index}].scale",
        OutcomeTerm.Mark => $"marks[{place.Index}].mark",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "No field of a request has this."),
    };
}
