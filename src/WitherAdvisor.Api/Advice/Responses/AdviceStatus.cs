namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>Whether an advice holds a plan.</summary>
public enum AdviceStatus
{
    /// <summary>There is a plan within every hard limit.</summary>
    Advised,

    /// <summary>No plan keeps every hard limit: this is the least bad one, and it says which it breaks.</summary>
    LeastBad,

    /// <summary>There is none: too little is known. The answer says what is missing.</summary>
    CannotAdvise,
}
