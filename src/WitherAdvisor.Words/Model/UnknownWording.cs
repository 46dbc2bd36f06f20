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
        "sunlight" => "Sunlight that nobody measured: it is worked out from each day's range of temperature, half-way between a place inland and one by the coast, with diffuse light alone in hours of rain. Clouds that leave the range as it is are not seen.",
        "soil_start" => "The water in the soil when the history begins: three guesses, wet, middling and dry, that forget themselves in two or three months. Until then K_s leans on them.",
        "clamps" => "What lies beyond the ends: moisture in the leaf is held within 72 and 83 %, water on it within 0.35 kg/kg, dew within 0.3 mm a night, the longwave term within what is published. Leaf that is truly beyond is taken for the end.",
        "fog" => "How much water fog lays on leaf: a rate from memory, right to a factor of two, where a weather code, a short view or air at saturation tells of fog. Fog that drips from shade trees is not reckoned.",
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No words for this unknown."),
    };
}
