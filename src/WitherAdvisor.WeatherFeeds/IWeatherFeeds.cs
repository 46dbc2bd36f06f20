namespace WitherAdvisor.WeatherFeeds;

/// <summary>The feeds that the operator configured. A caller chooses among them by name; addresses are the operator's alone.</summary>
public interface IWeatherFeeds
{
    /// <summary>By name.</summary>
    IReadOnlyList<IWeatherFeed> All { get; }

    /// <summary>The feed of that name; null where the operator configured none.</summary>
    IWeatherFeed? Find(string name);
}
