namespace WitherAdvisor.Documentation;

/// <summary>A check that the model is held to.</summary>
/// <param name="Code">snake_case name.</param>
/// <param name="Text">What is held against what.</param>
/// <param name="Where">Path in the repository.</param>
public sealed record ModelCheck(string Code, string Text, string Where)
{
    /// <summary>All of them, in the order in which a number travels.</summary>
    public static IReadOnlyList<ModelCheck> All { get; } =
    [
        new("saturation_table", "Saturated moist air against the ASHRAE handbook's real-gas table, and states of moist air against published examples and a reference library.", "fixtures/moist-air"),
        new("fao56", "Water that soil gives against the worked examples of FAO-56.", "fixtures/fao56"),
        new("evapotranspiration", "Sun, air and reference evapotranspiration against the worked examples of FAO-56.", "tests/WitherAdvisor.Tests/Evaporation"),
        new("seasons", "Soil water over the measured days of four years of a public weather record: plausibility, for it lacks humidity and sun.", "fixtures/seattle"),
        new("weather_reports", "Weather as stations report it: a real day of airport reports.", "fixtures/airways"),
        new("bed", "The bed against withers solved by an independent program in finer steps, and against instants of another.", "fixtures/bed"),
        new("outturn", "Moisture from outturn against the balance of dry matter that trade tables follow.", "fixtures/outturn"),
        new("properties", "Hotter, drier or faster air never lengthens a wither; more water never shortens it; no hard limit is ever crossed, over thousands of random batches.", "tests/WitherAdvisor.Tests/Advice"),
        new("published_practice", "Plans of the long style against published South Indian practice.", "tests/WitherAdvisor.Tests/Advice/PublishedPracticeTests.cs"),
        new("common_practice", "Wet, ordinary and dry windy leaf against the bands of common practice.", "tests/WitherAdvisor.Tests/Advice/ContrastTests.cs"),
        new("reliability", "The stated band against invented seasons whose truth differs as much as the spreads say.", "tests/WitherAdvisor.SyntheticSeasons/RELIABILITY.md"),
        new("mutants", "Whether a test notices when a formula is changed: each of 3,000 changes tried, and those that none noticed.", "tests/WitherAdvisor.Mutants/SCORE.md"),
        new("sensitivity", "The bars of this card, taken together, against the band of the advice.", "tests/WitherAdvisor.Tests/Sensitivities/SensitivityTests.cs"),
    ];
}
