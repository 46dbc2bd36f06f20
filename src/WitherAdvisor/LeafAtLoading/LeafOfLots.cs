using WitherAdvisor.Leaf;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>What the leaf of several lots comes to, by the weight of each.</summary>
internal static class LeafOfLots
{
    /// <summary>The mean of the lots; the spell is that of the heaviest.</summary>
    /// <remarks>
    /// All stood in the same weather, so what is not known of one lies on the same side for the others: deviations are
    /// averaged too, and do not shrink by the number of lots. Where lots were told in different ways the poorest counts.
    /// </remarks>
    public static LeafEstimate Mean(IReadOnlyList<(double GreenWeightKg, LeafEstimate Leaf)> lots)
    {
        if (lots.Count == 1)
        {
            return lots[0].Leaf;
        }

        double[] leafKg = [.. lots.Select(lot => lot.GreenWeightKg / (1 + lot.Leaf.SurfaceWaterKgPerKg.Value))];
        return new(
            Mean([.. lots.Select(lot => lot.Leaf.SurfaceWaterKgPerKg)], leafKg),
            Mean([.. lots.Select(lot => lot.Leaf.TissueMoistureWetBasis)], leafKg),
            lots.MaxBy(lot => lot.GreenWeightKg).Leaf.Spell,
            [.. lots.SelectMany(lot => lot.Leaf.Missing).DistinctBy(missing => missing.Code)]);
    }

    private static Estimate Mean(IReadOnlyList<Estimate> estimates, double[] leafKg)
    {
        double all = leafKg.Sum();
        double Weighted(Func<Estimate, double> of) => estimates.Zip(leafKg, (estimate, kg) => of(estimate) * kg / all).Sum();
        return new(
            Weighted(estimate => estimate.Value),
            Weighted(estimate => estimate.StandardDeviation),
            estimates.Max(estimate => estimate.Origin),
            estimates.Any(estimate => estimate.Contributions.Count == 0) ? [] : Pieces(estimates, Weighted));
    }

    private static Contribution[] Pieces(IReadOnlyList<Estimate> estimates, Func<Func<Estimate, double>, double> weighted) =>
    [
        .. estimates.SelectMany(estimate => estimate.Contributions).Select(piece => piece.Code).Distinct()
            .Select(code => new Contribution(code, weighted(estimate => estimate.Contributions.Where(piece => piece.Code == code).Sum(piece => piece.Amount)))),
    ];
}
