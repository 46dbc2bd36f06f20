namespace WitherAdvisor.Sensitivities;

/// <summary>How far an input was moved to see what it does.</summary>
public enum SensitivityReach
{
    /// <summary>To the values that one case in ten lies below and one in ten above: what the ready-time band rests on.</summary>
    P10ToP90,

    /// <summary>By what a person may misjudge, which the ready-time band does not hold.</summary>
    InputError,
}
