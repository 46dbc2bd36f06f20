using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;

namespace WitherAdvisor.Api.Sites;

/// <summary>A site as kept, with every setting stated.</summary>
public sealed record SiteResponse : SiteRequest
{
    [SetsRequiredMembers]
    public SiteResponse(string id, SiteRequest settings, string? feed)
        : base(settings)
    {
        Id = id;
        Feed = feed;
    }

    /// <summary>Name of the site in paths.</summary>
    /// <example>example-hill</example>
    [JsonPropertyOrder(-1)]
    public string Id { get; }

    /// <summary>Name of the feed that its weather is fetched from; null where none is.</summary>
    /// <example>hill</example>
    public string? Feed { get; }
}
