namespace WitherAdvisor.Recalibration.Asking;

/// <summary>What may be asked to be measured next.</summary>
public static class MeasurementCodes
{
    /// <summary>snake_case names.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Question.All.Select(question => question.Code)];
}
