namespace WitherAdvisor.Advice;

/// <summary>The decision: from a batch and its weather to a plan.</summary>
public static class Advisor
{
    /// <summary>Advice for a batch. Pure: the same request always gives the same answer.</summary>
    public static AdviceOutcome Advise(AdviceRequest request) => throw new NotSupportedException();
}
