using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;

namespace WitherAdvisor.Api.Troughs;

/// <summary>A trough as kept, with every setting stated.</summary>
public sealed record TroughResponse : TroughRequest
{
    [SetsRequiredMembers]
    public TroughResponse(string site, string id, TroughRequest settings)
        : base(settings)
    {
        Site = site;
        Id = id;
    }

    /// <summary>Name of the trough in paths, unique within its site.</summary>
    /// <example>trough-1</example>
    [JsonPropertyOrder(-1)]
    public string Id { get; }

    /// <summary>The site it stands in.</summary>
    /// <example>example-hill</example>
    [JsonPropertyOrder(-1)]
    public string Site { get; }
}
