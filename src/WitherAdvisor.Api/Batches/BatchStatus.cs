namespace WitherAdvisor.Api.Batches;

/// <summary>Whether a batch runs, and how it ended where it does not.</summary>
public enum BatchStatus
{
    Running,
    Unloaded,
    Cancelled,
    Mixed,
}
