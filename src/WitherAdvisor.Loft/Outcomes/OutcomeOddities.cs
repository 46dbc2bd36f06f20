using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Outcomes;
using static WitherAdvisor.Loft.Outcomes.OutcomeLimits;

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>What of an outcome can be but seldom is: a slip of the pen, or a night to remember. Somebody has to say which.</summary>
public static class OutcomeOddities
{
    public static IReadOnlyList<OutcomeOddity> In(WitherOutcome outcome, StoredBatch batch, AdviceFigures? advice) =>
    [
        .. Weight(outcome, batch),
        .. Oven(outcome, batch, OutcomeComputed.SurfaceWaterKgPerKg(batch, advice) ?? 0),
        .. Time(outcome, batch),
        .. Air(outcome.AirSet, OutcomeTerm.AirSetDryBulb, OutcomeTerm.AirSetDifference),
        .. Air(outcome.AirMeasured, OutcomeTerm.AirMeasuredDryBulb, OutcomeTerm.AirMeasuredDifference),
        .. Layers(outcome.Layers),
        .. Samples(outcome, batch),
    ];

    private static IEnumerable<OutcomeOddity> Weight(WitherOutcome outcome, StoredBatch batch)
    {
        if (outcome.OutturnOfGreen(batch.Batch.GreenWeightKg) is { } outturn and (< LeastOutturn or > MostOutturn))
        {
            yield return new OutcomeOddity.OutturnUnusual(outturn);
        }
    }

    private static IEnumerable<OutcomeOddity> Oven(WitherOutcome outcome, StoredBatch batch, double surfaceWaterKgPerKg)
    {
        if (outcome.OvenMoistureWetBasis is { } moisture and (< DriestOven or > WettestOven))
        {
            yield return new OutcomeOddity.OvenUnusual(moisture);
        }

        double leafKg = batch.Batch.GreenWeightKg / (1 + surfaceWaterKgPerKg);
        if (outcome.ImpliedGreenMoistureWetBasis(leafKg) is { } atLoading and (< DriestGreenLeaf or > WettestGreenLeaf))
        {
            yield return new OutcomeOddity.OvenAgainstWeight(atLoading);
        }
    }

    private static IEnumerable<OutcomeOddity> Time(WitherOutcome outcome, StoredBatch batch)
    {
        double? onTrough = (batch.UnloadedAt - batch.Batch.LoadedAt)?.TotalHours;
        if (onTrough is { } hours and (< FewestHours or > MostHours))
        {
            yield return new OutcomeOddity.HoursUnusual(hours);
        }

        if (outcome.Turns is { } turns && turns > MostTurnsAnHour * Math.Max(1, onTrough ?? MostHours))
        {
            yield return new OutcomeOddity.TurnsUnusual(turns);
        }
    }

    private static IEnumerable<OutcomeOddity> Air(IReadOnlyList<AirHeld> air, OutcomeTerm dryBulb, OutcomeTerm difference)
    {
        foreach ((int index, AirHeld held) in air.Index())
        {
            if (held.DryBulbC is { } dryBulbC and > HottestC)
            {
                yield return new OutcomeOddity.AirTooHot(new(dryBulb, index), dryBulbC);
            }

            if (held.DifferenceK is { } differenceK and > WidestDifferenceK)
            {
                yield return new OutcomeOddity.DifferenceUnusual(new(difference, index), differenceK);
            }
        }
    }

    private static IEnumerable<OutcomeOddity> Layers(LayerMoistures layers)
    {
        List<double> known = [.. new[] { layers.BottomWetBasis, layers.MiddleWetBasis, layers.TopWetBasis }.OfType<double>()];
        if (known.Count > 1 && known.Max() - known.Min() > WidestLayerSpread)
        {
            yield return new OutcomeOddity.LayersFarApart(known.Max() - known.Min());
        }
    }

    private static IEnumerable<OutcomeOddity> Samples(WitherOutcome outcome, StoredBatch batch)
    {
        double least = 1;
        foreach ((int index, SampleWeighing sample) in outcome.SampleWeighings.Index())
        {
            if (sample.WeightShare > least + SampleError)
            {
                yield return new OutcomeOddity.SampleGainedWeight(new(OutcomeTerm.SampleWeight, index), sample.WeightShare, least);
            }

            least = Math.Min(least, sample.WeightShare);
        }

        if (outcome.OutturnOfGreen(batch.Batch.GreenWeightKg) - least > SampleAgainstBed)
        {
            yield return new OutcomeOddity.SampleAgainstWeight(least);
        }
    }
}
