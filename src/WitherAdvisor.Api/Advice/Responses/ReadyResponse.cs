using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>How long the leaf withers and when it reaches its target moisture. Null where that part of the cases never does.</summary>
[Computed]
public sealed record ReadyResponse
{
    /// <summary>Planned wither: from loading to the stop.</summary>
    /// <example>10.5</example>
    public required double StopHours { get; init; }

    /// <summary>Planned stop.</summary>
    /// <example>2026-03-01T23:30:00+05:30</example>
    public required DateTimeOffset StopAt { get; init; }

    /// <summary>When the leaf is ready; from then to the stop it waits.</summary>
    /// <example>10.5</example>
    public required double ReadyHours { get; init; }

    /// <summary>The same as a time.</summary>
    /// <example>2026-03-01T23:30:00+05:30</example>
    public required DateTimeOffset ReadyAt { get; init; }

    /// <summary>How long waiting leaf keeps within a point of its target, from loading; null where none waits, or longer than air is known.</summary>
    /// <example>13.2</example>
    public required double? HeldWellToHours { get; init; }

    /// <summary>The same as a time.</summary>
    /// <example>2026-03-02T02:12:00+05:30</example>
    public required DateTimeOffset? HeldWellTo { get; init; }

    /// <summary>One case in ten is ready by then.</summary>
    /// <example>8.9</example>
    public required double? P10Hours { get; init; }

    /// <summary>The same as a time.</summary>
    /// <example>2026-03-01T21:54:00+05:30</example>
    public required DateTimeOffset? P10At { get; init; }

    /// <summary>Five cases in ten are ready by then.</summary>
    /// <example>10.5</example>
    public required double? P50Hours { get; init; }

    /// <summary>The same as a time.</summary>
    /// <example>2026-03-01T23:30:00+05:30</example>
    public required DateTimeOffset? P50At { get; init; }

    /// <summary>Nine cases in ten are ready by then.</summary>
    /// <example>12.6</example>
    public required double? P90Hours { get; init; }

    /// <summary>The same as a time.</summary>
    /// <example>2026-03-02T01:36:00+05:30</example>
    public required DateTimeOffset? P90At { get; init; }
}
