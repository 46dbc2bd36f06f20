namespace WitherAdvisor.Api.Weather;

/// <summary>What became of the readings sent.</summary>
public sealed record SavedReadingsAnswer
{
    /// <summary>Readings in the body; all of them are kept.</summary>
    /// <example>24</example>
    public required int Received { get; init; }

    /// <summary>Those for a time that had none of this kind before; the others were brought up to date.</summary>
    /// <example>24</example>
    public required int New { get; init; }
}
