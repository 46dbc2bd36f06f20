namespace WitherAdvisor.Loft.Kept;

/// <summary>Something was to be kept for a site, trough or batch that the store does not hold. Nothing of it was kept.</summary>
public sealed class ParentNotFoundException : Exception
{
    public ParentNotFoundException()
    {
    }

    public ParentNotFoundException(string message)
        : base(message)
    {
    }

    public ParentNotFoundException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
