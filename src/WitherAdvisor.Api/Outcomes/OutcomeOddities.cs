using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Outcomes;
using static WitherAdvisor.Api.Outcomes.OutcomeLimits;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>What of an outcome can be but seldom is: a slip of the pen, or a night to remember. Somebody has to say which.</summary>
internal static class OutcomeOddities
{
    public static IReadOnlyList<ProblemWarning> In(WitherOutcome outcome, StoredBatch batch, AdviceFigures? advice) =>
    [
        .. Weight(outcome, batch),
        .. Oven(outcome, batch, OutcomeComputed.SurfaceWaterKgPerKg(batch, advice) ?? 0),
        .. Time(outcome, batch),
        .. Air(outcome.AirSet, "air_set"),
        .. Air(outcome.AirMeasured, "air_measured"),
        .. Layers(outcome.Layers),
        .. Samples(outcome, batch),
    ];

    private static IEnumerable<ProblemWarning> Weight(WitherOutcome outcome, StoredBatch batch)
    {
        if (outcome.OutturnOfGreen(batch.Batch.GreenWeightKg) is < LeastOutturn or > MostOutturn)
        {
            yield return Warning("outturn_unusual", "withered_weight_kg",
                $"The outturn is {outcome.OutturnOfGreen(batch.Batch.GreenWeightKg) * 100:0.#} % of green weight; usual is {LeastOutturn * 100} to {MostOutturn * 100} %.");
        }
    }

    private static IEnumerable<ProblemWarning> Oven(WitherOutcome outcome, StoredBatch batch, double surfaceWaterKgPerKg)
    {
        if (outcome.OvenMoistureWetBasis is < DriestOven or > WettestOven)
        {
            yield return Warning("oven_unusual", "oven_moisture_wet_basis_percent",
                $"Withered leaf of {outcome.OvenMoistureWetBasis * 100:0.#} % moisture is unusual; usual is {DriestOven * 100} to {WettestOven * 100} %.");
        }

        double leafKg = batch.Batch.GreenWeightKg / (1 + surfaceWaterKgPerKg);
        double? atLoading = outcome.ImpliedGreenMoistureWetBasis(leafKg);
        if (atLoading is < DriestGreenLeaf or > WettestGreenLeaf)
        {
            yield return Warning("oven_against_weight", "oven_moisture_wet_basis_percent",
                $"By the weights and the oven the green leaf would have held {atLoading * 100:0.#} % moisture; leaf holds {DriestGreenLeaf * 100} to {WettestGreenLeaf * 100} %. One of the three is wrong.");
        }
    }

    private static IEnumerable<ProblemWarning> Time(WitherOutcome outcome, StoredBatch batch)
    {
        double? hours = (batch.UnloadedAt - batch.Batch.LoadedAt)?.TotalHours;
        if (hours is < FewestHours or > MostHours)
        {
            yield return Warning("hours_unusual", "unloaded_at",
                $"The leaf was {hours:0.##} h on the trough; usual is {FewestHours} to {MostHours} h.");
        }

        if (outcome.Turns > MostTurnsAnHour * Math.Max(1, hours ?? MostHours))
        {
            yield return Warning("turns_unusual", "turns", $"{outcome.Turns} turns are more than {MostTurnsAnHour} an hour.");
        }
    }

    private static IEnumerable<ProblemWarning> Air(IReadOnlyList<AirHeld> air, string list)
    {
        foreach ((int index, AirHeld held) in air.Index())
        {
            if (held.DryBulbC > HottestC)
            {
                yield return Warning("air_too_hot", $"{list}[{index}].dry_bulb_c",
                    $"{list}[{index}].dry_bulb_c is {held.DryBulbC} °C; leaf reddens above {HottestC} °C.");
            }

            if (held.DifferenceK > WidestDifferenceK)
            {
                yield return Warning("difference_unusual", $"{list}[{index}].hygrometric_difference_k",
                    $"A hygrometric difference of {held.DifferenceK:0.#} K is unusual under the mesh; {WidestDifferenceK} K is much.");
            }
        }
    }

    private static IEnumerable<ProblemWarning> Layers(LayerMoistures layers)
    {
        List<double> known = [.. new[] { layers.BottomWetBasis, layers.MiddleWetBasis, layers.TopWetBasis }.OfType<double>()];
        if (known.Count > 1 && known.Max() - known.Min() > WidestLayerSpread)
        {
            yield return Warning("layers_far_apart", "layers",
                $"The samples lie {(known.Max() - known.Min()) * 100:0.#} points of moisture apart; {WidestLayerSpread * 100} is much.");
        }
    }

    private static IEnumerable<ProblemWarning> Samples(WitherOutcome outcome, StoredBatch batch)
    {
        double least = 1;
        foreach ((int index, SampleWeighing sample) in outcome.SampleWeighings.Index())
        {
            if (sample.WeightShare > least + SampleError)
            {
                yield return Warning("sample_gained_weight", $"sample_weighings[{index}].weight_percent",
                    $"The sample weighed {sample.WeightShare * 100:0.#} % after {least * 100:0.#} %: leaf under air does not gain weight.");
            }

            least = Math.Min(least, sample.WeightShare);
        }

        if (outcome.OutturnOfGreen(batch.Batch.GreenWeightKg) - least > SampleAgainstBed)
        {
            yield return Warning("sample_against_weight", "withered_weight_kg",
                $"The whole bed weighs more of its green weight than its sample did ({least * 100:0.#} %) by over {SampleAgainstBed * 100:0.#} points.");
        }
    }

    private static ProblemWarning Warning(string code, string field, string text) => new() { Code = code, Field = field, Text = text };
}
