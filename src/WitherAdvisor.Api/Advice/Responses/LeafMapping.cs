using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Spells;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Weather;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>Leaf and spell as answers.</summary>
internal static class LeafMapping
{
    public static LeafResponse ToResponse(LeafEstimate leaf) => new()
    {
        SurfaceWater = SurfaceWater(leaf.SurfaceWaterKgPerKg),
        TissueMoisture = TissueMoisture(leaf.TissueMoistureWetBasis),
        Missing = [.. leaf.Missing.Select(ToResponse)],
    };

    public static SpellResponse ToResponse(Spell spell) => new()
    {
        Kind = spell.Kind,
        RainLastThreeDaysMm = spell.RainLast72HoursMm,
        RainLastTenDaysMm = spell.RainLast10DaysMm,
        WaterStressFraction = spell.WaterStress,
        WaterStressStandardDeviationFraction = spell.WaterStressStandardDeviation,
        DryingPowerKpaMPerS = spell.DryingPowerKPaMPerS,
        DryingPowerThresholdKpaMPerS = spell.DryingPowerThresholdKPaMPerS,
    };

    public static AssumptionResponse ToResponse(Assumption assumption) =>
        new() { Code = assumption.Code, Text = AssumptionWording.Sentence(Wordbook.English, assumption) };

    private static SurfaceWaterEstimateResponse SurfaceWater(Estimate estimate) => new()
    {
        ValueKgPerKg = estimate.Value,
        StandardDeviationKgPerKg = estimate.StandardDeviation,
        Origin = estimate.Origin,
        Contributions =
        [
            .. estimate.Contributions.Select(piece =>
                new SurfaceWaterContributionResponse { Code = piece.Code, AmountKgPerKg = piece.Amount }),
        ],
    };

    private static MoistureEstimateResponse TissueMoisture(Estimate estimate) => new()
    {
        ValueWetBasisPercent = Percent.Of(estimate.Value),
        StandardDeviationPoints = Percent.Of(estimate.StandardDeviation),
        Origin = estimate.Origin,
        Contributions =
        [
            .. estimate.Contributions.Select(piece =>
                new MoistureContributionResponse { Code = piece.Code, AmountPoints = Percent.Of(piece.Amount) }),
        ],
    };
}
