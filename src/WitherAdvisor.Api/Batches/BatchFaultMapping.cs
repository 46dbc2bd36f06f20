using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Api.Batches;

/// <summary>What cannot be of a batch, by the fields of a request.</summary>
internal static class BatchFaultMapping
{
    public static FieldError ToError(BatchFault fault) => fault switch
    {
        BatchFault.PluckingEndsBeforeItBegins plucking =>
            Wrong("plucked_to", plucking.To, $"at or after plucked_from, {Rfc3339.Format(plucking.From)}"),
        BatchFault.LoadedBeforePlucked loaded =>
            Wrong("loaded_at", loaded.LoadedAt, $"at or after plucked_to, {Rfc3339.Format(loaded.PluckedTo)}"),
        BatchFault.PluckedTooLongAgo plucked =>
            Wrong("loaded_at", plucked.LoadedAt, $"at most {plucked.MostHours} h after plucked_from, {Rfc3339.Format(plucked.PluckedFrom)}"),
        BatchFault.WantedAtAnImpossibleTime wanted =>
            Wrong("ready_by", wanted.ReadyBy, $"after loaded_at, {Rfc3339.Format(wanted.LoadedAt)}, by at most {wanted.MostHours} h"),
        BatchFault.TooMuchLeaf leaf => FieldError.Of(
            leaf.InLots ? "lots" : "green_weight_kg", leaf.InLots ? $"{leaf.GivenKg} kg with the first lot" : $"{leaf.GivenKg}",
            $"at most {leaf.MostKg:0.##} kg on this trough: {leaf.AreaM2} m² at {leaf.MostKgPerM2} kg/m²"),
        BatchFault.TooMuchWithLot lot => FieldError.Of(
            "green_weight_kg", $"{lot.GivenKg}",
            $"at most {Math.Max(lot.MostKg - lot.LyingKg, 0):0.##} kg: "
            + $"the trough takes {lot.MostKg:0.##} kg, of which {lot.LyingKg:0.##} kg are on it or expected"),
        BatchFault.LotTooFarApart lot => Wrong(
            "loaded_at", lot.LoadedAt, $"within {lot.MostHours} h of the other lots, {Rfc3339.Format(lot.Other)}"),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "No field for this fault."),
    };

    private static FieldError Wrong(string field, DateTimeOffset given, string allowed) =>
        FieldError.Of(field, $"\"{Rfc3339.Format(given)}\"", allowed);
}
