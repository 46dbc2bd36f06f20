namespace WitherAdvisor.Bed;

/// <summary>How the way to the next turn or change of air is cut into steps no longer than the setup allows.</summary>
internal enum StepCut
{
    /// <summary>Into equal steps.</summary>
    Even,

    /// <summary>Into equal steps, cut afresh after each: whoever stops in between and goes on steps the same.</summary>
    EvenAfresh,

    /// <summary>Into the longest steps allowed and what is left.</summary>
    Longest,
}
