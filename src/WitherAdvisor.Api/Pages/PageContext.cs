using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages;

/// <summary>What every page is drawn with.</summary>
/// <param name="Units">The person's choice.</param>
/// <param name="Words">The person's language.</param>
/// <param name="Path">Of the page itself, to come back to.</param>
/// <param name="Now">When it is drawn.</param>
public sealed record PageContext(PersonUnits Units, Wordbook Words, string Path, DateTimeOffset Now)
{
    /// <summary>The same page with a choice made.</summary>
    public string With(string choice, string made) => $"{Path}{(Path.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{choice}={made}";
}
