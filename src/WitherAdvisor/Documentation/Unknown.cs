namespace WitherAdvisor.Documentation;

/// <summary>Something that the model knows nothing of.</summary>
/// <param name="Code">snake_case name.</param>
/// <param name="Text">For people.</param>
public sealed record Unknown(string Code, string Text)
{
    /// <summary>All that is left out and may matter.</summary>
    public static IReadOnlyList<Unknown> All { get; } =
    [
        new("quality", "The taste. No test of quality, liquor or aroma stands behind any number; a plan is judged by moisture, evenness, time and heat alone."),
        new("leaf_damage", "Bruised, torn or reddened leaf, and what rough handling does to it. A turn costs a little in the search for that reason, and no more is known."),
        new("chemistry", "The chemistry of the wither beyond a least and a most number of hours since plucking."),
        new("open_loft", "Wind, sun and draught on an open loft: leaf is dried by the trough's own air and by nothing else."),
        new("leaf_heat", "Heat stored in leaf, steel and air: the bed follows its air at once, which is not true in the minutes after a change of heat."),
        new("respiration", "Respiration on the trough: its heat and the dry matter it spends. Between plucking and trough the loss is reckoned from memory."),
        new("uneven_spread", "Uneven spreading, balled leaf and air that leaks past the bed or through thin places: the bed is taken to be the same from end to end."),
        new("mixed_lots", "Mixed lots: a trough is reckoned as one leaf. Two fields or two pluckings on it wither to two moistures."),
        new("real_lofts", "Any real loft. The fitted coefficients were set so that the model meets published and common practice; no factory's outcomes have been held against it yet."),
    ];
}
