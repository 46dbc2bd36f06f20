using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Wording;

/// <summary>Estimates of the leaf in words: value, error, where it is from and what it is made of.</summary>
public static class EstimateWording
{
    private static readonly Dictionary<string, string> Pieces = new(StringComparer.Ordinal)
    {
        ["rain"] = "rain",
        ["dew"] = "dew",
        ["unknown_rain"] = "rain that nobody measured",
        ["felt"] = "by hand",
        ["weather"] = "what the weather adds to that",
        ["assumed"] = "usual value",
        ["wet_season"] = "leaf that wants for no water",
        ["drought"] = "drought",
        ["standard"] = "coarse leaf",
        ["field_to_trough"] = "on the way from field to trough",
        ["held"] = "kept to what leaf can hold",
    };

    /// <summary>Codes of pieces that have words of their own.</summary>
    public static IReadOnlyCollection<string> KnownPieces => Pieces.Keys;

    public static string Origin(EstimateOrigin origin) => origin switch
    {
        EstimateOrigin.Measured => "measured",
        EstimateOrigin.ByFeel => "judged by hand",
        EstimateOrigin.FromWeather => "worked out from the weather",
        EstimateOrigin.Assumed => "assumed: nothing was known",
        _ => throw new ArgumentOutOfRangeException(nameof(origin), origin, "No words for this origin."),
    };

    public static string Piece(string code) => Pieces.GetValueOrDefault(code) ?? Codes.Plain(code);

    public static string SurfaceWater(Estimate estimate) =>
        $"Water on the leaf: {Figures.Percent(estimate.Value, 1)} ± {Figures.Fixed(estimate.StandardDeviation * 100, 1)} of the leaf's own weight, "
        + $"{Origin(estimate.Origin)}{MadeOf(estimate)}.";

    public static string TissueMoisture(Estimate estimate) =>
        $"Water in the leaf: {Figures.Percent(estimate.Value, 1)} ± {Figures.Fixed(estimate.StandardDeviation * 100, 1)} moisture (wet basis), "
        + $"{Origin(estimate.Origin)}{MadeOf(estimate)}.";

    private static string MadeOf(Estimate estimate) => estimate.Contributions.Count == 0
        ? ""
        : ": " + string.Join(", ", estimate.Contributions.Where(IsWorthSaying).Select(piece => $"{Piece(piece.Code)} {Figures.Percent(piece.Amount, 1)}"));

    /// <summary>A piece that would show as nothing is left out.</summary>
    private static bool IsWorthSaying(Contribution piece) => Math.Abs(piece.Amount) >= 0.0005;
}
