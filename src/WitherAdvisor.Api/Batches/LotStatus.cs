namespace WitherAdvisor.Api.Batches;

/// <summary>Whether a lot lies on the trough.</summary>
public enum LotStatus
{
    Laid,
    Expected,
}
