namespace WitherAdvisor.Words.Model;

/// <summary>What the model knows nothing of, in words.</summary>
public static class UnknownWording
{
    public static string Text(string code) => code switch
    {
        "quality" => "Taste. No number was tested against quality, liquor or aroma; plans are judged by moisture, evenness, time and heat alone.",
        "leaf_damage" => "Bruised, torn or reddened leaf and the effect of rough handling. The search counts a small cost for each turn; nothing more is known.",
        "chemistry" => "The chemistry of the wither, beyond a shortest and a longest time since plucking.",
        "open_loft" => "Wind, sun and draught in an open loft: only the trough's own air dries the leaf.",
        "leaf_heat" => "Heat stored in leaf, steel and air. The model's bed follows its air at once; a real one takes minutes after a change of heat.",
        "respiration" => "Respiration on the trough: its heat and the dry matter it uses. The loss between plucking and trough is a figure from memory.",
        "uneven_spread" => "Uneven spreading, balled leaf and air leaking past the bed or through thin spots: the bed is assumed to be the same from end to end.",
        "mixed_lots" => "Mixed lots: the model treats a trough as one kind of leaf. Two fields or two pluckings on it wither to two moistures.",
        "real_lofts" => "Any real loft. The fitted coefficients were set to match published and common practice; the model has not yet been checked against any factory's outcomes.",
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No words for this unknown."),
    };
}
