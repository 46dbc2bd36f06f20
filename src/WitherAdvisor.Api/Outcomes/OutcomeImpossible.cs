using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>What of an outcome cannot be, beside its batch and its site's scales.</summary>
internal static class OutcomeImpossible
{
    public static IEnumerable<FieldError> In(WitherOutcome outcome, StoredBatch batch, IReadOnlyList<TasterScale> scales) =>
    [
        .. Weights(outcome, batch),
        .. Hours(outcome, batch),
        .. Marks(outcome.Marks, scales),
    ];

    private static IEnumerable<FieldError> Weights(WitherOutcome outcome, StoredBatch batch)
    {
        double greenKg = batch.Batch.GreenWeightKg;
        if (outcome.WitheredWeightKg > greenKg)
        {
            yield return FieldError.Of("withered_weight_kg", $"{outcome.WitheredWeightKg}", $"at most green_weight_kg, {greenKg} kg");
        }

        double dryKg = LeastDryKg(batch);
        if (outcome.WitheredWeightKg <= dryKg)
        {
            yield return FieldError.Of("withered_weight_kg", $"{outcome.WitheredWeightKg}",
                $"above {dryKg:0.#} kg, the dry matter that was in it: more water cannot have left than there was");
        }
    }

    /// <summary>Of the leaf as measured; else of the wettest leaf there is.</summary>
    private static double LeastDryKg(StoredBatch batch)
    {
        double water = batch.Batch.MeasuredSurfaceWaterKgPerKg ?? OutcomeLimits.MostSurfaceWaterKgPerKg;
        double moisture = batch.Batch.MeasuredMoistureWetBasis ?? OutcomeLimits.WettestGreenLeaf;
        return batch.Batch.GreenWeightKg / (1 + water) * (1 - moisture);
    }

    private static IEnumerable<FieldError> Hours(WitherOutcome outcome, StoredBatch batch)
    {
        double? onTrough = (batch.UnloadedAt - batch.Batch.LoadedAt)?.TotalHours;
        return Named(outcome)
            .Where(hour => hour.Hour > onTrough + OutcomeLimits.HoursOfClocks)
            .Select(hour => FieldError.Of(hour.Field, $"{hour.Hour}", $"at most {onTrough:0.##} h, when the leaf was unloaded"));
    }

    private static IEnumerable<(string Field, double Hour)> Named(WitherOutcome outcome) =>
    [
        .. outcome.AirSet.Index().Select(air => ($"air_set[{air.Index}].from_hour", air.Item.FromHour)),
        .. outcome.AirMeasured.Index().Select(air => ($"air_measured[{air.Index}].from_hour", air.Item.FromHour)),
        .. outcome.TurnedAtHours.Index().Select(hour => ($"turned_at_hours[{hour.Index}]", hour.Item)),
        .. outcome.SampleWeighings.Index().Select(sample => ($"sample_weighings[{sample.Index}].hour", sample.Item.Hour)),
    ];

    private static IEnumerable<FieldError> Marks(IReadOnlyList<TasterMark> marks, IReadOnlyList<TasterScale> scales)
    {
        foreach ((int index, TasterMark mark) in marks.Index())
        {
            TasterScale? scale = scales.FirstOrDefault(one => one.Name == mark.Scale);
            if (scale is null)
            {
                yield return FieldError.Of($"marks[{index}].scale", $"\"{mark.Scale}\"", scales.Count == 0
                    ? "one of the site's taster scales; it has none yet"
                    : "one of the site's taster scales: " + string.Join(", ", scales.Select(one => one.Name)));
            }
            else if (mark.Mark < scale.LeastMark || mark.Mark > scale.MostMark)
            {
                yield return FieldError.Of($"marks[{index}].mark", $"{mark.Mark}", $"{scale.LeastMark} to {scale.MostMark} on the scale");
            }

            if (marks.Take(index).Any(earlier => earlier.Scale == mark.Scale))
            {
                yield return FieldError.Of($"marks[{index}].scale", $"\"{mark.Scale}\"", "each scale once");
            }
        }
    }
}
