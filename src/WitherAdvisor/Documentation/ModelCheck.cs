namespace WitherAdvisor.Documentation;

/// <summary>A check that the model is held to.</summary>
/// <param name="Code">snake_case name.</param>
/// <param name="Where">Path in the repository.</param>
public sealed record ModelCheck(string Code, string Where)
{
    /// <summary>All of them, in the order in which a number travels.</summary>
    public static IReadOnlyList<ModelCheck> All { get; } =
    [
        new("saturation_table", "fixtures/moist-air"),
        new("fao56", "fixtures/fao56"),
        new("evapotranspiration", "tests/suites/WitherAdvisor.Tests/Evaporation"),
        new("seasons", "fixtures/seattle"),
        new("weather_reports", "fixtures/airways"),
        new("rain_steps", "tests/suites/WitherAdvisor.Tests/LeafAtLoading/RainStepsOnLeafTests.cs"),
        new("fog_and_drizzle", "tests/suites/WitherAdvisor.Tests/Canopy/FogAndDrizzleTests.cs"),
        new("screening", "src/WitherAdvisor/Screening/FALSE-ALARMS.md"),
        new("bed", "fixtures/bed"),
        new("outturn", "fixtures/outturn"),
        new("properties", "tests/suites/WitherAdvisor.Tests/Advice"),
        new("published_practice", "tests/suites/WitherAdvisor.Tests/Advice/PublishedPracticeTests.cs"),
        new("common_practice", "tests/suites/WitherAdvisor.Tests/Advice/ContrastTests.cs"),
        new("reliability", "tests/tools/WitherAdvisor.SyntheticSeasons/RELIABILITY.md"),
        new("mutants", "tests/tools/WitherAdvisor.Mutants/SCORE.md"),
        new("sensitivity", "tests/suites/WitherAdvisor.Tests/Sensitivities/SensitivityTests.cs"),
    ];
}
