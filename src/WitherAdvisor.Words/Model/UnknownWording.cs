namespace WitherAdvisor.Words.Model;

/// <summary>What the model knows nothing of, in words.</summary>
public static class UnknownWording
{
    public static string Text(string code) => code switch
    {
        "quality" => "The taste. No test of quality, liquor or aroma stands behind any number; a plan is judged by moisture, evenness, time and heat alone.",
        "leaf_damage" => "Bruised, torn or reddened leaf, and what rough handling does to it. A turn costs a little in the search for that reason, and no more is known.",
        "chemistry" => "The chemistry of the wither beyond a least and a most number of hours since plucking.",
        "open_loft" => "Wind, sun and draught on an open loft: leaf is dried by the trough's own air and by nothing else.",
        "leaf_heat" => "Heat stored in leaf, steel and air: the bed follows its air at once, which is not true in the minutes after a change of heat.",
        "respiration" => "Respiration on the trough: its heat and the dry matter it spends. Between plucking and trough the loss is reckoned from memory.",
        "uneven_spread" => "Uneven spreading, balled leaf and air that leaks past the bed or through thin places: the bed is taken to be the same from end to end.",
        "mixed_lots" => "Mixed lots: a trough is reckoned as one leaf. Two fields or two pluckings on it wither to two moistures.",
        "real_lofts" => "Any real loft. The fitted coefficients were set so that the model meets published and common practice; no factory's outcomes have been held against it yet.",
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No words for this unknown."),
    };
}
