using WitherAdvisor.Api.Wording;

namespace WitherAdvisor.Api.Pages;

/// <summary>What every page is drawn with.</summary>
/// <param name="Units">The person's choice.</param>
/// <param name="Path">Of the page itself, to come back to.</param>
/// <param name="Now">When it is drawn.</param>
public sealed record PageContext(PersonUnits Units, string Path, DateTimeOffset Now);
