using System.Text.Json.Serialization;

namespace WitherAdvisor.Api.Weather;

/// <summary>What became of the readings sent.</summary>
public sealed record SavedReadingsResponse
{
    /// <summary>Readings in the body; all of them are kept, unless good_rows was chosen.</summary>
    /// <example>24</example>
    public required int Received { get; init; }

    /// <summary>Those kept for a time that had none of this kind before; the others were brought up to date.</summary>
    /// <example>24</example>
    public required int New { get; init; }

    /// <summary>Readings kept; only with good_rows.</summary>
    /// <example>23</example>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? Kept { get; init; }

    /// <summary>Rows that were not kept, by line; only with good_rows, empty where all were good.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<RefusedRowResponse>? Refused { get; init; }
}
