namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>Whether an advice holds a plan.</summary>
public enum AdviceStatus
{
    /// <summary>There is a plan within every hard limit.</summary>
    Advised,

    /// <summary>There is none; the answer says which limit binds and what would relieve it.</summary>
    CannotAdvise,
}
