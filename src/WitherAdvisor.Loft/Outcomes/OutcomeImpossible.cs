using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>What of an outcome cannot be, beside its batch and its site's scales.</summary>
public static class OutcomeImpossible
{
    public static IEnumerable<OutcomeFault> In(WitherOutcome outcome, StoredBatch batch, IReadOnlyList<TasterScale> scales) =>
    [
        .. Weights(outcome, batch),
        .. Hours(outcome, batch),
        .. Marks(outcome.Marks, scales),
    ];

    private static IEnumerable<OutcomeFault> Weights(WitherOutcome outcome, StoredBatch batch)
    {
        if (outcome.WitheredWeightKg is not { } witheredKg)
        {
            yield break;
        }

        double greenKg = batch.Batch.GreenWeightKg;
        if (witheredKg > greenKg)
        {
            yield return new OutcomeFault.HeavierThanGreen(witheredKg, greenKg);
        }

        double dryKg = LeastDryKg(batch);
        if (witheredKg <= dryKg)
        {
            yield return new OutcomeFault.LighterThanDryMatter(witheredKg, dryKg);
        }
    }

    /// <summary>Of the leaf as measured; else of the wettest leaf there is.</summary>
    private static double LeastDryKg(StoredBatch batch)
    {
        double water = batch.Batch.MeasuredSurfaceWaterKgPerKg ?? OutcomeLimits.MostSurfaceWaterKgPerKg;
        double moisture = batch.Batch.MeasuredMoistureWetBasis ?? OutcomeLimits.WettestGreenLeaf;
        return batch.Batch.GreenWeightKg / (1 + water) * (1 - moisture);
    }

    private static IEnumerable<OutcomeFault> Hours(WitherOutcome outcome, StoredBatch batch) =>
        (batch.UnloadedAt - batch.Batch.LoadedAt)?.TotalHours is { } onTrough
            ? Named(outcome)
                .Where(hour => hour.Hour > onTrough + OutcomeLimits.HoursOfClocks)
                .Select(hour => new OutcomeFault.AfterUnloading(new(hour.Term, hour.Index), hour.Hour, onTrough))
            : [];

    private static IEnumerable<(OutcomeTerm Term, int Index, double Hour)> Named(WitherOutcome outcome) =>
    [
        .. outcome.AirSet.Index().Select(air => (OutcomeTerm.AirSetFromHour, air.Index, air.Item.FromHour)),
        .. outcome.AirMeasured.Index().Select(air => (OutcomeTerm.AirMeasuredFromHour, air.Index, air.Item.FromHour)),
        .. outcome.TurnedAtHours.Index().Select(hour => (OutcomeTerm.TurnedAt, hour.Index, hour.Item)),
        .. outcome.SampleWeighings.Index().Select(sample => (OutcomeTerm.SampleHour, sample.Index, sample.Item.Hour)),
    ];

    private static IEnumerable<OutcomeFault> Marks(IReadOnlyList<TasterMark> marks, IReadOnlyList<TasterScale> scales)
    {
        foreach ((int index, TasterMark mark) in marks.Index())
        {
            OutcomePlace ofScale = new(OutcomeTerm.MarkScale, index);
            TasterScale? scale = scales.FirstOrDefault(one => one.Name == mark.Scale);
            if (scale is null)
            {
                yield return new OutcomeFault.UnknownScale(ofScale, mark.Scale, scales);
            }
            else if (mark.Mark < scale.LeastMark || mark.Mark > scale.MostMark)
            {
                yield return new OutcomeFault.OffScale(new(OutcomeTerm.Mark, index), mark.Mark, scale);
            }

            if (marks.Take(index).Any(earlier => earlier.Scale == mark.Scale))
            {
                yield return new OutcomeFault.ScaleTwice(ofScale, mark.Scale);
            }
        }
    }
}
