using WitherAdvisor.Fields;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>Outcome of a batch. Everything may be left out; what is left out is unknown.</summary>
public record OutcomeRequest : ICrossChecked
{
    internal const double LongestHours = 72;
    internal const int LongestNote = LogOutcome.LongestNote;
    internal const int LongestWords = LogOutcome.LongestWords;

    /// <summary>Faults are written one after another with semicolons between them in a log, so none holds one.</summary>
    internal const string FaultPattern = "^[^;\\s]([^;]*[^;\\s])?$";

    /// <summary>Air as it was set, by hour.</summary>
    [Listed(200)]
    public IReadOnlyList<AirRequest>? AirSet { get; init; }

    /// <summary>Air as it was measured under the mesh, by hour.</summary>
    [Listed(200)]
    public IReadOnlyList<AirRequest>? AirMeasured { get; init; }

    /// <summary>How often the leaf was turned.</summary>
    /// <example>2</example>
    [Measured(0, 72)]
    public int? Turns { get; init; }

    /// <summary>When the leaf was turned, hours from loading; as many as turns where both are given.</summary>
    /// <example>[3, 6]</example>
    [Listed(72)]
    [Measured(0, LongestHours)]
    public IReadOnlyList<double>? TurnedAtHours { get; init; }

    /// <summary>Weight of the withered leaf.</summary>
    /// <example>560</example>
    [Measured(1, 30000)]
    public double? WitheredWeightKg { get; init; }

    /// <summary>Moisture of the withered leaf by the oven: the procedure of ISO 1573, made for made tea, adapted to leaf.</summary>
    /// <example>60.2</example>
    [Measured(5, 95)]
    public double? OvenMoistureWetBasisPercent { get; init; }

    /// <summary>Moisture at three depths, where sampled.</summary>
    public LayersRequest? Layers { get; init; }

    /// <summary>Samples weighed on the way, by hour.</summary>
    [Listed(50)]
    public IReadOnlyList<SampleWeighingRequest>? SampleWeighings { get; init; }

    /// <summary>How far the maker found the leaf withered.</summary>
    /// <example>right</example>
    public WitherVerdict? Verdict { get; init; }

    /// <summary>Whether the maker found it withered alike throughout the bed.</summary>
    /// <example>even</example>
    public EvennessVerdict? Evenness { get; init; }

    /// <summary>The taster's marks, one a scale of the site.</summary>
    [Listed(20)]
    public IReadOnlyList<MarkRequest>? Marks { get; init; }

    /// <summary>Faults seen, a few words each, without semicolons.</summary>
    /// <example>["red leaf on top"]</example>
    [Listed(20)]
    [Text(LongestWords, Pattern = FaultPattern)]
    public IReadOnlyList<string>? Faults { get; init; }

    /// <summary>The weather in a word or two, as a log has it.</summary>
    /// <example>wet</example>
    [Text(LongestWords)]
    public string? Weather { get; init; }

    /// <summary>Anything else, on one line.</summary>
    /// <example>Fan off for ten minutes at two.</example>
    [Text(LongestNote)]
    public string? Note { get; init; }

    /// <summary>Who enters it, as they call themselves: there is no sign-in yet.</summary>
    /// <example>night maker</example>
    [Text(LongestWords)]
    public string? EnteredBy { get; init; }

    /// <summary>Codes of warnings that were checked: the values are odd but right.</summary>
    /// <example>["hours_unusual"]</example>
    [Listed(20)]
    [Text(LongestWords, Pattern = FaultPattern)]
    public IReadOnlyList<string>? Confirm { get; init; }

    public IEnumerable<FieldError> CrossCheck() =>
    [
        .. Rising(AirSet?.Select(air => air.FromHour), "air_set", "from_hour"),
        .. Rising(AirMeasured?.Select(air => air.FromHour), "air_measured", "from_hour"),
        .. Rising(SampleWeighings?.Select(sample => sample.Hour), "sample_weighings", "hour"),
        .. Rising(TurnedAtHours, "turned_at_hours", ""),
        .. AsManyTurns(),
    ];

    private static IEnumerable<FieldError> Rising(IEnumerable<double>? hours, string list, string field)
    {
        List<double> all = [.. hours ?? []];
        return Enumerable.Range(1, Math.Max(0, all.Count - 1))
            .Where(index => all[index] <= all[index - 1])
            .Select(index => FieldError.Of(
                field.Length == 0 ? FieldPath.Item(list, index) : FieldPath.Join(FieldPath.Item(list, index), field),
                $"{all[index]}", $"an hour after the one before it, {all[index - 1]} h"));
    }

    private IEnumerable<FieldError> AsManyTurns()
    {
        if (TurnedAtHours is { Count: > 0 } hours && Turns is { } turns && turns != hours.Count)
        {
            yield return FieldError.Of("turns", $"{turns}", $"as many as there are in turned_at_hours, {hours.Count}");
        }
    }
}
