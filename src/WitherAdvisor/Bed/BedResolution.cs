namespace WitherAdvisor.Bed;

/// <summary>How finely a bed is cut in height and time.</summary>
/// <remarks>Halving either step of any of these moves the hours to target by less than 0.5 %; a test holds them to it.</remarks>
public sealed record BedResolution(int Layers, double LongestStepS)
{
    /// <summary>For searching plans: hundreds are tried.</summary>
    public static BedResolution Search { get; } = new(8, 1200);

    /// <summary>For finding when to turn: people turn on the quarter hour, and layers part by less than thick ones show.</summary>
    public static BedResolution Turning { get; } = new(16, 900);

    /// <summary>For the plan that is shown.</summary>
    public static BedResolution Shown { get; } = new(20, 300);
}
