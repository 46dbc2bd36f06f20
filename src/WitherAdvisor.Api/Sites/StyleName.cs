namespace WitherAdvisor.Api.Sites;

/// <summary>The styles of withering that a site's settings start from.</summary>
public enum StyleName
{
    /// <summary>Hot-air assisted, 6 to 12 h.</summary>
    Short,

    /// <summary>Mostly ambient air, 16 to 18 h.</summary>
    Long,
}
