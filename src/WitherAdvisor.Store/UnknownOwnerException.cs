namespace WitherAdvisor.Store;

/// <summary>Something was to be kept for a site, trough or batch that the store does not hold. Nothing of it was kept.</summary>
public sealed class UnknownOwnerException : Exception
{
    public UnknownOwnerException()
    {
    }

    public UnknownOwnerException(string message)
        : base(message)
    {
    }

    public UnknownOwnerException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
