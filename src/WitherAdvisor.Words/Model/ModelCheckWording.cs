namespace WitherAdvisor.Words.Model;

/// <summary>The checks that the model is held to, in words.</summary>
public static class ModelCheckWording
{
    /// <summary>What is held against what.</summary>
    public static string Text(string code) => code switch
    {
        "saturation_table" => "Saturated moist air against the ASHRAE handbook's real-gas table; states of moist air against published examples and a reference library.",
        "fao56" => "Soil water against the worked examples of FAO-56.",
        "evapotranspiration" => "Sun, air and reference evapotranspiration against the worked examples of FAO-56.",
        "seasons" => "Soil water over the measured days of four years of a public weather record; a check of plausibility, because the record has no humidity or sun.",
        "weather_reports" => "A real day of airport weather reports.",
        "bed" => "The bed against withers solved by an independent program in finer steps, and single instants against another.",
        "outturn" => "Moisture from outturn against the dry-matter balance used in trade tables.",
        "rain_steps" => "The same rain told every 5, 15, 30 and 60 minutes and every 6 hours: the same water on the leaf within 3 %.",
        "fog_and_drizzle" => "Weeks of fog wet leaf, half a millimetre does not wet it like five, and both say how unsure they are.",
        "screening" => "Rules that look for faults in weather, against four years and three more of real weather that has none: false alarms a year.",
        "properties" => "Hotter, drier or faster air never lengthens a wither; more water never shortens it; no hard limit is ever crossed, over thousands of random batches.",
        "published_practice" => "Plans of the long style against published South Indian practice.",
        "common_practice" => "Wet, ordinary and dry windy leaf against the bands of common practice.",
        "reliability" => "The stated band against invented seasons that differ from the model as much as the spreads say.",
        "mutants" => "Mutation testing: 3,000 changes of formulas, and those that no test noticed.",
        "sensitivity" => "The sensitivities on this card, taken together, against the band of the advice.",
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No words for this check."),
    };
}
