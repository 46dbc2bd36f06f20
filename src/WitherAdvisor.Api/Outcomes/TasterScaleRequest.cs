using WitherAdvisor.Fields;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>A scale that the site's taster marks made tea on.</summary>
public sealed record TasterScaleRequest : ICrossChecked
{
    internal const int LongestName = 40;

    /// <summary>Marks are written "name=mark; name=mark" in a log, so names hold neither sign.</summary>
    internal const string NamePattern = "^[^;=\\s]([^;=]*[^;=\\s])?$";

    /// <summary>For people, unique within the site.</summary>
    /// <example>Briskness</example>
    [Text(LongestName, Pattern = NamePattern)]
    public required string Name { get; init; }

    /// <summary>Lowest mark.</summary>
    /// <example>0</example>
    [Measured(-1000, 1000)]
    public required double LeastMark { get; init; }

    /// <summary>Highest mark.</summary>
    /// <example>10</example>
    [Measured(-1000, 1000)]
    public required double MostMark { get; init; }

    public IEnumerable<FieldError> CrossCheck()
    {
        if (MostMark <= LeastMark)
        {
            yield return FieldError.Of("most_mark", $"{MostMark}", $"above least_mark, {LeastMark}");
        }
    }

    internal TasterScale ToDomain() => new(Name, LeastMark, MostMark);

    internal static TasterScaleRequest Of(TasterScale scale) =>
        new() { Name = scale.Name, LeastMark = scale.LeastMark, MostMark = scale.MostMark };
}
