namespace WitherAdvisor.Recalibration.NextMeasurements;

/// <summary>What may be measured next.</summary>
public static class MeasurementCodes
{
    /// <summary>snake_case names.</summary>
    public static IReadOnlyList<string> All { get; } = [.. PossibleMeasurement.All.Select(possible => possible.Code)];
}
