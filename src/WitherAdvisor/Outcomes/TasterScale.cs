namespace WitherAdvisor.Outcomes;

/// <summary>A scale that a site's taster marks made tea on, named by the site.</summary>
/// <param name="Name">For people, unique within the site.</param>
/// <param name="LeastMark">Lowest mark.</param>
/// <param name="MostMark">Highest mark.</param>
public sealed record TasterScale(string Name, double LeastMark, double MostMark);
