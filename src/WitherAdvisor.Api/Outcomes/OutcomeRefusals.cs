using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Outcomes;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Outcomes;

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
            "still-on-trough", "The batch is still on its trough.", $"First say when batch '{batchId}' was unloaded."),
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

    public static ProblemWarning Warning(OutcomeOddity oddity)
    {
        string field = Field(oddity.Place);
        return new() { Code = oddity.Word, Field = field, Text = OddityWording.Sentence(Wordbook.English, oddity, field) };
    }

    private static FieldError Of(OutcomeFault fault, string given, string allowed) => FieldError.Of(Field(fault.Place), given, allowed);

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
