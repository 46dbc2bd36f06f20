namespace WitherAdvisor.Documentation;

/// <summary>Every constant, threshold and limit that a number of an advice may turn on, read from where it is used.</summary>
public static class ModelConstants
{
    public static IReadOnlyList<ModelConstant> All { get; } =
    [
        .. WeatherConstants.All,
        .. ScreeningConstants.All,
        .. SpellConstants.All,
        .. PlanConstants.All,
        .. UncertaintyConstants.All,
    ];
}
