using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Options;
using WitherAdvisor.WeatherFeeds.Configuration;
using WitherAdvisor.WeatherFeeds.Exchange;

namespace WitherAdvisor.WeatherFeeds.Client;

/// <summary>Puts the operator's weather feeds into a host.</summary>
public static class FeedRegistration
{
    /// <summary>
    /// Reads the section "WeatherFeeds" of a configuration; a fault in it stops the host at its start. Without the section
    /// there are no feeds. Nothing is asked of any feed until <see cref="IWeatherFeed.Fetch"/>.
    /// </summary>
    public static IServiceCollection AddWeatherFeeds(this IServiceCollection services, IConfiguration configuration)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.AddOptions<WeatherFeedsOptions>()
            .Bind(configuration.GetSection(WeatherFeedsOptions.Section), binder => binder.ErrorOnUnknownConfiguration = true)
            .ValidateOnStart();
        services.AddSingleton<IValidateOptions<WeatherFeedsOptions>, FeedOptionsCheck>();
        services.AddHttpClient(FeedConnection.Name, client => client.Timeout = Timeout.InfiniteTimeSpan)
            .ConfigurePrimaryHttpMessageHandler(FeedConnection.Handler)
            // It pools and renews its own connections.
            .SetHandlerLifetime(Timeout.InfiniteTimeSpan);
        return services.AddSingleton<IWeatherFeeds, ConfiguredFeeds>();
    }
}
