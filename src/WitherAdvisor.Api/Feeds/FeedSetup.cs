using WitherAdvisor.Loft.FeedRefresh;

namespace WitherAdvisor.Api.Feeds;

/// <summary>Puts the fetching of weather into the host.</summary>
internal static class FeedSetup
{
    public static void AddFeedRefresh(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddOptions<RefreshOptions>()
            .Bind(configuration.GetSection(RefreshOptions.Section), binder => binder.ErrorOnUnknownConfiguration = true)
            .Validate(options => options.IsGood, $"{RefreshOptions.Section}:{nameof(RefreshOptions.Every)} is 00:10:00 to 1.00:00:00, or 00:00:00 for never.")
            .ValidateOnStart();
        services.AddSingleton(provider => ActivatorUtilities.CreateInstance<SiteRefresh>(
            provider, provider.GetRequiredService<IHostApplicationLifetime>().ApplicationStopping));
        services.AddSingleton<FeedStateReading>();
        services.AddSingleton<FeedStates>();
        services.AddHostedService<RefreshSchedule>();
    }
}
