using WitherAdvisor.Leaf;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Leaf;

/// <summary>Estimates of the leaf in words: value, error, where it is from and what it is made of.</summary>
public static class EstimateWording
{
    public static string Piece(Wordbook words, string code) => words.OfCode("estimate_piece", code);

    public static string SurfaceWater(Wordbook words, Estimate estimate) => Sentence(words, "estimate.surface_water", estimate);

    public static string TissueMoisture(Wordbook words, Estimate estimate) => Sentence(words, "estimate.tissue_moisture", estimate);

    private static string Sentence(Wordbook words, string key, Estimate estimate)
    {
        string[] pieces = [.. estimate.Contributions.Where(IsWorthSaying).Select(piece => words.Say(
            "estimate.piece", ("piece", Piece(words, piece.Code)), ("amount", Figures.Percent(piece.Amount, 1))))];
        return words.Say(
            IsWorthListing(estimate.Origin, pieces.Length) ? $"{key}.made_of" : key,
            ("share", Figures.Percent(estimate.Value, 1)),
            ("error", Figures.Fixed(estimate.StandardDeviation * 100, 1)),
            ("origin", words.Name(estimate.Origin)),
            ("pieces", string.Join(", ", pieces)));
    }

    /// <summary>One piece of what was measured or felt would only say the same again.</summary>
    private static bool IsWorthListing(EstimateOrigin origin, int pieces) => pieces > 1 || (pieces == 1 && origin == EstimateOrigin.FromWeather);

    /// <summary>A piece that would show as nothing is left out.</summary>
    private static bool IsWorthSaying(Contribution piece) => Math.Abs(piece.Amount) >= 0.0005;
}
