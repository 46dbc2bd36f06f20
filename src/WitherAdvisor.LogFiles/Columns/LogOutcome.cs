using WitherAdvisor.Fields;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.LogFiles.Columns;

/// <summary>What the log says of an outcome, beside its batch. Lists have semicolons between their values, nothing for an unknown one.</summary>
internal abstract record LogOutcome : LogBatch
{
    internal const int LongestList = 8000;
    internal const int LongestNote = 2000;
    internal const int LongestWords = 80;

    /// <summary>Leaf that nobody said was off its trough lay there for long, on paper.</summary>
    internal const double MostHours = 10_000;

    internal const string NumberList = "^[0-9.eE+; -]+$";

    [Meaning(LogPart.Outcome, "When it left the trough.")]
    public DateTimeOffset? UnloadedAt { get; init; }

    [Meaning(LogPart.Outcome, "From loading to unloading; may be given in place of unloaded_at.")]
    [Measured(0, MostHours)]
    public double? OnTroughHours { get; init; }

    [Meaning(LogPart.Outcome, "Air as set: hours from loading from which each of the values beside it held; 0 where only one value is given.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? AirSetFromHours { get; init; }

    [Meaning(LogPart.Outcome, "Air as set under the mesh: dry bulb.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? AirSetDryBulbC { get; init; }

    [Meaning(LogPart.Outcome, "Air as set under the mesh: wet bulb.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? AirSetWetBulbC { get; init; }

    [Meaning(LogPart.Outcome, "Air as set under the mesh: dry bulb minus wet bulb, where that is what was read.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? AirSetHygrometricDifferenceK { get; init; }

    [Meaning(LogPart.Outcome, "Air as set: share of the trough's full airflow.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? AirSetFanSharePercent { get; init; }

    [Meaning(LogPart.Outcome, "Air as measured: hours from loading from which each of the values beside it held; 0 where only one value is given.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? AirMeasuredFromHours { get; init; }

    [Meaning(LogPart.Outcome, "Air as measured under the mesh: dry bulb.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? AirMeasuredDryBulbC { get; init; }

    [Meaning(LogPart.Outcome, "Air as measured under the mesh: wet bulb.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? AirMeasuredWetBulbC { get; init; }

    [Meaning(LogPart.Outcome, "Air as measured under the mesh: dry bulb minus wet bulb, where that is what was read.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? AirMeasuredHygrometricDifferenceK { get; init; }

    [Meaning(LogPart.Outcome, "Air as measured: share of the trough's full airflow.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? AirMeasuredFanSharePercent { get; init; }

    [Meaning(LogPart.Outcome, "How often the leaf was turned.")]
    [Measured(0, 72)]
    public int? Turns { get; init; }

    [Meaning(LogPart.Outcome, "When the leaf was turned, hours from loading.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? TurnedAtHours { get; init; }

    [Meaning(LogPart.Outcome, "Weight of the withered leaf.")]
    [Measured(1, 30000)]
    public double? WitheredWeightKg { get; init; }

    [Meaning(LogPart.Outcome, "Withered weight over green weight as weighed with its surface water.", Follows = true)]
    [Measured(0, 150)]
    public double? OutturnPercent { get; init; }

    [Meaning(LogPart.Outcome, "Withered weight over the weight of green leaf without its surface water, as measured or else as the advice estimated it.", Follows = true)]
    [Measured(0, 200)]
    public double? OutturnOfLeafPercent { get; init; }

    [Meaning(LogPart.Outcome, "Moisture of the withered leaf by the oven: the procedure of ISO 1573, made for made tea, adapted to leaf.")]
    [Measured(5, 95)]
    public double? OvenMoistureWetBasisPercent { get; init; }

    [Meaning(LogPart.Outcome, "Moisture of a sample next to the mesh at the end.")]
    [Measured(5, 95)]
    public double? BottomMoistureWetBasisPercent { get; init; }

    [Meaning(LogPart.Outcome, "Moisture of a sample half way up at the end.")]
    [Measured(5, 95)]
    public double? MiddleMoistureWetBasisPercent { get; init; }

    [Meaning(LogPart.Outcome, "Moisture of a sample on top at the end.")]
    [Measured(5, 95)]
    public double? TopMoistureWetBasisPercent { get; init; }

    [Meaning(LogPart.Outcome, "A marked sample weighed on the way: hours from loading.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? SampleHours { get; init; }

    [Meaning(LogPart.Outcome, "The same: its weight over its weight at loading.", Numbers = true)]
    [Text(LongestList, Pattern = NumberList)]
    public string? SampleWeightPercent { get; init; }

    [Meaning(LogPart.Outcome, "How far the maker found the leaf withered.")]
    public WitherVerdict? Verdict { get; init; }

    [Meaning(LogPart.Outcome, "Whether the maker found it withered alike throughout the bed.")]
    public EvennessVerdict? Evenness { get; init; }

    [Meaning(LogPart.Outcome, "The taster's marks on the site's scales, as Briskness=7.5;Colour=6.")]
    [Text(2000)]
    public string? Marks { get; init; }

    [Meaning(LogPart.Outcome, "Faults seen, separated by semicolons.")]
    [Text(2000)]
    public string? Faults { get; init; }

    [Meaning(LogPart.Outcome, "The weather in a word or two.")]
    [Text(LongestWords)]
    public string? Weather { get; init; }

    [Meaning(LogPart.Outcome, "Anything else.")]
    [Text(LongestNote)]
    public string? Note { get; init; }

    [Meaning(LogPart.Outcome, "When the outcome was entered.")]
    public DateTimeOffset? EnteredAt { get; init; }

    [Meaning(LogPart.Outcome, "Who entered it.")]
    [Text(LongestWords)]
    public string? EnteredBy { get; init; }

    [Meaning(LogPart.Outcome, "Codes of odd values that were confirmed, separated by semicolons.")]
    [Text(2000)]
    public string? Confirmed { get; init; }
}
