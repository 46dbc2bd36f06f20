namespace WitherAdvisor.WeatherFeeds;

/// <summary>Something that a reader of the series should know.</summary>
/// <param name="Code">snake_case, for example "missing_hours".</param>
/// <param name="Text">A sentence for people.</param>
public sealed record FeedNote(string Code, string Text);
