namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>Whether an import keeps anything.</summary>
public enum ImportMode
{
    /// <summary>Nothing is kept; the answer says what would be.</summary>
    Preview,

    /// <summary>What fits is kept.</summary>
    Take,
}
